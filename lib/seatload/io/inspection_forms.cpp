// SPDX-License-Identifier: MIT
#include <seatload/io/inspection_forms.hpp>

namespace seatload::io {
namespace {

template <class Q>
units::Parsed<double> read_as(const Node& node) {
    units::Parsed<Q> read = Form<Q>::read(node);
    if (!read.value) return {std::nullopt, std::move(read.problem)};
    return {Form<Q>::numbers(*read.value).front(), {}};
}

template <class Q>
std::optional<double> find_as(Reader& table, std::string_view key, const Span& span) {
    const std::optional<Q> found = table.find<Q>(key, span);
    if (!found) return std::nullopt;
    return Form<Q>::numbers(*found).front();
}

}  // namespace

std::optional<double> find_measured(Reader& table, std::string_view key, inspection::Kind kind, const Span& span) {
    switch (inspection::measure(kind)) {
        case inspection::Measure::force:
            return find_as<Force>(table, key, span);
        case inspection::Measure::length:
            return find_as<Length>(table, key, span);
        case inspection::Measure::count:
            break;
    }
    return find_as<double>(table, key, span);
}

std::optional<units::Problem> problem_of_unit(inspection::Kind kind, const std::string& unit, Position at) {
    if (inspection::measure(kind) == inspection::Measure::count) return std::nullopt;
    units::Parsed<double> read = read_measured({at, "1 " + unit}, kind);
    if (read.value) return std::nullopt;
    return std::move(read.problem);
}

units::Parsed<double> read_measured(const Node& node, inspection::Kind kind) {
    switch (inspection::measure(kind)) {
        case inspection::Measure::force:
            return read_as<Force>(node);
        case inspection::Measure::length:
            return read_as<Length>(node);
        case inspection::Measure::count:
            break;
    }
    return read_as<double>(node);
}

std::string write_measured(double value, inspection::Kind kind) {
    switch (inspection::measure(kind)) {
        case inspection::Measure::force:
            return Form<Force>::write(value * newton);
        case inspection::Measure::length:
            return Form<Length>::write(value * mm);
        case inspection::Measure::count:
            break;
    }
    return decimal_text(value);
}

}  // namespace seatload::io
