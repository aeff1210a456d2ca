// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/rule.hpp>

namespace seatload::check::detail {

// What is measured of a spring that may bow out, or whose seat may push it away or rock its ends.

Measure buckling(const Coil& c, double L0);
Measure sideways_stiffness(const Coil& c, double L0);

Measure seats_flat(const Coil& c, double L0);
Measure kindest_seats_flat(const Coil& low, const Coil& high, double L0);
Measure harshest_seats_flat(const Coil& low, const Coil& high, double L0);

}  // namespace seatload::check::detail
