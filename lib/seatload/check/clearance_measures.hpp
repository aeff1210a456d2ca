// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/rule.hpp>

namespace seatload::check::detail {

// What is measured of the coil's room over a rod and in a bore. `kindest_...` and `harshest_...` bound it between two
// coils, see Rule.

Measure rod(const Coil& c, double);
Measure kindest_rod(const Coil& low, const Coil& high, double L0);
Measure harshest_rod(const Coil& low, const Coil& high, double L0);

Measure bore(const Coil& c, double L0);
Measure kindest_bore(const Coil& low, const Coil& high, double L0);
Measure harshest_bore(const Coil& low, const Coil& high, double L0);

}  // namespace seatload::check::detail
