// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::spring {

/// Sum Sa [mm] of the smallest gaps between active coils, static loading, cold coiled: n (0.0015 D^2/d + 0.1 d).
/// EN 13906-1 cl. 9.9.
template <class L>
constexpr L smallest_gaps(const L& d, const L& D, double n) {
    const double w = D / d;
    return d * (n * (0.0015 * w * w + 0.1));
}

/// Factor on Sa under dynamic loading, cold coiled. EN 13906-1 cl. 9.9.
inline constexpr double kDynamicGapFactor = 1.5;

/// Sa [mm] for static loading, hot coiled: 0.02 n (D + d). EN 13906-1 cl. 9.9 (memory).
template <class L>
constexpr L smallest_gaps_hot_coiled(const L& d, const L& D, double n) {
    return (D + d) * (0.02 * n);
}

}  // namespace seatload::spring
