// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/rule.hpp>

namespace seatload::check::detail {

// What is measured of the loads at the two heights: hot and after load loss against a floor, cold against a ceiling.

Measure seated_least(const Coil& c, double L0);
Measure seated_most(const Coil& c, double L0);
Measure full_least(const Coil& c, double L0);
Measure full_most(const Coil& c, double L0);

}  // namespace seatload::check::detail
