// SPDX-License-Identifier: MIT
#include <seatload/io/samples_columns.hpp>

#include <array>
#include <vector>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

using inspection::Kind;
using Use = SampleColumn::Use;

constexpr std::array kMeasuredAgain{Kind::seated_load, Kind::full_travel_load, Kind::free_length};

std::vector<SampleColumn> all_columns() {
    std::vector<SampleColumn> all{{Use::name, Kind::seated_load, "piece", ""}};
    for (const Kind kind : inspection::kKinds) all.push_back({Use::value, kind, std::string(key(kind)), ""});
    for (const Kind kind : kMeasuredAgain) all.push_back({Use::after, kind, std::string(key(kind)) + "_after", ""});
    all.push_back({Use::shown, Kind::seated_load, "seated_scale", ""});
    all.push_back({Use::shown, Kind::full_travel_load, "full_travel_scale", ""});
    all.push_back({Use::remark, Kind::seated_load, "remark", ""});
    return all;
}

}  // namespace

bool SampleColumn::has_unit() const {
    if (use == Use::shown) return true;
    return (use == Use::value || use == Use::after) && inspection::measure(kind) != inspection::Measure::count;
}

std::optional<SampleColumn> sample_column(std::string_view name) {
    for (SampleColumn& column : all_columns())
        if (column.name == lower(name)) return std::move(column);
    return std::nullopt;
}

std::string sample_column_hint(std::string_view name) {
    std::vector<std::string> names;
    for (const SampleColumn& column : all_columns()) names.push_back(column.name);
    const std::string meant = did_you_mean(name, names);
    return meant.empty() ? "columns are " + join(names, ", ") : meant;
}

}  // namespace seatload::io
