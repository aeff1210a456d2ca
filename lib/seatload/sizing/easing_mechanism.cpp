// SPDX-License-Identifier: MIT
#include <seatload/sizing/easing_tables.hpp>

#include <algorithm>

namespace seatload::sizing {
namespace {

using demand::Requirement;
using Number = std::optional<double>;

/// A load or another number that cannot be eased when it is nothing.
Number positive(Number number) { return number && *number > 0.0 ? number : std::nullopt; }

double travel(const Requirement& r) { return in_mm(r.space.seated_height - r.space.full_travel_height); }

/// Moves both limits of a bore or rod so that the one that counts becomes `value` mm.
void shift(demand::Fit& fit, Length counts, double value) {
    const Length by = value * mm - counts;
    fit.smallest += by;
    fit.largest += by;
    fit.nominal += by;
}

}  // namespace

// A table: as long as there are entries.
std::vector<Easing> mechanism_easings() {  // NOLINT(readability-function-size)
    return {
        // ---- loads -------------------------------------------------------------------------------------------------
        Easing{"load.seated.at_least", "seated load", "at least", "N", kMechanism, kSteady, Mends{"seated_load_least"},
               kSameWire, [](const Requirement& r) { return positive(plain(r.seated_load.at_least)); },
               [](const Requirement& r) { return 0.1 * r.seated_load.at_least->value(); },
               [](Requirement& r, double v) { r.seated_load.at_least = v * newton; }},
        Easing{"load.seated.at_most", "seated load", "at most", "N", kMechanism, kSteady, Mends{"seated_load_most"},
               kSameWire, [](const Requirement& r) { return positive(plain(r.seated_load.at_most)); },
               [](const Requirement& r) { return 4.0 * r.seated_load.at_most->value(); },
               [](Requirement& r, double v) { r.seated_load.at_most = v * newton; }},
        Easing{"load.full_travel.at_least", "full-travel load", "at least", "N", kMechanism, kSteady,
               Mends{"full_travel_load_least"}, kSameWire,
               [](const Requirement& r) { return positive(plain(r.full_travel_load.at_least)); },
               [](const Requirement& r) { return 0.1 * r.full_travel_load.at_least->value(); },
               [](Requirement& r, double v) { r.full_travel_load.at_least = v * newton; }},
        Easing{"load.full_travel.at_most", "full-travel load", "at most", "N", kMechanism, kSteady,
               Mends{"full_travel_load_most"}, kSameWire,
               [](const Requirement& r) { return positive(plain(r.full_travel_load.at_most)); },
               [](const Requirement& r) { return 4.0 * r.full_travel_load.at_most->value(); },
               [](Requirement& r, double v) { r.full_travel_load.at_most = v * newton; }},
        // ---- room --------------------------------------------------------------------------------------------------
        Easing{"space.seated_height.at_least", "seated height", "at least", "mm", kMechanism, kMayTurn,
               Mends{"seated_load_most", "seats_flat"}, kSameWire,
               [](const Requirement& r) { return Number(in_mm(r.space.seated_height)); },
               [](const Requirement& r) { return 1.5 * in_mm(r.space.seated_height); },
               [](Requirement& r, double v) { r.space.seated_height = v * mm; }},
        Easing{"space.seated_height.at_most", "seated height", "at most", "mm", kMechanism, kMayTurn,
               Mends{"reach", "seated_load_least", "fatigue", "seats_flat"}, kSameWire,
               [](const Requirement& r) { return Number(in_mm(r.space.seated_height)); },
               [](const Requirement& r) { return in_mm(r.space.full_travel_height) + 0.05 * travel(r); },
               [](Requirement& r, double v) { r.space.seated_height = v * mm; }},
        Easing{"space.full_travel_height.at_least", "full-travel height", "at least", "mm", kMechanism, kMayTurn,
               Mends{"full_travel_load_most", "gap_to_solid", "stress", "buckling", "sideways_stiffness", "seats_flat",
                     "lean", "fatigue"},
               kSameWire, [](const Requirement& r) { return Number(in_mm(r.space.full_travel_height)); },
               [](const Requirement& r) { return in_mm(r.space.seated_height) - 0.05 * travel(r); },
               [](Requirement& r, double v) { r.space.full_travel_height = v * mm; }},
        Easing{"space.full_travel_height.at_most", "full-travel height", "at most", "mm", kMechanism, kMayTurn,
               Mends{"full_travel_load_least"}, kSameWire,
               [](const Requirement& r) { return Number(in_mm(r.space.full_travel_height)); },
               [](const Requirement& r) { return 0.67 * in_mm(r.space.full_travel_height); },
               [](Requirement& r, double v) { r.space.full_travel_height = v * mm; }},
        Easing{"space.bore.at_least", "bore", "at least", "mm", kMechanism, kMayTurn, Mends{"bore_clearance", "lean"},
               kSameWire,
               [](const Requirement& r) { return r.space.bore ? Number(in_mm(r.space.bore->smallest)) : std::nullopt; },
               [](const Requirement& r) { return 1.25 * in_mm(r.space.bore->smallest); },
               [](Requirement& r, double v) { shift(*r.space.bore, r.space.bore->smallest, v); }},
        Easing{"space.rod.at_most", "rod", "at most", "mm", kMechanism, kSteady, Mends{"rod_clearance", "lean"},
               kSameWire,
               [](const Requirement& r) { return r.space.rod ? Number(in_mm(r.space.rod->largest)) : std::nullopt; },
               [](const Requirement& r) { return in_mm(r.space.rod->largest) - 0.25 * in_mm(r.space.rod->smallest); },
               [](Requirement& r, double v) { shift(*r.space.rod, r.space.rod->largest, v); }},
        Easing{"space.free_length.at_least", "free length", "at least", "mm", kMechanism, kSteady,
               Mends{"free_length_shortest"}, kSameWire,
               [](const Requirement& r) {
                   return r.space.free_length ? Number(in_mm(r.space.free_length->smallest)) : std::nullopt;
               },
               [](const Requirement& r) {
                   return std::min(in_mm(r.space.free_length->smallest), in_mm(r.space.seated_height));
               },
               [](Requirement& r, double v) { r.space.free_length->smallest = v * mm; }},
        Easing{"space.free_length.at_most", "free length", "at most", "mm", kMechanism, kSteady,
               Mends{"free_length_longest"}, kSameWire,
               [](const Requirement& r) {
                   return r.space.free_length ? Number(in_mm(r.space.free_length->largest)) : std::nullopt;
               },
               [](const Requirement& r) {
                   return std::max(in_mm(r.space.free_length->largest), 3.0 * in_mm(r.space.seated_height));
               },
               [](Requirement& r, double v) { r.space.free_length->largest = v * mm; }},
        Easing{
            "space.sideways_play.at_most", "sideways play of the seat", "at most", "mm", kMechanism, kSteady,
            Mends{"seats_flat"}, kSameWire, [](const Requirement& r) { return positive(plain(r.space.sideways_play)); },
            [](const Requirement&) { return 0.0; }, [](Requirement& r, double v) { r.space.sideways_play = v * mm; }},
        // ---- surroundings ------------------------------------------------------------------------------------------
        Easing{"surroundings.temperature.at_most", "temperature", "at most", "°C", kMechanism, kSteady,
               Mends{"service_temperature", "seated_load_least", "full_travel_load_least"}, kMoreWire,
               [](const Requirement& r) { return above(r.surroundings.temperature.degrees, 20.0); },
               [](const Requirement&) { return 20.0; },
               [](Requirement& r, double v) { r.surroundings.temperature.degrees = v; }},
        Easing{"limits.largest_mass.at_least", "mass allowed", "at least", "g", kMechanism, kSteady, Mends{"mass"},
               kSameWire,
               [](const Requirement& r) {
                   return r.limits.largest_mass ? Number(in_gram(*r.limits.largest_mass)) : std::nullopt;
               },
               [](const Requirement& r) { return 4.0 * in_gram(*r.limits.largest_mass); },
               [](Requirement& r, double v) { r.limits.largest_mass = v * gram; }},
    };
}

}  // namespace seatload::sizing
