// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/check/tips.hpp>

namespace seatload::check {

/// How long a spring on a sliding seat may be before its lean outgrows the room for it; all else stays.
struct LeanBounds {
    double longest_mm = 0.0;  ///< with the end tips anywhere within what is ordered of them; infinite: however long
    /// Where that leaves less than 99 of 100 pieces of EN 15800 grade 1 stray upwards: tips closer by whole steps of
    /// kTipStep, but not below kClosestTips, for the pieces that come out longer.
    struct Closer {
        double tips = 0.0;  ///< from half a turn apart [turns, plus-minus]
        double longest_mm = 0.0;
    };
    std::optional<Closer> closer;
};

/// Nothing where no seat slides, and where even the free length given leaves no room. Without tips that are ordered,
/// they may stand as for leans_too_far().
std::optional<LeanBounds> lean_bounds(const Coil& coil, double free_length_mm, const std::optional<Tips>& tips);

/// A bound of the free length as papers print it [mm]: rounded down to 0.1 mm, so that a maker who goes to it is still
/// inside, and not below the free length drawn.
double printed_bound(double longest_mm, double free_length_mm);

/// How long the spring may be with its tips as ordered, in a whole sentence; empty where that is no matter.
std::string lean_bounds_in_words(const LeanBounds& bounds, double free_length_mm);

}  // namespace seatload::check
