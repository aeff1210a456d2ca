// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/rule.hpp>

namespace seatload::check::detail {

Measure stress(const Coil& c, double L0);
Measure fatigue(const Coil& c, double L0);

}  // namespace seatload::check::detail
