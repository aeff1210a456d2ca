// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/inspection/characteristic.hpp>

namespace seatload::inspection {

/// What a measured value says of its limits, the uncertainty of measuring counted.
enum class Finding {
    inside,    ///< inside by the uncertainty or more: it conforms
    unproven,  ///< nearer to a limit than the uncertainty, either side
    outside,   ///< beyond a limit by more than the uncertainty: it does not conform
};

/// The finding by a guard band as wide as the expanded uncertainty, on both sides of each limit (in the style of ISO
/// 14253-1, whose editions of 1998 and 2013 take w = U; from memory). Limits count as inside.
Finding judge(double value, const Limits& limits, double expanded);

/// The limits moved inwards by the guard band: what a value must keep to conform. They may cross.
Limits acceptance_zone(const Limits& limits, double guard_band);

/// Chance that the true value lies inside the limits, 0 to 1, for a normal error of standard uncertainty `standard`
/// (more than zero). JCGM 106:2012, 7.2.
double chance_of_conforming(double value, const Limits& limits, double standard);

/// Largest chance that a value just accepted does not conform, when the guard band is so many standard uncertainties
/// and the other limit is far.
double chance_of_false_acceptance(double guard_factor);

/// Width of the guard band in standard uncertainties that keeps that chance to 1 - `probability`.
double guard_factor(double probability);

}  // namespace seatload::inspection
