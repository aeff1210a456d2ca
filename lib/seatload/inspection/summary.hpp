// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include <seatload/inspection/characteristic.hpp>

namespace seatload::inspection {

/// Confidence of all bounds told of a lot, and the share of all pieces that tolerance intervals are about.
inline constexpr double kConfidence = 0.95;
inline constexpr double kContent = 0.95;

/// How far a row of values lies from its limits, in standard deviations over three; with its bound, as the estimate
/// alone says little for few pieces.
struct Capability {
    double estimate = 0.0;  ///< Cpk
    double at_least = 0.0;  ///< proven with kConfidence
};

/// What the values of one characteristic say of all the lot, were they normal and taken at random.
struct Summary {
    int count = 0;
    double mean = 0.0;
    double deviation = 0.0;  ///< s, n - 1; 0 for one value
    double least = 0.0;
    double most = 0.0;
    double mean_within = 0.0;  ///< half width of the mean's confidence interval; from two values on
    double factor = 0.0;       ///< k; 0 when there are too few values
    Limits interval;           ///< holds kContent of all pieces with kConfidence; one-sided for a one-sided limit
    std::optional<Capability> capability;  ///< when there is a limit and some spread
};

/// Fewest values of which a tolerance interval is told: below, it is wider than any tolerance.
inline constexpr int kFewestForInterval = 3;

/// The summary of at least one value.
Summary summarise(const std::vector<double>& values, const Limits& limits);

/// Lower bound of Cpk with a confidence, for an estimate from n values. Bissell, How reliable is your capability
/// index?, Applied Statistics 39 (1990) (from memory).
double capability_at_least(double estimate, int n, double confidence);

}  // namespace seatload::inspection
