// SPDX-License-Identifier: MIT
#include <seatload/io/readings_bench.hpp>

#include <algorithm>
#include <array>
#include <numbers>

#include <seatload/core/text.hpp>
#include <seatload/io/readings_fields.hpp>

namespace seatload::io {
namespace {

constexpr Span kLatitude{-std::numbers::pi / 2.0, std::numbers::pi / 2.0, false, "between -90 deg and 90 deg"};
constexpr Span kAboveSea{-500'000.0, 9'000'000.0, false, "between 500 m below and 9000 m above the sea"};

/// Where the scale was adjusted: "standard", or a latitude with a height above the sea, or nothing.
void read_adjustment(Reader& table, bench::Scale& scale) {
    const auto standard = table.find<bench::StandardGravity>("adjusted_for");
    const auto latitude = table.find<Angle>("latitude", kLatitude);
    const auto height = table.find<Length>("above_sea", kAboveSea);
    const bool is_standard = table.has("adjusted_for");
    const bool has_place = table.has("latitude") || table.has("above_sea");
    if (is_standard && has_place) {
        const std::string_view place = table.has("latitude") ? "latitude" : "above_sea";
        table.document().contradiction(table.at(place), "given-twice"_id, "where the scale was adjusted is said twice",
                                       "keep adjusted_for, or latitude and above_sea", table.at("adjusted_for"),
                                       "adjusted_for stands here");
    } else if (has_place && !table.has("latitude")) {
        table.missing("latitude", "\"54 deg\"");
    } else if (latitude) {
        scale.adjusted_at = bench::Site{*latitude, height.value_or(0.0 * mm)};
    } else if (standard) {
        scale.adjusted_at = *standard;
    }
}

constexpr std::array<std::string_view, 3> kForces{"force", "force_at_zero", "forces"};

void expect_one_force(Reader& table, const bench::Indicator& indicator) {
    std::string_view first;
    for (const std::string_view key : kForces) {
        if (!table.has(key)) continue;
        if (!first.empty())
            table.document().contradiction(table.at(key), "given-twice"_id, "the force of the plunger is given twice",
                                           "keep force (the same everywhere), or force_at_zero with force_rise, or "
                                           "forces (a table)",
                                           table.at(first), std::string(first) + " stands here");
        first = key;
    }
    if (first.empty() && indicator.bearing != bench::Bearing::none)
        table.missing("force", "\"0.6 N\", what the plunger presses with");
    if (!first.empty() && !table.has("bears_on_pan"))
        table.error(first, "one-of-a-pair"_id,
                    "the plunger has a force, and bears_on_pan does not say how it comes onto the scale",
                    "add bears_on_pan = \"presses it down\", \"lifts it\" or \"not at all\"");
}

bench::PlungerTable read_forces(Reader& table) {
    bench::PlungerTable forces;
    for (RowReader& row : table.rows("forces")) {
        const Length travel = row.need<Length>(0, "travel");
        const Force force = row.need<Force>(1, "force", kNotNegative);
        row.expect_at_most(2);
        if (!forces.empty() && travel <= forces.back().first)
            row.complain("rows-not-rising"_id, "travels must rise from row to row");
        forces.emplace_back(travel, force);
    }
    if (table.has("forces") && forces.size() < 2)
        table.error("forces", "too-few-rows"_id, "two rows at least are wanted",
                    "[[\"0 mm\", \"0.50 N\"], [\"10 mm\", \"0.85 N\"]]");
    return forces;
}

void read_plunger(Reader& table, bench::Indicator& indicator) {
    expect_one_force(table, indicator);
    if (const auto constant = table.find<Force>("force", kNotNegative)) indicator.plunger = *constant;
    const auto at_zero = table.find<Force>("force_at_zero", kNotNegative);
    const auto rise = table.find<Rate>("force_rise", kNotNegative);
    if (table.has("force_rise") && !table.has("force_at_zero")) table.missing("force_at_zero", "\"0.50 N\"");
    if (table.has("force_at_zero") && !table.has("force_rise")) table.missing("force_rise", "\"0.03 N/mm\"");
    if (at_zero && rise) indicator.plunger = bench::PlungerLine{*at_zero, *rise};
    bench::PlungerTable forces = read_forces(table);
    if (forces.size() >= 2) indicator.plunger = std::move(forces);
}

/// A key of [heights] as a name: "full_travel" is full travel.
std::string name_of(std::string key) {
    std::replace(key.begin(), key.end(), '_', ' ');
    return key;
}

void expect_not_misspelt(Reader& table, const std::string& key) {
    static const std::vector<std::string> kUsual{"seated", "full_travel"};
    if (std::find(kUsual.begin(), kUsual.end(), key) != kUsual.end()) return;
    if (const std::string meant = did_you_mean(key, kUsual); !meant.empty())
        table.error(key, "unclear-name"_id, "this name is nearly one of the usual ones", meant);
}

}  // namespace

void read_scale(Reader& table, bench::Scale& scale) {
    FieldReader fields(table);
    visit_scale(fields, scale);
    read_adjustment(table, scale);
}

void read_indicator(Reader& table, bench::Indicator& indicator) {
    FieldReader fields(table);
    visit_indicator(fields, indicator);
    read_plunger(table, indicator);
}

std::vector<bench::AskedHeight> read_heights(Reader& table) {
    std::vector<bench::AskedHeight> heights;
    for (const std::string& key : table.keys()) {
        expect_not_misspelt(table, key);
        if (const auto height = table.find<bench::Stated<Length>>(key, kSize))
            heights.push_back({name_of(key), *height});
    }
    std::stable_sort(heights.begin(), heights.end(),
                     [](const auto& a, const auto& b) { return a.height.value > b.height.value; });
    return heights;
}

}  // namespace seatload::io
