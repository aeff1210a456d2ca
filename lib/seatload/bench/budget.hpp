// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include <seatload/bench/estimate.hpp>

namespace seatload::bench {

/// Standard uncertainty of a value known to lie anywhere within plus-minus `half_width`, in its unit. GUM 4.3.7.
template <class Q>
Q rectangular(const Q& half_width) {
    return half_width / std::sqrt(3.0);
}

/// Standard uncertainty that the step of a display leaves in one reading, in its unit. GUM F.2.2.1 (memory).
template <class Q>
Q of_step(const Q& step) {
    return step / std::sqrt(12.0);
}

/// The same in the difference of two readings, as of load and tare.
template <class Q>
Q of_step_difference(const Q& step) {
    return step / std::sqrt(6.0);
}

/// The k that covers with `degrees_of_freedom` as much as `normal_factor` does of the normal curve: 2 covers 95.45 %,
/// and with few degrees of freedom Student's t takes the place of the normal curve. GUM G.3.2.
double coverage_factor(double normal_factor, double degrees_of_freedom);

/// A value with contributions to its uncertainty, combined: root of the sum of squares (GUM 5.1.2), effective degrees
/// of freedom after Welch and Satterthwaite (GUM G.4.1), expanded by the k that `normal_factor` stands for.
template <class Q>
Estimate<Q> combine(const Q& value, std::vector<Contribution<Q>> contributions, double normal_factor = 2.0) {
    double variance = 0.0, fourth = 0.0;
    for (const auto& c : contributions) {
        const double square = in_base_unit(c.standard) * in_base_unit(c.standard);
        variance += square;
        fourth += square * square / c.degrees_of_freedom;
    }
    std::erase_if(contributions, [](const auto& c) { return in_base_unit(c.standard) == 0.0; });
    for (auto& c : contributions) c.share = in_base_unit(c.standard) * in_base_unit(c.standard) / variance;
    std::stable_sort(contributions.begin(), contributions.end(),
                     [](const auto& a, const auto& b) { return a.share > b.share; });
    Estimate<Q> result;
    result.value = value;
    result.standard = Q::from_value(std::sqrt(variance));
    if (fourth > 0.0) result.degrees_of_freedom = variance * variance / fourth;
    result.coverage_factor = coverage_factor(normal_factor, result.degrees_of_freedom);
    result.expanded = result.coverage_factor * result.standard;
    result.budget = std::move(contributions);
    return result;
}

}  // namespace seatload::bench
