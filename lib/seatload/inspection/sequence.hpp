// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

namespace seatload::inspection {

/// Chance [0 to 1] of at most so many runs of above and below in a row of `above` and `below` values in random order,
/// exact. Wald and Wolfowitz, Annals of Mathematical Statistics 11 (1940).
double chance_of_so_few_runs(int above, int below, int runs);

/// Chance of Kendall's S at least as far from zero, either side, in a row of n different values in random order: exact
/// up to n = 60, above by the normal curve. Kendall, Biometrika 30 (1938).
double chance_of_trend(int n, long s);

/// What the order of the values, as they were measured, says.
struct Sequence {
    int runs = 0;        ///< above or below the median; values on it are left out
    double few = 1.0;    ///< chance of so few runs
    long s = 0;          ///< pairs that rise less pairs that fall
    double trend = 1.0;  ///< chance of so strong a trend
};

/// Fewest values whose order says anything.
inline constexpr int kFewestInOrder = 10;
/// A chance below which order is spoken of: several characteristics are looked at, and none should be blamed by chance.
inline constexpr double kSeldom = 0.01;

/// Nothing: too few values.
std::optional<Sequence> sequence_of(const std::vector<double>& values);

}  // namespace seatload::inspection
