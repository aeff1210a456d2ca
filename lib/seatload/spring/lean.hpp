// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace seatload::spring {

/// Which part of the lean of whole turns a number of active coils has.
struct TurnsLean {
    double tilt = 1.0;  ///< share of the end coils' tilt that does not cancel: |cos(pi n)|, 0 with half a turn over
    double rest = 0.0;  ///< what is left with half a turn over: |sin(pi n)|/(4 n)
};
inline TurnsLean turns_lean(double n) {
    const double angle = std::numbers::pi * n;
    return {std::abs(std::cos(angle)), std::abs(std::sin(angle)) / (4.0 * n)};
}

/// Phase x [rad] of the bending wave between mid-spring and a plate, of active coils L long that are shortened by s:
/// (L/D) sqrt((1/2 + G/E) s/L (1 - s/L (1 - G/E))). A spring whose far plate slides buckles at pi/2; the equation of
/// EN 13906-1 cl. 9.14 for nu = 1 is this one solved for s.
inline double bending_phase(double slenderness, double compression, double shear_over_young) {
    const double shortened = 1.0 - compression * (1.0 - shear_over_young);
    return slenderness * std::sqrt((0.5 + shear_over_young) * compression * std::max(0.0, shortened));
}

/// What becomes of the rest as the spring is pressed: it falls through zero and comes back on the other side, the
/// sooner the more it is shortened. The larger of 1.06 - x^2/3 and x^2 (0.66 + 0.6 s/L) - 0.93, a line round the
/// computed cases.
inline double rest_of_phase(double phase, double compression) {
    const double square = phase * phase;
    return std::max(1.06 - square / 3.0, square * (0.66 + 0.6 * compression) - 0.93);
}

/// Most that the far end of a spring drifts sideways [mm] when its active coils are pressed straight by s, that end
/// free to slide but not to tilt: D x tan(x)/(pi n (1/2 + G/E)) (|cos(pi n)| + |sin(pi n)| h/(4 n)), x the
/// `bending_phase` and h the `rest_of_phase`; infinite from x = pi/2 on and where s leaves no length. It grows with the
/// deflection and, at a fixed pressed length, with the free length.
///
/// A beam, and finite elements (own study): torsion tilts the coils, which over whole turns adds up to a slope of
/// F D^2/(4 G J) between the plates, and Haringx' beam-column that starts and ends askew by so much gives x tan(x); the
/// second summand is fitted. The computed cases stand in tests/elements/lean_table.csv with their range: in none was
/// the lean above this bound; up to a lean of 0.2 D the bound was at most 14 % above it with whole turns, 27 % with a
/// quarter over or missing. It is of the active coils alone, as drawn: what the making does to ends and squareness is
/// not in it.
template <class L>
L sideways_lean(const L& free_pitch, const L& D, double n, TurnsLean turns, const L& deflection,
                double shear_over_young) {
    const double slenderness = free_pitch / D * n;
    const double compression = deflection / free_pitch / n;
    if (!(compression > 0.0)) return 0.0 * D;
    const double x = bending_phase(slenderness, compression, shear_over_young);
    if (compression >= 1.0 || x >= 0.5 * std::numbers::pi) return std::numeric_limits<double>::infinity() * D;
    const double whole = x * std::tan(x) / (std::numbers::pi * n * (0.5 + shear_over_young));
    return D * (whole * (turns.tilt + turns.rest * rest_of_phase(x, compression)));
}

template <class L>
L sideways_lean(const L& free_pitch, const L& D, double n, const L& deflection, double shear_over_young) {
    return sideways_lean(free_pitch, D, n, turns_lean(n), deflection, shear_over_young);
}

}  // namespace seatload::spring
