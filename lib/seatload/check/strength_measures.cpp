// SPDX-License-Identifier: MIT
#include <seatload/check/strength_measures.hpp>

#include <limits>

#include <seatload/spring/fatigue.hpp>
#include <seatload/spring/stress.hpp>

namespace seatload::check::detail {
namespace {

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

}  // namespace

Measure stress(const Coil& c, double L0) {
    const double tau = c.cold_load_n(L0, judged_length(c)) * c.stress_per_newton_mpa * c.stress_factor;
    return {tau, c.wire.permissible_stress_mpa};
}

Measure fatigue(const Coil& c, double L0) {
    const double limit = c.demand.limits.fatigue_factor;
    if (!c.wire.has_endurance) return {0.0, limit};
    const double corrected = c.stress_per_newton_mpa * spring::bergstraesser_factor(c.index);
    const double least = c.cold_load_n(L0, c.demand.seated_height_mm) * corrected;
    const double most = c.cold_load_n(L0, c.demand.full_travel_height_mm) * corrected;
    if (most + least <= 0.0) return {std::numeric_limits<double>::infinity(), limit};
    return {fatigue_factor(c, 0.5 * (most - least), 0.5 * (most + least)), limit};
}

}  // namespace seatload::check::detail
