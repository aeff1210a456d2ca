// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <limits>
#include <numbers>

namespace seatload::spring {

/// Slenderness L0/D below which a spring does not buckle at any deflection: pi sqrt((1 - G/E)/(0.5 + G/E)) / nu.
/// EN 13906-1 cl. 9.14; Shigley Eq. 10-12.
inline double stable_slenderness(double shear_over_young, double seating_coefficient) {
    return std::numbers::pi * std::sqrt((1.0 - shear_over_young) / (0.5 + shear_over_young)) / seating_coefficient;
}

/// Buckling deflection s_k as a share of L0, or infinity when the spring never buckles.
/// s_k/L0 = 0.5/(1 - G/E) [1 - sqrt(1 - (1 - G/E)/(0.5 + G/E) (pi D/(nu L0))^2)]. EN 13906-1 cl. 9.14 (memory; the same
/// as Shigley Eq. 10-10 and Haringx' beam-column).
inline double buckling_share(double slenderness, double shear_over_young, double seating_coefficient) {
    const double q = stable_slenderness(shear_over_young, seating_coefficient) / slenderness;
    const double root = 1.0 - q * q;
    if (root < 0.0) return std::numeric_limits<double>::infinity();
    return 0.5 / (1.0 - shear_over_young) * (1.0 - std::sqrt(root));
}

/// Buckling deflection s_k [mm], or an infinite length when the spring never buckles; L0 > 0.
template <class L, class S>
L buckling_deflection(const L& free_length, const L& D, const S& shear_modulus, const S& young_modulus,
                      double seating_coefficient) {
    const double slenderness = free_length / D;
    const double moduli = shear_modulus / young_modulus;
    return free_length * buckling_share(slenderness, moduli, seating_coefficient);
}

}  // namespace seatload::spring
