// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

#include <seatload/check/rule.hpp>
#include <seatload/core/assert.hpp>
#include <seatload/demand/half_turn.hpp>
#include <seatload/spring/buckling.hpp>
#include <seatload/spring/growth.hpp>
#include <seatload/spring/helix.hpp>
#include <seatload/spring/lateral.hpp>
#include <seatload/spring/lean.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/spring/surge.hpp>

namespace seatload::check {
namespace {

using spring::Ends;
constexpr double kInfinite = std::numeric_limits<double>::infinity();

// ---- the wire and the coil body ------------------------------------------------------------------------------------

Measure service_temperature(const Coil& c, double) { return {c.demand.temperature_c, c.wire.service_limit_c}; }
Measure static_wire(const Coil& c, double) { return {c.wire.static_duty_only ? 1.0 : 0.0, 0.0}; }
Measure smallest_index(const Coil& c, double) { return {c.index, c.demand.limits.smallest_index}; }
Measure largest_index(const Coil& c, double) { return {c.index, c.demand.limits.largest_index}; }
Measure fewest_coils(const Coil& c, double) { return {c.active_coils, c.demand.limits.fewest_active_coils}; }
Measure most_coils(const Coil& c, double) { return {c.active_coils, c.demand.limits.most_active_coils}; }
Measure ground_wire(const Coil& c, double) { return {c.wire.d_mm, in_mm(c.demand.limits.smallest_ground_wire)}; }
/// How far the coils are from a multiple of the step; less than rounding makes of a multiple is none.
Measure coil_step(const Coil& c, double) {
    const double steps = c.total_coils / *c.demand.limits.coil_step;
    const double off = std::abs(steps - std::round(steps));
    return {off < 1e-6 ? 0.0 : off * *c.demand.limits.coil_step, 0.0};
}

Measure made_length(const Coil& c, double L0) { return {L0, in_mm(*c.demand.limits.longest_free_length)}; }

Measure ground_index(const Coil& c, double) { return {c.index, c.demand.limits.largest_ground_index}; }

Measure rod(const Coil& c, double) {
    const double smallest_inside = c.D_mm - c.wire.d_mm - c.diameter_tolerance_mm;
    return {smallest_inside, *c.demand.rod_largest_mm + in_mm(c.demand.limits.rod_clearance)};
}

/// The tolerance rises with the mean diameter, but outside its table there is none.
double least_tolerance(const Coil& low, const Coil& high) {
    return std::min(low.diameter_tolerance_mm, high.diameter_tolerance_mm);
}

double most_tolerance(const Coil& low, const Coil& high) {
    if (least_tolerance(low, high) <= 0.0) return kInfinite;
    return std::max(low.diameter_tolerance_mm, high.diameter_tolerance_mm);
}

Measure kindest_rod(const Coil& low, const Coil& high, double L0) {
    return {high.D_mm - high.wire.d_mm - least_tolerance(low, high), rod(low, L0).limit};
}

Measure harshest_rod(const Coil& low, const Coil& high, double L0) {
    return {low.D_mm - low.wire.d_mm - most_tolerance(low, high), rod(low, L0).limit};
}

double free_pitch(const Coil& c, double L0) { return spring::pitch(c.ends, L0, c.wire.d_mm, c.active_coils); }

/// How much wider the coil gets when it is pressed: less for a larger coil and for a smaller pitch.
double widening(const Coil& c, double L0) {
    const double m = free_pitch(c, L0);
    // Below a pitch of one wire the coil cannot be wound; it does not shrink either.
    if (m <= c.wire.d_mm) return 0.0;
    return c.demand.limits.growth_form == demand::GrowthForm::ends_free
               ? spring::growth_ends_free(m, c.wire.d_mm, c.D_mm)
               : spring::growth_ends_held(m, c.wire.d_mm, c.D_mm);
}

double bore_limit(const DemandNumbers& d) { return *d.bore_smallest_mm - in_mm(d.limits.bore_clearance); }

Measure bore(const Coil& c, double L0) {
    return {c.outside_mm() + c.diameter_tolerance_mm + widening(c, L0), bore_limit(c.demand)};
}

Measure kindest_bore(const Coil& low, const Coil& high, double L0) {
    return {low.outside_mm() + least_tolerance(low, high) + widening(high, L0), bore_limit(low.demand)};
}

Measure harshest_bore(const Coil& low, const Coil& high, double L0) {
    return {high.outside_mm() + most_tolerance(low, high) + widening(low, L0), bore_limit(low.demand)};
}

// ---- lengths and loads ---------------------------------------------------------------------------------------------

Measure shortest(const Coil& c, double L0) { return {L0, *c.demand.shortest_mm}; }
Measure longest(const Coil& c, double L0) { return {L0, *c.demand.longest_mm}; }
Measure reach(const Coil& c, double L0) { return {L0, c.demand.seated_height_mm}; }
Measure open_coils(const Coil& c, double L0) { return {L0, c.solid_length_mm}; }

/// How far the active coils are from a half turn over, where whole turns are to be kept out altogether.
Measure half_turn(const Coil& c, double) {
    return {demand::off_half_turn(c.active_coils), c.demand.limits.half_turn_slack};
}

/// Whether some k + 1/2 lies between two numbers of coils, or but for rounding.
bool half_turn_between(double low, double high) { return std::floor(high + 0.5 + 1e-9) >= std::ceil(low + 0.5 - 1e-9); }

Measure kindest_half_turn(const Coil& low, const Coil& high, double L0) {
    const Measure at_low = half_turn(low, L0), at_high = half_turn(high, L0);
    if (half_turn_between(low.active_coils, high.active_coils)) return {0.0, at_low.limit};
    return {std::min(at_low.value, at_high.value), at_low.limit};
}

Measure seated_least(const Coil& c, double L0) {
    return {c.hot_load_n(L0, c.demand.seated_height_mm), *c.demand.seated_at_least_n};
}
Measure seated_most(const Coil& c, double L0) {
    return {c.cold_load_n(L0, c.demand.seated_height_mm), *c.demand.seated_at_most_n};
}
Measure full_least(const Coil& c, double L0) {
    return {c.hot_load_n(L0, c.demand.full_travel_height_mm), *c.demand.full_at_least_n};
}
Measure full_most(const Coil& c, double L0) {
    return {c.cold_load_n(L0, c.demand.full_travel_height_mm), *c.demand.full_at_most_n};
}

Measure gap(const Coil& c, double L0) {
    const double room = c.demand.full_travel_height_mm - c.solid_length_mm;
    if (c.demand.limits.gap_rule == demand::GapRule::en_sa) return {room, c.gap_mm};
    return {room, std::max(0.0, c.demand.limits.gap_share * (L0 - c.demand.full_travel_height_mm))};
}

// ---- strength ------------------------------------------------------------------------------------------------------

double judged_length(const Coil& c) {
    switch (c.demand.limits.stress_length) {
        case demand::StressLength::solid:
            return c.solid_length_mm;
        case demand::StressLength::smallest_permissible:
            return c.solid_length_mm + c.gap_mm;
        case demand::StressLength::full_travel:
            return c.demand.full_travel_height_mm;
    }
    return c.solid_length_mm;
}

Measure stress(const Coil& c, double L0) {
    const double tau = c.cold_load_n(L0, judged_length(c)) * c.stress_per_newton_mpa * c.stress_factor;
    return {tau, c.wire.permissible_stress_mpa};
}

double fatigue_factor(const Coil& c, double amplitude, double mean) {
    const double shear_strength = spring::kShearStrengthShare * c.wire.tensile_strength_mpa;
    switch (c.demand.limits.fatigue_line) {
        case demand::FatigueLine::goodman:
            return spring::goodman_factor(amplitude, mean, c.demand.endurance_mpa, shear_strength);
        case demand::FatigueLine::gerber:
            return spring::gerber_factor(amplitude, mean, c.demand.endurance_mpa, shear_strength);
        case demand::FatigueLine::sines:
            return spring::sines_factor(amplitude, c.demand.endurance_mpa);
    }
    return 0.0;
}

Measure fatigue(const Coil& c, double L0) {
    const double limit = c.demand.limits.fatigue_factor;
    if (!c.wire.has_endurance) return {0.0, limit};
    const double corrected = c.stress_per_newton_mpa * spring::bergstraesser_factor(c.index);
    const double least = c.cold_load_n(L0, c.demand.seated_height_mm) * corrected;
    const double most = c.cold_load_n(L0, c.demand.full_travel_height_mm) * corrected;
    if (most + least <= 0.0) return {kInfinite, limit};
    return {fatigue_factor(c, 0.5 * (most - least), 0.5 * (most + least)), limit};
}

// ---- stability -----------------------------------------------------------------------------------------------------

double buckling_reserve(const Coil& c, double L0, double seating_coefficient) {
    const double deflection = L0 - c.demand.full_travel_height_mm;
    if (deflection <= 0.0) return kInfinite;
    const double moduli = c.wire.shear_modulus_mpa / c.wire.young_modulus_mpa;
    return L0 * spring::buckling_share(L0 / c.D_mm, moduli, seating_coefficient) / deflection;
}

Measure buckling(const Coil& c, double L0) {
    return {buckling_reserve(c, L0, c.demand.seating_coefficient), c.demand.limits.buckling_margin};
}

Measure sideways_stiffness(const Coil& c, double L0) { return {buckling_reserve(c, L0, 1.0), 1.0}; }

/// How far a sliding plate can carry the end off the axis: as stated, or as far as the spring's play in the bore lets
/// it.
double sideways_play(const Coil& c) {
    if (c.demand.sideways_play_mm) return *c.demand.sideways_play_mm;
    return c.demand.bore_largest_mm ? std::max(0.0, *c.demand.bore_largest_mm - c.outside_mm()) : 0.0;
}

/// How much of what seats the ends is used, by the stiffness sideways of one coil and the play and diameter of another.
/// A narrower coil is limper sideways; a wider one has less play and broader ends.
double seat_use(const Coil& narrow, const Coil& wide, double L0, double length) {
    const double deflection = L0 - length;
    const double play = sideways_play(wide);
    if (play == 0.0) return 0.0;
    if (deflection <= 0.0 || play >= wide.D_mm) return kInfinite;
    const double moduli = wide.wire.shear_modulus_mpa / wide.wire.young_modulus_mpa;
    const double ratio = spring::transverse_rate_ratio(L0 / narrow.D_mm, deflection / L0, moduli);
    // A spring that already pushes itself sideways is caught by sideways_stiffness.
    return ratio <= 0.0 ? 0.0 : spring::seating_use(deflection, ratio * play, wide.D_mm, play, length);
}

Measure kindest_seats_flat(const Coil& low, const Coil& high, double L0) {
    const DemandNumbers& d = low.demand;
    return {std::max(seat_use(low, high, L0, d.seated_height_mm), seat_use(low, high, L0, d.full_travel_height_mm)),
            1.0};
}

Measure harshest_seats_flat(const Coil& low, const Coil& high, double L0) { return kindest_seats_flat(high, low, L0); }

Measure seats_flat(const Coil& c, double L0) { return kindest_seats_flat(c, c, L0); }

/// What bore and rod leave beside the largest coil, each with its clearance; without them the stated share of D.
double room_left(const DemandNumbers& d, const Measure& in_bore, const Measure& over_rod, double D) {
    double room = kInfinite;
    if (d.bore_smallest_mm) room = in_bore.limit - in_bore.value;
    if (d.rod_largest_mm) room = std::min(room, over_rod.value - over_rod.limit);
    return d.bore_smallest_mm || d.rod_largest_mm ? std::max(0.0, room) : d.limits.lean_share * D;
}

double room_to_lean(const Coil& c, double L0) {
    const DemandNumbers& d = c.demand;
    return room_left(d, d.bore_smallest_mm ? bore(c, L0) : Measure{}, d.rod_largest_mm ? rod(c, L0) : Measure{},
                     c.D_mm);
}

Measure lean(const Coil& c, double L0) {
    const double moduli = c.wire.shear_modulus_mpa / c.wire.young_modulus_mpa;
    const double deflection = L0 - c.demand.full_travel_height_mm;
    return {spring::sideways_lean(free_pitch(c, L0), c.D_mm, c.active_coils, c.turns_lean, deflection, moduli),
            room_to_lean(c, L0)};
}

double most_room_to_lean(const Coil& low, const Coil& high, double L0) {
    const DemandNumbers& d = low.demand;
    return room_left(d, d.bore_smallest_mm ? kindest_bore(low, high, L0) : Measure{},
                     d.rod_largest_mm ? kindest_rod(low, high, L0) : Measure{}, high.D_mm);
}

double least_room_to_lean(const Coil& low, const Coil& high, double L0) {
    const DemandNumbers& d = low.demand;
    return room_left(d, d.bore_smallest_mm ? harshest_bore(low, high, L0) : Measure{},
                     d.rod_largest_mm ? harshest_rod(low, high, L0) : Measure{}, low.D_mm);
}

/// The lean of active coils so long, of their whole turns' part and of the rest each as if the number of turns had it
/// in full: a spring has |cos(pi n)| of the first and |sin(pi n)|/(4 n) of the second.
struct LeanParts {
    double whole = 0.0, rest = 0.0;

    LeanParts(const Coil& c, double active_length, double deflection) {
        const double moduli = c.wire.shear_modulus_mpa / c.wire.young_modulus_mpa, n = c.active_coils;
        whole = spring::sideways_lean(active_length / n, c.D_mm, n, {1.0, 0.0}, deflection, moduli);
        if (whole > 0.0 && is_finite())
            rest = whole * spring::rest_of_phase(
                               spring::bending_phase(active_length / c.D_mm, deflection / active_length, moduli),
                               deflection / active_length);
    }
    bool is_finite() const { return std::isfinite(whole); }
    double at(const Coil& c, double at_half) const {
        return whole * c.turns_lean.tilt + at_half * (c.turns_lean.rest * 4.0 * c.active_coils);
    }
};

/// It leans less the wider the coil and the more there are of them; with open and ground ends, more turns also lengthen
/// the active part, which then leans more. Between whole and half turns the lean bulges upwards, so that it is least at
/// an end of the range or at one of those.
Measure kindest_lean(const Coil& low, const Coil& high, double L0) {
    const double room = most_room_to_lean(low, high, L0);
    const double deflection = L0 - low.demand.full_travel_height_mm;
    const double shortest = free_pitch(low, L0) * low.active_coils, longest = free_pitch(high, L0) * high.active_coils;
    if (deflection >= shortest && deflection < longest) return {0.0, room};
    const LeanParts parts(high, shortest, deflection);
    if (!parts.is_finite()) return {kInfinite, room};
    const double at_half = parts.rest / (4.0 * high.active_coils);
    const double least = std::min({parts.at(low, at_half), parts.at(high, at_half), parts.whole});
    return {half_turn_between(low.active_coils, high.active_coils) ? std::min(least, at_half) : least, room};
}

/// Between the ends of the range the lean is above theirs by no more than its slope there allows, and at no number of
/// turns above the root of the squares of its parts.
Measure harshest_lean(const Coil& low, const Coil& high, double L0) {
    const double room = least_room_to_lean(low, high, L0);
    const double deflection = L0 - low.demand.full_travel_height_mm;
    const double shortest = free_pitch(low, L0) * low.active_coils, longest = free_pitch(high, L0) * high.active_coils;
    if (deflection >= shortest && deflection < longest) return {kInfinite, room};
    const LeanParts parts(low, std::max(shortest, longest), deflection);
    if (!parts.is_finite()) return {kInfinite, room};
    const double at_half = parts.rest / (4.0 * low.active_coils);
    const double highest = std::hypot(parts.whole, at_half);
    const double slope = highest * std::numbers::pi;
    const double ends = std::max(parts.at(low, at_half), parts.at(high, at_half));
    return {std::min(highest, ends + 0.5 * slope * (high.active_coils - low.active_coils)), room};
}

// ---- motion and mass -----------------------------------------------------------------------------------------------

Measure surge(const Coil& c, double) {
    const double natural =
        spring::surge_frequency(c.wire.shear_modulus_mpa, c.wire.density_t_mm3, c.wire.d_mm, c.D_mm, c.active_coils);
    return {natural / *c.demand.frequency_hz, c.demand.limits.smallest_surge_ratio};
}

Measure mass(const Coil& c, double L0) {
    const double length = spring::wire_length(free_pitch(c, L0), c.wire.d_mm, c.D_mm, c.active_coils, c.total_coils);
    return {spring::wire_mass(c.wire.density_t_mm3, c.wire.d_mm, length) * 1e6, in_gram(*c.demand.limits.largest_mass)};
}

// ---- when a rule is in play ----------------------------------------------------------------------------------------

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
    Rule{"static_wire", "wire made for static loads only", "wire made for static loads, under cycles (1 yes, 0 no)", "",
         Sense::at_most, Along::constant, Coils::do_not_matter, Trend::level, Trend::level,
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

std::span<const Rule> rules() { return kRules; }

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
