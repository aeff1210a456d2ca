// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/rule.hpp>

namespace seatload::check::detail {

// What is measured of the free length, and of the length left at full travel.

Measure made_length(const Coil& c, double L0);
Measure shortest(const Coil& c, double L0);
Measure longest(const Coil& c, double L0);
Measure reach(const Coil& c, double L0);
Measure open_coils(const Coil& c, double L0);
Measure gap(const Coil& c, double L0);

}  // namespace seatload::check::detail
