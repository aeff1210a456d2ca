// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <numbers>

#include <seatload/units/root.hpp>

namespace seatload::spring {

/// Fundamental frequency [Hz] of the active coils between two seats: 0.5 sqrt(R/m), m their mass; the same as
/// d/(2 pi n D^2) sqrt(G/(2 rho)). EN 13906-1 cl. 9.12; Shigley Eq. 10-25.
template <class S, class D3, class L>
auto surge_frequency(const S& shear_modulus, const D3& density, const L& d, const L& D, double n) {
    const double w = D / d;
    const auto wave_speed = units::root(shear_modulus / (2.0 * density));
    return wave_speed / D * (1.0 / (2.0 * std::numbers::pi * n * w));
}

/// The same in the standard's rounded form, 3560 d/(n D^2) sqrt(G/rho) [Hz], with mm, MPa and kg/dm3. EN 13906-1
/// cl. 9.12.
inline double surge_frequency_en_hz(double shear_modulus_mpa, double density_kg_dm3, double d_mm, double D_mm,
                                    double n) {
    return 3560.0 * d_mm / (n * D_mm * D_mm) * std::sqrt(shear_modulus_mpa / density_kg_dm3);
}

/// Stress wave [MPa] in a spring whose end is struck at a speed: v sqrt(2 rho G). From wave mechanics.
template <class V, class D3, class S>
auto impact_stress(const V& speed, const D3& density, const S& shear_modulus) {
    return speed * units::root(2.0 * density * shear_modulus);
}

}  // namespace seatload::spring
