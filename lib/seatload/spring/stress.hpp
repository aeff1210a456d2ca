// SPDX-License-Identifier: MIT
#pragma once

#include <numbers>

namespace seatload::spring {

/// Uncorrected torsional stress tau [MPa] under a force: tau = 8 D F / (pi d^3). EN 13906-1 cl. 9.5; Shigley Eq. 10-2.
template <class F, class L>
constexpr auto stress(const F& load, const L& d, const L& D) {
    const double w = D / d;
    return load / (d * d) * (8.0 * w / std::numbers::pi);
}

/// Uncorrected torsional stress tau [MPa] at a deflection: tau = G d s / (pi n D^2). EN 13906-1 cl. 9.5.
template <class S, class L>
constexpr auto stress_at_deflection(const S& shear_modulus, const L& d, const L& D, double n, const L& deflection) {
    const double share = d / D;
    const double stretch = deflection / D;
    return shear_modulus * (share * stretch / (std::numbers::pi * n));
}

/// Force F [N] that brings the uncorrected stress to a value.
template <class S, class L>
constexpr auto force_for_stress(const S& uncorrected, const L& d, const L& D) {
    const double w = D / d;
    return uncorrected * (d * d) * (std::numbers::pi / (8.0 * w));
}

/// Stress correction factor k of EN 13906-1 cl. 7 for index w > 0.75 (Bergstraesser); the same as Shigley's K_B, Eq.
/// 10-5.
constexpr double bergstraesser_factor(double w) { return (w + 0.5) / (w - 0.75); }

/// Stress correction factor K_W for index w > 1. Wahl; Shigley Eq. 10-4.
constexpr double wahl_factor(double w) { return (4.0 * w - 1.0) / (4.0 * w - 4.0) + 0.615 / w; }

/// Stress correction factor of the older DIN 2089 as a series (Goehner).
constexpr double goehner_factor(double w) { return 1.0 + 5.0 / (4.0 * w) + 7.0 / (8.0 * w * w) + 1.0 / (w * w * w); }

/// Factor for the direct shear alone, K_s = 1 + 0.5/w; the static part of many textbook fatigue lines.
constexpr double direct_shear_factor(double w) { return 1.0 + 0.5 / w; }

}  // namespace seatload::spring
