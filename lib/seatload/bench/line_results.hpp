// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include <seatload/bench/measured.hpp>

namespace seatload::bench {

/// How much a result changes with the line's rate [per N/mm] and with its force at the centre [per N].
struct Gradient {
    double by_rate = 0.0;
    double by_centre_force = 0.0;
};

/// Contributions to a result that depends on the line so, in the base unit of the result. Common shifts keep their sign
/// in `standard`, so that those of two lines can be subtracted.
template <class Q>
std::vector<Contribution<Q>> contributions(const Line& line, const Gradient& gradient) {
    std::vector<Contribution<Q>> all;
    const double r = gradient.by_rate, f = gradient.by_centre_force;
    for (const IndependentPart& part : line.independent) {
        const double variance =
            r * r * part.covariance[0] + 2.0 * r * f * part.covariance[1] + f * f * part.covariance[2];
        all.push_back(
            {part.name, Q::from_value(std::sqrt(std::max(0.0, variance))), 0.0, part.degrees_of_freedom, false});
    }
    for (const CommonShift& shift : line.common)
        all.push_back({shift.name, Q::from_value(r * shift.rate_n_mm + f * shift.centre_force_n), 0.0,
                       std::numeric_limits<double>::infinity(), true});
    return all;
}

/// Load [N] on the line at a height [mm], and the height [mm] where it meets no load.
double load_on(const Line& line, double height_mm);
double free_length_of(const Line& line);

Gradient gradient_of_rate();
Gradient gradient_of_load(const Line& line, double height_mm);
Gradient gradient_of_free_length(const Line& line);

/// Rate [N/mm] and free length [mm] of the line with uncertainty.
Estimate<Rate> rate_of(const Line& line, double coverage_factor);
Estimate<Length> free_length_of(const Line& line, double coverage_factor);

}  // namespace seatload::bench
