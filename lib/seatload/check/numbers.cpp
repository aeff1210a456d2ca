// SPDX-License-Identifier: MIT
#include <seatload/check/numbers.hpp>

#include <algorithm>

#include <seatload/spring/coils.hpp>
#include <seatload/spring/gap.hpp>
#include <seatload/spring/lean.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/spring/temperature.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <seatload/tolerance/modulus_spread.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::check {
namespace {

template <class Q>
std::optional<double> plain(const std::optional<Q>& quantity) {
    return quantity ? std::optional<double>(quantity->value()) : std::nullopt;
}

double static_stress_factor(demand::StressFactor factor, double index) {
    switch (factor) {
        case demand::StressFactor::none:
            return 1.0;
        case demand::StressFactor::bergstraesser:
            return spring::bergstraesser_factor(index);
        case demand::StressFactor::wahl:
            return spring::wahl_factor(index);
    }
    return 1.0;
}

/// The share of load lost, as the requirement or else the wire's guidance states it.
std::optional<double> load_loss(const wire::Grade& grade, const demand::Requirement& requirement) {
    if (requirement.limits.load_loss) return requirement.limits.load_loss->value;
    if (requirement.surroundings.temperature.degrees <= spring::kReferenceTemperature) return 0.0;
    const auto guided = wire::load_loss_at(grade, requirement.surroundings.temperature);
    return guided ? std::optional<double>(guided->value) : std::nullopt;
}

/// EN 15800 stops at w 4 to 20; a coil just outside is given the nearest band's tolerance, not none.
double diameter_tolerance_mm(const tolerance::Tables& tables, double D_mm, double index, int grade) {
    const auto found = tolerance::diameter_tolerance(tables, D_mm * mm, std::clamp(index, 4.0, 20.0), grade);
    return found ? in_mm(*found) : 0.0;
}

}  // namespace

double seating_coefficient(demand::Seats seats) {
    switch (seats) {
        case demand::Seats::fixed:
        case demand::Seats::guided:
            return 0.5;
        case demand::Seats::pivots:
            return 0.7;
        case demand::Seats::both_pivot:
        case demand::Seats::slides:
            return 1.0;
        case demand::Seats::free_end:
            return 2.0;
    }
    return 2.0;
}

DemandNumbers numbers(const demand::Requirement& requirement) {
    const demand::Space& space = requirement.space;
    DemandNumbers n;
    n.limits = requirement.limits;
    n.seated_height_mm = in_mm(space.seated_height);
    n.full_travel_height_mm = in_mm(space.full_travel_height);
    if (space.bore) n.bore_smallest_mm = in_mm(space.bore->smallest), n.bore_largest_mm = in_mm(space.bore->largest);
    if (space.rod) n.rod_largest_mm = in_mm(space.rod->largest);
    if (space.free_length)
        n.shortest_mm = in_mm(space.free_length->smallest), n.longest_mm = in_mm(space.free_length->largest);
    n.seated_at_least_n = plain(requirement.seated_load.at_least);
    n.seated_at_most_n = plain(requirement.seated_load.at_most);
    n.full_at_least_n = plain(requirement.full_travel_load.at_least);
    n.full_at_most_n = plain(requirement.full_travel_load.at_most);
    n.temperature_c = requirement.surroundings.temperature.degrees;
    n.guided = space.seats == demand::Seats::guided;
    n.slides = space.seats == demand::Seats::slides;
    n.seating_coefficient = requirement.limits.seating_coefficient.value_or(seating_coefficient(space.seats));
    n.sideways_play_mm = plain(space.sideways_play);
    n.dynamic = requirement.duty.is_dynamic();
    if (requirement.duty.frequency) n.frequency_hz = in_hertz(*requirement.duty.frequency);
    n.endurance_mpa = spring::zimmerli_mpa(requirement.duty.peened);
    n.load_grade = requirement.load_grade;
    n.release_counts = requirement.full_travel_load.at_most || requirement.plunger;
    n.preference = requirement.preference;
    return n;
}

bool has_endurance(const wire::Grade& grade, double d_mm) {
    return grade.family != wire::Family::copper_alloy && grade.family != wire::Family::nickel_alloy && d_mm < 10.0;
}

double permissible_share(const wire::Grade& grade, const demand::Limits& limits) {
    return limits.stress_share.value_or(wire::torsional_yield(grade.family).share.value);
}

std::optional<WireNumbers> numbers(const wire::Grade& grade, Length diameter, const demand::Requirement& requirement) {
    const auto strength = wire::strength_at(grade, diameter);
    const auto loss = load_loss(grade, requirement);
    if (!strength || !loss) return std::nullopt;
    const wire::Moduli moduli = wire::moduli_at(grade, diameter);
    WireNumbers n;
    n.d_mm = in_mm(diameter);
    n.d_tolerance_mm = in_mm(wire::diameter_tolerance_at(grade, diameter).value_or(0.0 * mm));
    n.shear_modulus_mpa = in_mpa(moduli.shear);
    n.young_modulus_mpa = in_mpa(moduli.young);
    n.density_t_mm3 = grade.density.value();
    n.tensile_strength_mpa = in_mpa(strength->minimum);
    n.hot_share =
        spring::modulus_share(grade.shear_modulus_loss_per_kelvin, requirement.surroundings.temperature.degrees);
    n.load_kept = 1.0 - *loss;
    n.permissible_stress_mpa =
        permissible_share(grade, requirement.limits) * n.tensile_strength_mpa / requirement.limits.stress_safety;
    n.service_limit_c = grade.service_limit.degrees;
    n.has_endurance = has_endurance(grade, n.d_mm);
    n.modulus_spread = tolerance::modulus_spread(grade.family);
    n.static_duty_only = grade.static_duty_only;
    n.relative_cost = grade.relative_cost;
    return n;
}

Turns::Turns(const DemandNumbers& demand, spring::Ends ends, double total_coils)
    : total(total_coils), active(spring::active_coils(ends, total_coils)) {
    if (demand.slides) lean = spring::turns_lean(active);
}

Coil::Coil(const DemandNumbers& demand_, const WireNumbers& wire_, const tolerance::Tables& tables,
           double mean_diameter_mm, spring::Ends ends_, double total_coils_)
    : Coil(demand_, wire_, tables, mean_diameter_mm, ends_, Turns(demand_, ends_, total_coils_)) {}

Coil::Coil(const DemandNumbers& demand_, const WireNumbers& wire_, const tolerance::Tables& tables,
           double mean_diameter_mm, spring::Ends ends_, const Turns& turns)
    : demand(demand_),
      wire(wire_),
      ends(ends_),
      D_mm(mean_diameter_mm),
      index(mean_diameter_mm / wire_.d_mm),
      diameter_tolerance_mm(
          check::diameter_tolerance_mm(tables, mean_diameter_mm, index, demand_.limits.diameter_grade)),
      stress_per_newton_mpa(spring::stress(1.0, wire_.d_mm, mean_diameter_mm)),
      stress_factor(static_stress_factor(demand_.limits.stress_factor, index)) {
    set_turns(turns);
}

void Coil::set_total_coils(double coils) { set_turns(Turns(demand, ends, coils)); }

void Coil::set_turns(const Turns& turns) {
    total_coils = turns.total;
    active_coils = turns.active;
    turns_lean = turns.lean;
    rate_n_mm = spring::rate(wire.shear_modulus_mpa, wire.d_mm, D_mm, active_coils);
    solid_length_mm = demand.limits.solid_form == demand::SolidForm::en
                          ? spring::en_solid_wires(ends, turns.total) * (wire.d_mm + wire.d_tolerance_mm)
                          : spring::textbook_solid_wires(ends, turns.total) * wire.d_mm;
    gap_mm = spring::smallest_gaps(wire.d_mm, D_mm, active_coils) * (demand.dynamic ? spring::kDynamicGapFactor : 1.0);
}

}  // namespace seatload::check
