// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/rule.hpp>

namespace seatload::check::detail {

Measure surge(const Coil& c, double);
Measure mass(const Coil& c, double L0);

}  // namespace seatload::check::detail
