// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <stdexcept>

namespace seatload::test {

/// The place between `low` and `high` where a continuous function passes zero, by halving until the doubles meet.
/// The function must have different signs at the two ends.
template <class F>
double root_between(double low, double high, F function) {
    const bool rising = function(low) < 0.0;
    if (rising == (function(high) < 0.0)) throw std::runtime_error("no change of sign between the ends");
    for (int i = 0; i < 200; ++i) {
        const double middle = 0.5 * (low + high);
        if (middle == low || middle == high) break;
        ((function(middle) < 0.0) == rising ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

/// The place between `low` and `high` where a function with a single valley is lowest, by golden sections.
template <class F>
double lowest_between(double low, double high, F function) {
    const double section = 0.5 * (std::sqrt(5.0) - 1.0);
    double left = high - section * (high - low);
    double right = low + section * (high - low);
    for (int i = 0; i < 100; ++i) {
        if (function(left) < function(right)) {
            high = right;
            right = left;
            left = high - section * (high - low);
        } else {
            low = left;
            left = right;
            right = low + section * (high - low);
        }
    }
    return 0.5 * (low + high);
}

}  // namespace seatload::test
