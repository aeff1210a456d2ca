// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string_view>

#include <seatload/tolerance/made_springs.hpp>

namespace seatload::tolerance {

/// A dimension whose straying moves the loads.
enum class Influence { wire_diameter, coil_diameter, active_coils, free_length, shear_modulus };
inline constexpr std::size_t kInfluences = 5;
inline constexpr std::array<std::string_view, kInfluences> kInfluenceNames{
    "wire diameter", "coil diameter", "active coils", "free length", "shear modulus"};

/// How far each dimension may stray, plus-minus.
using InfluenceAllowance = std::array<double, kInfluences>;

/// What is left of the allowances once the maker has brought a lot in: nothing of what its pieces have in common.
InfluenceAllowance left_after_adjusting(const MadeAllowance& allowance);

/// Standard deviation [N] that each dimension gives the load at a length, to first order: its slope times a third of
/// its allowance. From R = G d^4 / (8 D^3 n), F = R (L0 - L), D = De - d or Di + d.
std::array<double, kInfluences> load_deviations_n(const MadeOrder& order, double active_coils, double free_length_mm,
                                                  double length_mm, const InfluenceAllowance& allowance);

/// The root of the sum of squares [N].
double together_n(const std::array<double, kInfluences>& deviations);

/// The share of each dimension in the sum of squares, the mean of both loads' shares; 0 when nothing strays.
std::array<double, kInfluences> influence_shares(const std::array<std::array<double, kInfluences>, 2>& deviations);

/// The dimension with the largest share; the first of equals.
Influence largest(const std::array<double, kInfluences>& shares);

}  // namespace seatload::tolerance
