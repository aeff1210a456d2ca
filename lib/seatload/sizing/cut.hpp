// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <span>

#include <seatload/check/rule.hpp>

namespace seatload::sizing {

/// Indices of free lengths from `from` up to, not with, `to`.
struct Interval {
    long from = 0;
    long to = 0;
};

/// Where one rule cuts the axis of free lengths. It remembers the last cut, because the next coil's lies close by.
class Cut {
  public:
    Cut(const check::Rule& rule, std::size_t rule_index) : rule_(&rule), rule_index_(rule_index) {}

    const check::Rule& rule() const { return *rule_; }
    std::size_t rule_index() const { return rule_index_; }
    const Interval& passed() const { return passed_; }

    void find(const check::Coil& coil, std::span<const double> lengths) {
        const bool from = rule_->along == check::Along::from;
        // Both kinds are one question: from where on does the answer differ from the one for short springs?
        const auto changed = [&](long index) {
            return check::passes(*rule_, coil, lengths[static_cast<std::size_t>(index)]) == from;
        };
        const long count = static_cast<long>(lengths.size());
        edge_ = first_changed(changed, count);
        passed_ = from ? Interval{edge_, count} : Interval{0, edge_};
    }

  private:
    /// The first index at which the answer has changed, or `count`, by strides that double from the remembered edge and
    /// then halve.
    template <class Changed>
    long first_changed(const Changed& changed, long count) const {
        long low = -1, high = count;  // not changed at low, changed at high; the outer two are not asked
        long at = std::clamp(edge_, 0L, count);
        if (at < count && !changed(at)) {
            low = at;
            for (long stride = 1; low + stride < count; stride *= 2) {
                if (changed(low + stride)) {
                    high = low + stride;
                    break;
                }
                low += stride;
            }
        } else {
            high = at;
            for (long stride = 1; high - stride >= 0; stride *= 2) {
                if (!changed(high - stride)) {
                    low = high - stride;
                    break;
                }
                high -= stride;
            }
        }
        while (high - low > 1) {
            const long middle = low + (high - low) / 2;
            (changed(middle) ? high : low) = middle;
        }
        return high;
    }

    const check::Rule* rule_;
    std::size_t rule_index_;
    long edge_ = 0;
    Interval passed_{};
};

}  // namespace seatload::sizing
