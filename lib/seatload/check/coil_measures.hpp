// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/rule.hpp>

namespace seatload::check::detail {

// What is measured of wire, index and turns; the free length does not matter.

Measure service_temperature(const Coil& c, double);
Measure static_wire(const Coil& c, double);
Measure smallest_index(const Coil& c, double);
Measure largest_index(const Coil& c, double);
Measure fewest_coils(const Coil& c, double);
Measure most_coils(const Coil& c, double);
Measure ground_wire(const Coil& c, double);
Measure ground_index(const Coil& c, double);
/// How far the coils are from a multiple of the step; less than rounding makes of a multiple is none.
Measure coil_step(const Coil& c, double);

/// How far the active coils are from a half turn over, where whole turns are to be kept out altogether.
Measure half_turn(const Coil& c, double);
Measure kindest_half_turn(const Coil& low, const Coil& high, double L0);

/// Whether some k + 1/2 lies between two numbers of coils, or but for rounding.
bool half_turn_between(double low, double high);

}  // namespace seatload::check::detail
