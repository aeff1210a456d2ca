// SPDX-License-Identifier: MIT
#include <seatload/sizing/easing_tables.hpp>

#include <algorithm>

namespace seatload::sizing {
namespace {

using demand::Requirement;
using Number = std::optional<double>;

}  // namespace

// A table: as long as there are entries.
std::vector<Easing> limit_easings() {  // NOLINT(readability-function-size)
    return {
        Easing{"limits.stress_share.at_least", "permissible stress", "at least", "of Rm", kSafeguard, kSteady,
               Mends{"stress"}, kSameWire, [](const Requirement& r) { return r.limits.stress_share; },
               [](const Requirement& r) { return 1.25 * *r.limits.stress_share; },
               [](Requirement& r, double v) { r.limits.stress_share = v; }},
        Easing{"limits.stress_safety.at_most", "safety against yielding", "at most", "", kSafeguard, kSteady,
               Mends{"stress"}, kSameWire, [](const Requirement& r) { return above(r.limits.stress_safety, 1.0); },
               [](const Requirement&) { return 1.0; }, [](Requirement& r, double v) { r.limits.stress_safety = v; }},
        Easing{"limits.gap_share.at_most", "share of the travel left above solid", "at most", "", kSafeguard, kSteady,
               Mends{"gap_to_solid"}, kSameWire,
               [](const Requirement& r) {
                   return r.limits.gap_rule == demand::GapRule::share_of_travel ? above(r.limits.gap_share, 0.0)
                                                                                : std::nullopt;
               },
               [](const Requirement&) { return 0.0; }, [](Requirement& r, double v) { r.limits.gap_share = v; }},
        Easing{"limits.seating_coefficient.at_most", "seating coefficient", "at most", "", kSafeguard, kSteady,
               Mends{"buckling"}, kSameWire, [](const Requirement& r) { return r.limits.seating_coefficient; },
               [](const Requirement& r) { return 0.5 * *r.limits.seating_coefficient; },
               [](Requirement& r, double v) { r.limits.seating_coefficient = v; }},
        Easing{"limits.buckling_margin.at_most", "margin against buckling", "at most", "", kSafeguard, kSteady,
               Mends{"buckling"}, kSameWire, [](const Requirement& r) { return above(r.limits.buckling_margin, 1.0); },
               [](const Requirement&) { return 1.0; }, [](Requirement& r, double v) { r.limits.buckling_margin = v; }},
        Easing{"limits.smallest_index.at_most", "smallest spring index", "at most", "", kSafeguard, kSteady,
               Mends{"index_smallest"}, kSameWire,
               [](const Requirement& r) { return above(r.limits.smallest_index, 3.0); },
               [](const Requirement&) { return 3.0; }, [](Requirement& r, double v) { r.limits.smallest_index = v; }},
        Easing{"limits.largest_index.at_least", "largest spring index", "at least", "", kSafeguard, kSteady,
               Mends{"index_largest"}, kSameWire, [](const Requirement& r) { return Number(r.limits.largest_index); },
               [](const Requirement& r) { return std::max(25.0, r.limits.largest_index); },
               [](Requirement& r, double v) { r.limits.largest_index = v; }},
        Easing{"limits.fewest_active_coils.at_most", "fewest active coils", "at most", "", kSafeguard, kSteady,
               Mends{"coils_fewest"}, kSameWire,
               [](const Requirement& r) { return above(r.limits.fewest_active_coils, 1.0); },
               [](const Requirement&) { return 1.0; },
               [](Requirement& r, double v) { r.limits.fewest_active_coils = v; }},
        Easing{"limits.most_active_coils.at_least", "most active coils", "at least", "", kSafeguard, kSteady,
               Mends{"coils_most"}, kSameWire, [](const Requirement& r) { return Number(r.limits.most_active_coils); },
               [](const Requirement& r) { return 3.0 * r.limits.most_active_coils; },
               [](Requirement& r, double v) { r.limits.most_active_coils = v; }},
        Easing{"limits.half_turn_slack.at_least", "turns that the active coils may be off a half turn over", "at least",
               "", kSafeguard, kSteady, Mends{"half_turn"}, kSameWire,
               [](const Requirement& r) { return Number(r.limits.half_turn_slack); },
               [](const Requirement& r) { return std::max(0.5, r.limits.half_turn_slack); },
               [](Requirement& r, double v) { r.limits.half_turn_slack = v; }},
        Easing{"limits.lean_share.at_least", "sideways lean as a share of D", "at least", "", kSafeguard, kSteady,
               Mends{"lean"}, kSameWire,
               [](const Requirement& r) {
                   const bool bounded = r.space.bore || r.space.rod || r.space.seats != demand::Seats::slides;
                   return bounded ? std::nullopt : Number(r.limits.lean_share);
               },
               [](const Requirement& r) { return std::max(0.25, r.limits.lean_share); },
               [](Requirement& r, double v) { r.limits.lean_share = v; }},
        Easing{"limits.bore_clearance.at_most", "clearance in the bore", "at most", "mm", kSafeguard, kSteady,
               Mends{"bore_clearance", "lean"}, kSameWire,
               [](const Requirement& r) { return above(in_mm(r.limits.bore_clearance), 0.0); },
               [](const Requirement&) { return 0.0; },
               [](Requirement& r, double v) { r.limits.bore_clearance = v * mm; }},
        Easing{"limits.rod_clearance.at_most", "clearance over the rod", "at most", "mm", kSafeguard, kSteady,
               Mends{"rod_clearance", "lean"}, kSameWire,
               [](const Requirement& r) { return above(in_mm(r.limits.rod_clearance), 0.0); },
               [](const Requirement&) { return 0.0; },
               [](Requirement& r, double v) { r.limits.rod_clearance = v * mm; }},
        Easing{"limits.smallest_surge_ratio.at_most", "natural frequency over that of the motion", "at most", "",
               kSafeguard, kSteady, Mends{"surge"}, kSameWire,
               [](const Requirement& r) { return above(r.limits.smallest_surge_ratio, 0.0); },
               [](const Requirement& r) { return 0.25 * r.limits.smallest_surge_ratio; },
               [](Requirement& r, double v) { r.limits.smallest_surge_ratio = v; }},
        Easing{"limits.fatigue_factor.at_most", "fatigue factor", "at most", "", kSafeguard, kSteady, Mends{"fatigue"},
               kSameWire, [](const Requirement& r) { return above(r.limits.fatigue_factor, 1.0); },
               [](const Requirement&) { return 1.0; }, [](Requirement& r, double v) { r.limits.fatigue_factor = v; }},
        Easing{"limits.smallest_ground_wire.at_most", "thinnest wire that is ground", "at most", "mm", kSafeguard,
               kSteady, Mends{"ground_wire"}, kSameWire,
               [](const Requirement& r) { return above(in_mm(r.limits.smallest_ground_wire), 0.0); },
               [](const Requirement& r) { return 0.25 * in_mm(r.limits.smallest_ground_wire); },
               [](Requirement& r, double v) { r.limits.smallest_ground_wire = v * mm; }},
        Easing{"limits.largest_ground_index.at_least", "largest spring index that is ground", "at least", "",
               kSafeguard, kSteady, Mends{"ground_index"}, kSameWire,
               [](const Requirement& r) { return Number(r.limits.largest_ground_index); },
               [](const Requirement& r) { return std::max(25.0, r.limits.largest_ground_index); },
               [](Requirement& r, double v) { r.limits.largest_ground_index = v; }},
        Easing{"limits.longest_free_length.at_least", "longest free length that can be made", "at least", "mm",
               kSafeguard, kSteady, Mends{"made_length"}, kSameWire,
               [](const Requirement& r) {
                   return r.limits.longest_free_length ? Number(in_mm(*r.limits.longest_free_length)) : std::nullopt;
               },
               [](const Requirement& r) { return 2.0 * in_mm(*r.limits.longest_free_length); },
               [](Requirement& r, double v) { r.limits.longest_free_length = v * mm; }},
        Easing{"limits.load_loss.at_most", "share of the load lost in service", "at most", "", kSafeguard, kSteady,
               Mends{"seated_load_least", "full_travel_load_least"}, kSameWire,
               [](const Requirement& r) {
                   return r.limits.load_loss ? above(r.limits.load_loss->value, 0.0) : std::nullopt;
               },
               [](const Requirement&) { return 0.0; }, [](Requirement& r, double v) { r.limits.load_loss = Share{v}; }},
    };
}

}  // namespace seatload::sizing
