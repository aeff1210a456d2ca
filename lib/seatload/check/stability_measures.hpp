// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/rule.hpp>

namespace seatload::check::detail {

// What is measured of a spring that may bow out, or whose seat may push it away or rock its ends.

/// How far a sliding plate can carry the end off the axis [mm]: as stated, or as far as the spring's play in the bore
/// lets it.
double sideways_play(const Coil& c);

Measure buckling(const Coil& c, double L0);
Measure sideways_stiffness(const Coil& c, double L0);

Measure seats_flat(const Coil& c, double L0);
Measure kindest_seats_flat(const Coil& low, const Coil& high, double L0);
Measure harshest_seats_flat(const Coil& low, const Coil& high, double L0);

}  // namespace seatload::check::detail
