// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <numbers>

#include <seatload/spring/coils.hpp>

namespace seatload::spring {

/// Free pitch m [mm] of the active coils. Shigley Table 10-1; for closed and ground ends the same as EN's (sc + n d)/n.
template <class L>
constexpr L pitch(Ends ends, const L& free_length, const L& d, double n) {
    const double turns = ends == Ends::open_ground ? n + 1.0 : n;
    return (free_length - d * end_wires(ends)) / turns;
}

/// Helix angle [rad] of the active coils: atan(m / (pi D)). From geometry.
template <class L>
double helix_angle(const L& free_pitch, const L& D) {
    const double slope = free_pitch / D;
    return std::atan(slope / std::numbers::pi);
}

/// Developed wire length [mm]: active coils at the pitch m, the others wound close. From geometry; grinding not
/// deducted.
template <class L>
L wire_length(const L& free_pitch, const L& d, const L& D, double n, double total_coils) {
    const auto turn = [&](const L& lead) {
        const double slope = lead / D / std::numbers::pi;
        return D * (std::numbers::pi * std::sqrt(1.0 + slope * slope));
    };
    return turn(free_pitch) * n + turn(d) * (total_coils - n);
}

/// Mass [t] of so much round wire: rho pi d^2/4 Lw.
template <class D3, class L>
constexpr auto wire_mass(const D3& density, const L& d, const L& length) {
    return density * (d * d) * length * (std::numbers::pi / 4.0);
}

}  // namespace seatload::spring
