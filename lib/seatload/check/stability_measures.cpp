// SPDX-License-Identifier: MIT
#include <seatload/check/stability_measures.hpp>

#include <algorithm>
#include <limits>

#include <seatload/spring/buckling.hpp>
#include <seatload/spring/lateral.hpp>

namespace seatload::check::detail {
namespace {

double buckling_reserve(const Coil& c, double L0, double seating_coefficient) {
    const double deflection = L0 - c.demand.full_travel_height_mm;
    if (deflection <= 0.0) return std::numeric_limits<double>::infinity();
    const double moduli = c.wire.shear_modulus_mpa / c.wire.young_modulus_mpa;
    return L0 * spring::buckling_share(L0 / c.D_mm, moduli, seating_coefficient) / deflection;
}

/// How much of what seats the ends is used, by the stiffness sideways of one coil and the play and diameter of another.
/// A narrower coil is limper sideways; a wider one has less play and broader ends.
double seat_use(const Coil& narrow, const Coil& wide, double L0, double length) {
    const double deflection = L0 - length;
    const double play = sideways_play(wide);
    if (play == 0.0) return 0.0;
    if (deflection <= 0.0 || play >= wide.D_mm) return std::numeric_limits<double>::infinity();
    const double moduli = wide.wire.shear_modulus_mpa / wide.wire.young_modulus_mpa;
    const double ratio = spring::transverse_rate_ratio(L0 / narrow.D_mm, deflection / L0, moduli);
    // A spring that already pushes itself sideways is caught by sideways_stiffness.
    return ratio <= 0.0 ? 0.0 : spring::seating_use(deflection, ratio * play, wide.D_mm, play, length);
}

}  // namespace

double sideways_play(const Coil& c) {
    if (c.demand.sideways_play_mm) return *c.demand.sideways_play_mm;
    return c.demand.bore_largest_mm ? std::max(0.0, *c.demand.bore_largest_mm - c.outside_mm()) : 0.0;
}

Measure buckling(const Coil& c, double L0) {
    return {buckling_reserve(c, L0, c.demand.seating_coefficient), c.demand.limits.buckling_margin};
}

Measure sideways_stiffness(const Coil& c, double L0) { return {buckling_reserve(c, L0, 1.0), 1.0}; }

Measure kindest_seats_flat(const Coil& low, const Coil& high, double L0) {
    const DemandNumbers& d = low.demand;
    return {std::max(seat_use(low, high, L0, d.seated_height_mm), seat_use(low, high, L0, d.full_travel_height_mm)),
            1.0};
}

Measure harshest_seats_flat(const Coil& low, const Coil& high, double L0) { return kindest_seats_flat(high, low, L0); }

Measure seats_flat(const Coil& c, double L0) { return kindest_seats_flat(c, c, L0); }

}  // namespace seatload::check::detail
