// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <limits>
#include <numbers>

namespace seatload::spring {

/// Transverse rate over axial rate, R_Q/R, of a spring whose ends stay parallel, for slenderness lambda = L0/D and
/// compression xi = s/L0 with 0 <= xi < 1. Zero at the buckling deflection of nu = 1 and negative beyond it, where the
/// spring pushes itself sideways (it is then no stiffness and must not be printed as one).
/// EN 13906-1 cl. 9.13 (memory; Haringx' beam-column gives the same).
inline double transverse_rate_ratio(double slenderness, double compression, double shear_over_young) {
    const double half = 0.5 + shear_over_young;
    // Below this the two terms of the formula cancel to noise; the limit is exact to the square of it.
    constexpr double kSmallCompression = 1e-7;
    if (compression < kSmallCompression) return 1.0 / (slenderness * slenderness / 3.0 * half + shear_over_young);
    const double a = std::sqrt(half * (shear_over_young + (1.0 - compression) / compression));
    const double angle = slenderness * compression * a;
    // The ratio passes zero at a quarter turn; past a half turn the formula would come back positive from its pole.
    if (angle >= std::numbers::pi) return -std::numeric_limits<double>::infinity();
    return compression / (compression - 1.0 + a * std::tan(angle) / (slenderness * half));
}

/// Sideways force F_Q [N] of a plate pushed off the axis: F_Q = R_Q s_Q. EN 13906-1 cl. 9.13.
template <class R, class L>
constexpr auto transverse_force(const R& transverse_rate, const L& sideways) {
    return transverse_rate * sideways;
}

/// Uncorrected stress [MPa] under a force with the far end pushed sideways: 8/(pi d^3) [F (D + s_Q) + F_Q (L - d)].
/// EN 13906-1 cl. 9.13 (memory).
template <class F, class L>
constexpr auto combined_stress(const F& load, const F& sideways_load, const L& d, const L& D, const L& sideways,
                               const L& length) {
    const double direct = (D + sideways) / d;
    const double bending = (length - d) / d;
    return (load * direct + sideways_load * bending) / (d * d) * (8.0 / std::numbers::pi);
}

/// How much of the moment that keeps the ends on their plates is used: F_Q L / (F (D - s_Q)); the ends rock above 1.
/// EN 13906-1 cl. 9.13 (memory; statics: the plate pressure cannot move out beyond D/2).
template <class F, class L>
constexpr double seating_use(const F& load, const F& sideways_load, const L& D, const L& sideways, const L& length) {
    const double forces = sideways_load / load;
    const double lengths = length / (D - sideways);
    return forces * lengths;
}

}  // namespace seatload::spring
