// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include <seatload/check/clearance_measures.hpp>
#include <seatload/check/coil_measures.hpp>
#include <seatload/check/inertia_measures.hpp>
#include <seatload/check/lean_measures.hpp>
#include <seatload/check/length_measures.hpp>
#include <seatload/check/load_measures.hpp>
#include <seatload/check/rule.hpp>
#include <seatload/check/stability_measures.hpp>
#include <seatload/check/strength_measures.hpp>
#include <seatload/core/assert.hpp>

namespace seatload::check {
namespace detail {
namespace {

using spring::Ends;
using D = DemandNumbers;
bool always(const D&, Ends) { return true; }
bool with_heights(const D& d, Ends) { return d.has_heights; }
/// With the seating coefficient and margin of a sliding seat, buckling asks the same already.
bool sideways_in_play(const D& d, Ends) {
    return d.has_heights && d.slides && (d.seating_coefficient < 1.0 || d.limits.buckling_margin < 1.0);
}
bool when_ground(const D&, Ends ends) { return spring::are_ground(ends); }

constexpr std::array kRules{
    Rule{"service_temperature", "service temperature of the grade", "service temperature of the wire", "°C",
         Sense::at_most, Along::constant, Coils::do_not_matter, Trend::level, Trend::level,
         "service limit of the wire grade", [](const D& d, Ends) { return d.limits.heed_service_limit; },
         service_temperature},
    Rule{"static_wire", "wire made for static loads only", "wire made for static loads only, to move in cycles",
         kYesOrNo, Sense::at_most, Along::constant, Coils::do_not_matter, Trend::level, Trend::level,
         "classes of EN 10270-1 (S static, D dynamic) and EN 10270-2 (F static, T and V fatigue); ASTM A227 scope "
         "(memory)",
         [](const D& d, Ends) { return d.dynamic; }, static_wire},
    Rule{"index_smallest", "spring index too small", "spring index w", "", Sense::at_least, Along::constant,
         Coils::do_not_matter, Trend::helps, Trend::level, "EN 15800 scope, 4 <= w <= 20; Shigley Eq. 10-18", always,
         smallest_index},
    Rule{"index_largest", "spring index too large", "spring index w", "", Sense::at_most, Along::constant,
         Coils::do_not_matter, Trend::hurts, Trend::level, "EN 15800 scope, 4 <= w <= 20; Shigley Eq. 10-18", always,
         largest_index},
    Rule{"coils_fewest", "too few active coils", "active coils n", "", Sense::at_least, Along::constant, Coils::matter,
         Trend::level, Trend::helps, "EN 13906-1 scope, n >= 2; Shigley Eq. 10-19", always, fewest_coils},
    Rule{"coils_most", "too many active coils", "active coils n", "", Sense::at_most, Along::constant, Coils::matter,
         Trend::level, Trend::hurts, "Shigley Eq. 10-19, or as required", always, most_coils},
    Rule{"half_turn", "not half a turn over, on a sliding seat",
         "active coils n, distance from a half turn over (k + 1/2)", "", Sense::at_most, Along::constant, Coils::matter,
         Trend::level, Trend::unclear, "as required; whole turns lean most (finite elements, own study)",
         [](const D& d, Ends) { return d.slides && d.limits.half_turn_slack < 0.5; }, half_turn, kindest_half_turn},
    Rule{"ground_wire", "wire too thin to grind", "wire diameter of ground ends", "mm", Sense::at_least,
         Along::constant, Coils::do_not_matter, Trend::level, Trend::level,
         "common practice (0.5 mm; EN practice 1 mm, from memory)", when_ground, ground_wire},
    Rule{"ground_index", "index too large to grind", "spring index of ground ends", "", Sense::at_most, Along::constant,
         Coils::do_not_matter, Trend::hurts, Trend::level, "EN 15800 practice, w <= 15 (memory)", when_ground,
         ground_index},
    Rule{"coil_step", "coils the maker does not wind", "total coils, distance from a multiple of the maker's step", "",
         Sense::at_most, Along::constant, Coils::matter, Trend::level, Trend::unclear, "as required",
         [](const D& d, Ends) { return d.limits.coil_step.has_value(); }, coil_step},
    Rule{"made_length", "longer than can be made", "free length L0", "mm", Sense::at_most, Along::up_to,
         Coils::do_not_matter, Trend::level, Trend::level, "as required",
         [](const D& d, Ends) { return d.limits.longest_free_length.has_value(); }, made_length},
    Rule{"rod_clearance", "clearance over the rod", "smallest inside diameter over the rod", "mm", Sense::at_least,
         Along::constant, Coils::do_not_matter, Trend::unclear, Trend::level, "EN 15800 coil diameter tolerance",
         [](const D& d, Ends) { return d.rod_largest_mm.has_value(); }, rod, kindest_rod, harshest_rod},
    Rule{"bore_clearance", "clearance in the bore", "largest outside diameter, compressed, in the bore", "mm",
         Sense::at_most, Along::up_to, Coils::matter, Trend::unclear, Trend::helps,
         "EN 15800 coil diameter tolerance; EN 13906-1 cl. 9.11 growth (memory)",
         [](const D& d, Ends) { return d.bore_smallest_mm.has_value(); }, bore, kindest_bore, harshest_bore},
    Rule{"free_length_shortest", "free length too short", "free length L0", "mm", Sense::at_least, Along::from,
         Coils::do_not_matter, Trend::level, Trend::level, "free-length envelope",
         [](const D& d, Ends) { return d.shortest_mm.has_value(); }, shortest},
    Rule{"free_length_longest", "free length too long", "free length L0", "mm", Sense::at_most, Along::up_to,
         Coils::do_not_matter, Trend::level, Trend::level, "free-length envelope",
         [](const D& d, Ends) { return d.longest_mm.has_value(); }, longest},
    Rule{"reach", "does not reach the seated height", "free length L0, to touch both seats", "mm", Sense::at_least,
         Along::from, Coils::do_not_matter, Trend::level, Trend::level, "seated height", with_heights, reach},
    Rule{"open_coils", "coils closed when free", "free length L0, over the solid length", "mm", Sense::at_least,
         Along::from, Coils::matter, Trend::level, Trend::hurts, "geometry of the coil", always, open_coils},
    Rule{"seated_load_least", "seated load too small", "seated load, hot and after load loss", "N", Sense::at_least,
         Along::from, Coils::matter, Trend::hurts, Trend::hurts, "required load band",
         [](const D& d, Ends) { return d.seated_at_least_n.has_value(); }, seated_least},
    Rule{"seated_load_most", "seated load too large", "seated load, cold and new", "N", Sense::at_most, Along::up_to,
         Coils::matter, Trend::helps, Trend::helps, "required load band",
         [](const D& d, Ends) { return d.seated_at_most_n.has_value(); }, seated_most},
    Rule{"full_travel_load_least", "full-travel load too small", "full-travel load, hot and after load loss", "N",
         Sense::at_least, Along::from, Coils::matter, Trend::hurts, Trend::hurts, "required load band",
         [](const D& d, Ends) { return d.full_at_least_n.has_value(); }, full_least},
    Rule{"full_travel_load_most", "full-travel load too large", "full-travel load, cold and new", "N", Sense::at_most,
         Along::up_to, Coils::matter, Trend::helps, Trend::helps, "required load band",
         [](const D& d, Ends) { return d.full_at_most_n.has_value(); }, full_most},
    Rule{"gap_to_solid", "too near solid at full travel", "room above solid length at full travel", "mm",
         Sense::at_least, Along::up_to, Coils::matter, Trend::hurts, Trend::hurts,
         "EN 13906-1 cl. 9.9; Shigley Eq. 10-20", with_heights, gap},
    Rule{"stress", "static stress", "static stress", "MPa", Sense::at_most, Along::up_to, Coils::matter, Trend::helps,
         Trend::helps, "EN 13906-1 cl. 6.2, 0.56 Rm (memory); Shigley Table 10-6, Eq. 10-21",
         [](const D& d, Ends) { return d.has_heights || d.limits.stress_length != demand::StressLength::full_travel; },
         stress},
    Rule{"buckling", "buckling", "buckling deflection over working deflection", "", Sense::at_least, Along::up_to,
         Coils::do_not_matter, Trend::helps, Trend::level, "EN 13906-1 cl. 9.14 (memory); Shigley Eq. 10-10",
         [](const D& d, Ends) { return d.has_heights && !d.guided; }, buckling},
    Rule{"sideways_stiffness", "pushed away on its sliding seat",
         "deflection at which a sliding seat is pushed away, over working deflection", "", Sense::at_least,
         Along::up_to, Coils::do_not_matter, Trend::helps, Trend::level, "EN 13906-1 cl. 9.13, R_Q > 0 (memory)",
         sideways_in_play, sideways_stiffness},
    Rule{"seats_flat", "ends rock on their seats", "moment that rocks the ends over the moment that seats them", "",
         Sense::at_most, Along::from, Coils::do_not_matter, Trend::unclear, Trend::level,
         "EN 13906-1 cl. 9.13, F_Q L < F (D - s_Q) (memory)",
         [](const D& d, Ends) { return d.has_heights && d.slides; }, seats_flat, kindest_seats_flat,
         harshest_seats_flat},
    Rule{"lean", "lean on a sliding seat", "sideways lean at full travel, tips as drawn, beside the largest coil", "mm",
         Sense::at_most, Along::up_to, Coils::matter, Trend::unclear, Trend::unclear,
         "beam-column with askew ends; finite elements, own study",
         [](const D& d, Ends) { return d.has_heights && d.slides; }, lean, kindest_lean, harshest_lean},
    Rule{"surge", "surge", "natural frequency over the frequency of the motion", "", Sense::at_least, Along::constant,
         Coils::matter, Trend::hurts, Trend::hurts, "EN 13906-1 cl. 9.12; Shigley ch. 10 asks 15 to 20",
         [](const D& d, Ends) { return d.frequency_hz.has_value(); }, surge},
    Rule{"fatigue", "fatigue", "fatigue factor", "", Sense::at_least, Along::up_to, Coils::matter, Trend::helps,
         Trend::helps, "Zimmerli, Shigley Eq. 10-28 and 10-29",
         [](const D& d, Ends) { return d.has_heights && d.dynamic; }, fatigue},
    Rule{"mass", "mass", "mass of a spring", "g", Sense::at_most, Along::up_to, Coils::matter, Trend::hurts,
         Trend::hurts, "as required", [](const D& d, Ends) { return d.limits.largest_mass.has_value(); }, mass},
};

}  // namespace
}  // namespace detail

std::span<const Rule> rules() { return detail::kRules; }

const Rule& rule_named(std::string_view id) {
    const auto all = rules();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Rule& r) { return r.id == id; });
    SEATLOAD_ASSERT(found != all.end());
    return *found;
}

const Rule& lean_rule() {
    static const Rule& rule = rule_named("lean");
    return rule;
}

}  // namespace seatload::check
