// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <numbers>

namespace seatload::spring {

/// How far the coil widens [mm] when pressed solid, ends free to turn: 0.1 (S^2 - 0.8 S d - 0.2 d^2)/D with S the free
/// pitch. EN 13906-1 cl. 9.11 (memory; the coefficients follow from thin-helix statics with nu = 0.264).
template <class L>
constexpr L growth_ends_free(const L& free_pitch, const L& d, const L& D) {
    const double s = free_pitch / D;
    const double t = d / D;
    return D * (0.1 * (s * s - 0.8 * s * t - 0.2 * t * t));
}

/// How far the coil widens [mm] when pressed solid, ends kept from turning: sqrt(D^2 + (m^2 - d^2)/pi^2) - D.
/// Wire length of a coil is conserved; the smaller of the two forms.
template <class L>
L growth_ends_held(const L& free_pitch, const L& d, const L& D) {
    const double s = free_pitch / D;
    const double t = d / D;
    const double square = 1.0 + (s * s - t * t) / (std::numbers::pi * std::numbers::pi);
    return D * (std::sqrt(square) - 1.0);
}

}  // namespace seatload::spring
