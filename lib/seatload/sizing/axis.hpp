// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>

namespace seatload::sizing {

/// The multiples of a step from a first to a last one.
struct Axis {
    long first = 0;  ///< the first multiple
    long count = 0;
    double step = 1.0;

    /// The value of a point, cleared of the noise that k times 0.05 leaves in the last binary digits.
    double at(long index) const { return std::round(static_cast<double>(first + index) * step * 1e9) / 1e9; }
};

/// All multiples of `step` that lie in a closed range; a bound that is a multiple but for rounding counts as one.
inline Axis axis_between(double smallest, double largest, double step) {
    constexpr double kSlack = 1e-6;  // of a step
    const long first = std::lround(std::ceil(smallest / step - kSlack));
    const long last = std::lround(std::floor(largest / step + kSlack));
    return {first, last >= first ? last - first + 1 : 0, step};
}

}  // namespace seatload::sizing
