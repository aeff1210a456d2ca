// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace seatload::spring {

/// How much of the lean of whole turns a spring of n active coils has: 1 with whole turns, about 0.7 with a quarter
/// over, 1/(4 n) with a half. The first term is the share of the end coils' tilt that does not cancel; the second
/// covers what is left of it with a half turn over, and is the one number here that is fitted.
inline double turns_imbalance(double n) {
    const double angle = std::numbers::pi * n;
    return std::abs(std::cos(angle)) + std::abs(std::sin(angle)) / (4.0 * n);
}

/// Phase [rad] of the bending wave between mid-spring and a plate, of active coils L long that are shortened by s:
/// (L/D) sqrt((1/2 + G/E) s/L (1 - s/L (1 - G/E))). A spring whose far plate slides buckles at pi/2; the equation of
/// EN 13906-1 cl. 9.14 for nu = 1 is this one solved for s.
inline double bending_phase(double slenderness, double compression, double shear_over_young) {
    const double shortened = 1.0 - compression * (1.0 - shear_over_young);
    return slenderness * std::sqrt((0.5 + shear_over_young) * compression * std::max(0.0, shortened));
}

/// Sideways lean [mm] of whole turns pressed straight by s, the far end free to slide sideways but not to tilt:
/// D x tan(x)/(pi n (1/2 + G/E)) with x the `bending_phase` of the active coils; infinite from x = pi/2 on and where s
/// leaves no length. It grows with the deflection and, at a fixed pressed length, with the free length.
template <class L>
L whole_turn_lean(const L& free_pitch, const L& D, double n, const L& deflection, double shear_over_young) {
    const double slenderness = free_pitch / D * n;
    const double compression = deflection / free_pitch / n;
    if (!(compression > 0.0)) return 0.0 * D;
    const double x = bending_phase(slenderness, compression, shear_over_young);
    if (compression >= 1.0 || x >= 0.5 * std::numbers::pi) return std::numeric_limits<double>::infinity() * D;
    return D * (x * std::tan(x) / (std::numbers::pi * n * (0.5 + shear_over_young)));
}

/// Most that the far end of a spring drifts sideways [mm] when it is pressed straight by s, that end free to slide but
/// not to tilt: `turns_imbalance` times `whole_turn_lean`.
///
/// A beam, and finite elements (own study): torsion tilts the coils, which over whole turns adds up to a slope of
/// F D^2/(4 G J) between the plates, and Haringx' beam-column that starts and ends askew by so much gives x tan(x). The
/// computed cases stand in tests/elements/lean_table.csv with their range: in none was the lean above this bound; up to
/// a lean of 0.2 D the bound was at most a tenth above it with whole turns, a third above it with a quarter over or
/// missing. It is of the active coils alone, as drawn: what the making does to ends and squareness is not in it.
template <class L>
L sideways_lean(const L& free_pitch, const L& D, double n, const L& deflection, double shear_over_young) {
    return turns_imbalance(n) * whole_turn_lean(free_pitch, D, n, deflection, shear_over_young);
}

}  // namespace seatload::spring
