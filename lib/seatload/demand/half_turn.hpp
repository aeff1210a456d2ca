// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <optional>

#include <seatload/demand/limits.hpp>

namespace seatload::demand {

/// Turns by which a maker may miss a half turn over where no limit says so: 36 degrees (common practice, no source).
inline constexpr double kHalfTurnKept = 0.1;

/// Active coils half a turn over as many whole turns as n has.
inline double half_over(double n) { return std::floor(n) + 0.5; }

/// How far n active coils are from a half turn over, k + 1/2 [turns].
inline double off_half_turn(double n) { return std::abs(n - std::floor(n) - 0.5); }

/// How nearly the maker of a spring for a sliding seat keeps its half turn over [turns, plus-minus]: as nearly as the
/// limit asks, or else the usual; nothing for a spring that has none, or may do without.
inline std::optional<double> half_turn_tolerance(const Limits& limits, double n) {
    const double kept = limits.half_turn_slack < 0.5 ? limits.half_turn_slack : kHalfTurnKept;
    return off_half_turn(n) <= kept + 1e-9 ? std::optional(kept) : std::nullopt;
}

}  // namespace seatload::demand
