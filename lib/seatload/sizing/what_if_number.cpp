// SPDX-License-Identifier: MIT
#include <seatload/sizing/what_if_number.hpp>

#include <algorithm>
#include <limits>

#include <seatload/sizing/easing_tables.hpp>

namespace seatload::sizing {
namespace {

using demand::Requirement;
using Number = std::optional<double>;

constexpr double kAny = std::numeric_limits<double>::infinity();
constexpr double kTenMetres = 10000.0;

/// What a requirement's file may state, and what it does state when easings() are silent, as nothing can give way.
struct Allowed {
    std::string_view key;
    double lowest = 0.0;
    bool above_lowest = false;
    double highest = kAny;
    Number (*silent)(const Requirement&) = nullptr;
};

constexpr double kAbsoluteZero = -273.15;

const Allowed kAllowed[] = {
    {"load.seated.at_least", 0.0, false, kAny, [](const Requirement& r) { return plain(r.seated_load.at_least); }},
    {"load.seated.at_most", 0.0, false, kAny, [](const Requirement& r) { return plain(r.seated_load.at_most); }},
    {"load.full_travel.at_least", 0.0, false, kAny,
     [](const Requirement& r) { return plain(r.full_travel_load.at_least); }},
    {"load.full_travel.at_most", 0.0, false, kAny,
     [](const Requirement& r) { return plain(r.full_travel_load.at_most); }},
    {"space.seated_height", 0.0, true, kTenMetres},
    {"space.full_travel_height", 0.0, true, kTenMetres},
    {"space.bore", 0.0, true, kTenMetres},
    {"space.rod", 0.0, true, kTenMetres},
    {"space.free_length.at_least", 0.0, false, kTenMetres},
    {"space.free_length.at_most", 0.0, false, kTenMetres},
    {"space.sideways_play", 0.0, false, kAny, [](const Requirement& r) { return plain(r.space.sideways_play); }},
    {"surroundings.temperature", kAbsoluteZero, false, kAny,
     [](const Requirement& r) { return Number(r.surroundings.temperature.degrees); }},
    {"limits.largest_mass", 0.0, true},
    {"limits.stress_share", 0.0, true, 1.0},
    {"limits.stress_safety", 1.0, false, kAny, [](const Requirement& r) { return Number(r.limits.stress_safety); }},
    {"limits.gap_share", 0.0, false, kAny, [](const Requirement& r) { return Number(r.limits.gap_share); }},
    {"limits.seating_coefficient", 0.0, true},
    {"limits.buckling_margin", 1.0, false, kAny, [](const Requirement& r) { return Number(r.limits.buckling_margin); }},
    {"limits.smallest_index", 1.0, false, kAny, [](const Requirement& r) { return Number(r.limits.smallest_index); }},
    {"limits.largest_index", 1.0},
    {"limits.fewest_active_coils", 0.0, true, kAny,
     [](const Requirement& r) { return Number(r.limits.fewest_active_coils); }},
    {"limits.most_active_coils", 0.0, true},
    {"limits.half_turn_slack", 0.0},
    {"limits.lean_share", 0.0, false, kAny, [](const Requirement& r) { return Number(r.limits.lean_share); }},
    {"limits.bore_clearance", 0.0, false, kAny,
     [](const Requirement& r) { return Number(in_mm(r.limits.bore_clearance)); }},
    {"limits.rod_clearance", 0.0, false, kAny,
     [](const Requirement& r) { return Number(in_mm(r.limits.rod_clearance)); }},
    {"limits.smallest_surge_ratio", 0.0, false, kAny,
     [](const Requirement& r) { return Number(r.limits.smallest_surge_ratio); }},
    {"limits.fatigue_factor", 0.0, true, kAny, [](const Requirement& r) { return Number(r.limits.fatigue_factor); }},
    {"limits.smallest_ground_wire", 0.0, false, kAny,
     [](const Requirement& r) { return Number(in_mm(r.limits.smallest_ground_wire)); }},
    {"limits.largest_ground_index", 0.0, true},
    {"limits.longest_free_length", 0.0, true, kTenMetres},
    {"limits.load_loss", 0.0, false, 1.0,
     [](const Requirement& r) { return r.limits.load_loss ? Number(r.limits.load_loss->value) : std::nullopt; }},
};

const Allowed& allowed(std::string_view key) {
    const auto found =
        std::find_if(std::begin(kAllowed), std::end(kAllowed), [&](const Allowed& each) { return each.key == key; });
    SEATLOAD_ASSERT(found != std::end(kAllowed));
    return *found;
}

/// Only a load and the free length are stated as bands, of which either end is a number of its own.
bool is_band_end(std::string_view id) { return id.starts_with("load.") || id.starts_with("space.free_length."); }

std::string key_of(const Easing& easing) {
    return std::string(is_band_end(easing.id) ? easing.id : easing.id.substr(0, easing.id.rfind('.')));
}

std::string name_of(const Easing& easing) {
    return std::string(easing.name) + (is_band_end(easing.id) ? ' ' + std::string(easing.bound) : "");
}

std::vector<WhatIfNumber> all_numbers() {
    std::vector<WhatIfNumber> numbers;
    for (const Easing& easing : easings()) {
        const std::string key = key_of(easing);
        const bool is_known = std::any_of(numbers.begin(), numbers.end(), [&](const auto& n) { return n.key == key; });
        if (is_known) continue;  // a height can give way both up and down
        const Allowed& range = allowed(key);
        numbers.push_back({key, name_of(easing), &easing, range.lowest, range.above_lowest, range.highest});
    }
    return numbers;
}

}  // namespace

const std::vector<WhatIfNumber>& what_if_numbers() {
    static const std::vector<WhatIfNumber> all = all_numbers();
    return all;
}

std::optional<double> stated(const WhatIfNumber& number, const Requirement& requirement) {
    const auto now = number.easing->now(requirement);
    const Allowed& range = allowed(number.key);
    return now || range.silent == nullptr ? now : range.silent(requirement);
}

}  // namespace seatload::sizing
