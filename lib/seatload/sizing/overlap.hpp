// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>

#include <seatload/sizing/cut.hpp>

namespace seatload::sizing {

/// What the cuts of several rules leave of the free lengths: those that all pass, and those that all but one pass.
class Overlap {
  public:
    static constexpr std::size_t kNone = static_cast<std::size_t>(-1);

    explicit Overlap(Interval all) : from_(all.from), to_(all.to), second_from_(all.from), second_to_(all.to) {}

    /// A rule that passes from an index on; from the end on, if it passes none.
    void add_from(std::size_t rule, long from) {
        if (from > from_) {
            second_from_ = from_;
            from_ = from;
            deepest_from_ = rule;
        } else {
            second_from_ = std::max(second_from_, from);
        }
    }

    /// A rule that passes up to, not with, an index.
    void add_to(std::size_t rule, long to) {
        if (to < to_) {
            second_to_ = to_;
            to_ = to;
            deepest_to_ = rule;
        } else {
            second_to_ = std::min(second_to_, to);
        }
    }

    /// Forgets free lengths outside an interval.
    void clip(Interval in) {
        from_ = std::max(from_, in.from);
        second_from_ = std::max(second_from_, in.from);
        to_ = std::min(to_, in.to);
        second_to_ = std::min(second_to_, in.to);
    }

    Interval passed() const { return {from_, std::max(from_, to_)}; }
    long count() const { return std::max(0L, to_ - from_); }

    /// The rules that cut deepest from either side: without any other one, no more would pass.
    std::size_t deepest_from() const { return deepest_from_; }
    std::size_t deepest_to() const { return deepest_to_; }
    long count_without_deepest_from() const { return std::max(0L, to_ - second_from_); }
    long count_without_deepest_to() const { return std::max(0L, second_to_ - from_); }

    /// An interval outside which two rules or more reject; empty when they do everywhere.
    Interval nearly_passed() const {
        const bool lower = second_from_ < to_, upper = from_ < second_to_;
        if (!lower && !upper) return {second_from_, second_from_};
        return {lower ? second_from_ : from_, upper ? second_to_ : to_};
    }

  private:
    long from_, to_;
    long second_from_, second_to_;  ///< without the rule that cuts deepest on that side
    std::size_t deepest_from_ = kNone, deepest_to_ = kNone;
};

}  // namespace seatload::sizing
