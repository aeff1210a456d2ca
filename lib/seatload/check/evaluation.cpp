// SPDX-License-Identifier: MIT
#include <seatload/check/evaluation.hpp>

#include <cmath>

#include <seatload/check/length_measures.hpp>
#include <seatload/check/stability_measures.hpp>
#include <seatload/spring/buckling.hpp>
#include <seatload/spring/growth.hpp>
#include <seatload/spring/helix.hpp>
#include <seatload/spring/lateral.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/spring/surge.hpp>
#include <seatload/units/format.hpp>

namespace seatload::check {
namespace {

Diagnostic unusable(const spring::Spring& s, const wire::Grade& grade, const demand::Requirement& requirement) {
    const wire::DiameterRange range = wire::strength_range(grade);
    if (!wire::strength_at(grade, s.wire_diameter))
        return error("no-strength"_id,
                     "wire " + grade.id + " has no known strength at " + units::shown_wire(s.wire_diameter),
                     "its strengths are known from " + units::shown_wire(range.smallest) + " to " +
                         units::shown_wire(range.largest) + "; is the diameter right, or another grade meant?");
    return error(
        "no-guidance"_id,
        "the load loss of " + grade.id + " at " + units::shown(requirement.surroundings.temperature) + " is not known",
        "state it under [limits] as load_loss = \"3 %\", from the wire maker or a test");
}

AtLength at_length(const Coil& c, const Evaluation& e, double length_mm) {
    const double L0 = in_mm(e.spring.free_length);
    AtLength at;
    at.length = length_mm * mm;
    at.deflection = (L0 - length_mm) * mm;
    at.load = c.cold_load_n(L0, length_mm) * newton;
    at.load_in_service = c.hot_load_n(L0, length_mm) * newton;
    at.stress = spring::stress(at.load, e.spring.wire_diameter, e.spring.mean_diameter);
    at.corrected_stress = e.stress_factor * at.stress;
    at.share_of_strength = at.stress / e.strength.minimum;
    return at;
}

/// Room above solid length that the limits' rule leaves [mm]; a share of the travel needs the heights.
double room_left(const Coil& c, double L0) { return c.demand.has_heights ? detail::gap(c, L0).limit : c.gap_mm; }

Sideways sideways(const Coil& c, const Evaluation& e) {
    const spring::Spring& s = e.spring;
    Sideways out;
    out.play = detail::sideways_play(c) * mm;
    const AtLength& at = *e.full_travel;
    const double ratio = at.deflection > 0.0 * mm ? spring::transverse_rate_ratio(s.free_length / s.mean_diameter,
                                                                                  at.deflection / s.free_length,
                                                                                  e.moduli.shear / e.moduli.young)
                                                  : 0.0;
    out.combined_stress = at.stress;
    if (ratio <= 0.0) return out;
    out.stiffness = ratio * e.rate;
    out.combined_stress = spring::combined_stress(at.load, spring::transverse_force(*out.stiffness, out.play),
                                                  s.wire_diameter, s.mean_diameter, out.play, at.length);
    return out;
}

void fill_geometry(Evaluation& e, const wire::Grade& grade) {
    const spring::Spring& s = e.spring;
    e.pitch = spring::pitch(s.ends, s.free_length, s.wire_diameter, e.active_coils);
    e.helix_angle = spring::helix_angle(e.pitch, s.mean_diameter) * radian;
    e.wire_length = spring::wire_length(e.pitch, s.wire_diameter, s.mean_diameter, e.active_coils, s.total_coils);
    e.mass = spring::wire_mass(grade.density, s.wire_diameter, e.wire_length);
    e.growth_ends_free = spring::growth_ends_free(e.pitch, s.wire_diameter, s.mean_diameter);
    e.growth_ends_held = spring::growth_ends_held(e.pitch, s.wire_diameter, s.mean_diameter);
    e.natural_frequency =
        spring::surge_frequency(e.moduli.shear, grade.density, s.wire_diameter, s.mean_diameter, e.active_coils);
}

void fill_stability(Evaluation& e, const Coil& c) {
    const spring::Spring& s = e.spring;
    e.seating_coefficient = c.demand.seating_coefficient;
    e.stable_slenderness = spring::stable_slenderness(e.moduli.shear / e.moduli.young, e.seating_coefficient);
    const Length deflection = spring::buckling_deflection(s.free_length, s.mean_diameter, e.moduli.shear,
                                                          e.moduli.young, e.seating_coefficient);
    if (std::isfinite(in_mm(deflection))) e.buckling_deflection = deflection;
    if (c.demand.slides && e.full_travel) e.sideways = sideways(c, e);
    e.tips = tips(c, in_mm(s.free_length));
    e.lean_bounds = lean_bounds(c, in_mm(s.free_length), e.tips);
}

}  // namespace

Result<Evaluation> evaluate(const spring::Spring& s, const wire::Grade& grade, const demand::Requirement& requirement,
                            const tolerance::Tables& tables, bool has_heights) {
    const auto wire_numbers = numbers(grade, s.wire_diameter, requirement);
    if (!wire_numbers) return unusable(s, grade, requirement);
    DemandNumbers demand = numbers(requirement);
    demand.has_heights = has_heights;
    const Coil coil(demand, *wire_numbers, tables, in_mm(s.mean_diameter), s.ends, s.total_coils);
    Evaluation e;
    e.spring = s;
    e.strength = *wire::strength_at(grade, s.wire_diameter);
    e.moduli = wire::moduli_at(grade, s.wire_diameter);
    e.index = coil.index;
    e.active_coils = coil.active_coils;
    e.stress_factor = spring::bergstraesser_factor(coil.index);
    e.rate = coil.rate_n_mm * newton_per_mm;
    e.rate_hot = wire_numbers->hot_share * e.rate;
    e.load_loss = 1.0 - wire_numbers->load_kept;
    e.solid_length = coil.solid_length_mm * mm;
    e.smallest_gaps = coil.gap_mm * mm;
    e.smallest_length = (coil.solid_length_mm + room_left(coil, in_mm(s.free_length))) * mm;
    e.at_smallest_length = at_length(coil, e, in_mm(e.smallest_length));
    e.at_solid = at_length(coil, e, coil.solid_length_mm);
    if (has_heights) {
        e.seated = at_length(coil, e, demand.seated_height_mm);
        e.full_travel = at_length(coil, e, demand.full_travel_height_mm);
    }
    fill_geometry(e, grade);
    fill_stability(e, coil);
    e.verdicts = verdicts(coil, in_mm(s.free_length));
    return e;
}

}  // namespace seatload::check
