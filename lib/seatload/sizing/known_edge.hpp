// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <limits>

#include <seatload/sizing/cut.hpp>

namespace seatload::sizing {

/// What is known of where a question along the free lengths changes its answer, which it does once at most: the answer
/// has not changed up to `low`, and has from `high` on.
struct KnownEdge {
    int low = -1;
    int high = std::numeric_limits<int>::max();

    template <class Changed>
    bool has_changed(long at, const Changed& changed) {
        if (at <= low) return false;
        if (at >= high) return true;
        const bool is_changed = changed(at);
        (is_changed ? high : low) = static_cast<int>(at);
        return is_changed;
    }

    /// The first index of an interval at which the answer has changed; its end when it does nowhere. Asked is near the
    /// guess first, by strides that double, then by halving, and never what is known; what is learned is kept.
    template <class Changed>
    long first_changed(Interval in, long guess, const Changed& changed) {
        if (high <= in.from) return in.from;
        if (low >= in.to - 1) return in.to;
        long below = std::max<long>(in.from - 1, low), above = std::min<long>(in.to, high);
        const auto ask = [&](long at) {
            const bool is_changed = changed(at);
            if (is_changed)
                above = at, high = static_cast<int>(at);
            else
                below = at, low = static_cast<int>(at);
            return is_changed;
        };
        if (above - below > 1) {
            const bool falls = ask(std::clamp(guess, below + 1, above - 1));
            for (long stride = 1; above - below > 1; stride *= 2) {
                const long at = falls ? above - stride : below + stride;
                if (at <= below || at >= above || ask(at) != falls) break;
            }
        }
        while (above - below > 1) ask(below + (above - below) / 2);
        return above;
    }
};

}  // namespace seatload::sizing
