// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::demand {

/// A quantity that may lie anywhere between two ends; both are equal when it is known.
template <class Q>
struct Interval {
    Q low{};
    Q high{};

    bool is_range() const { return low < high; }
    bool operator==(const Interval&) const = default;
};

template <class Q>
constexpr Interval<Q> exactly(const Q& value) {
    return {value, value};
}

}  // namespace seatload::demand
