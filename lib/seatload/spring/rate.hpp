// SPDX-License-Identifier: MIT
#pragma once

// Every formula of this folder is a template: with quantities it is checked for dimension, with doubles in mm, N, MPa
// it runs in the sizing kernel.

namespace seatload::spring {

/// Spring rate R [N/mm]: R = G d^4 / (8 D^3 n). EN 13906-1 cl. 9.4; Shigley Eq. 10-9.
template <class S, class L>
constexpr auto rate(const S& shear_modulus, const L& d, const L& D, double n) {
    const double share = d / D;
    return shear_modulus * d * (share * share * share / (8.0 * n));
}

/// Number of active coils n for a wanted rate. EN 13906-1 cl. 9.7.
template <class S, class L, class R>
constexpr double active_coils_for_rate(const S& shear_modulus, const L& d, const L& D, const R& wanted) {
    return rate(shear_modulus, d, D, 1.0) / wanted;
}

/// Force F [N] at a deflection: F = R s. EN 13906-1 cl. 9.2.
template <class R, class L>
constexpr auto force(const R& rate_of_spring, const L& deflection) {
    return rate_of_spring * deflection;
}

/// Energy W [N mm] stored at a deflection: W = R s^2 / 2. EN 13906-1 cl. 9.1.
template <class R, class L>
constexpr auto work(const R& rate_of_spring, const L& deflection) {
    return 0.5 * (rate_of_spring * deflection * deflection);
}

}  // namespace seatload::spring
