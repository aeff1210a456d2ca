// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <vector>

#include <seatload/demand/budget.hpp>

namespace seatload::demand {

/// The limits that a spring with these loads does not surely keep, as indices into Budget::limits. A time home is
/// judged by both loads together, since a band that holds whatever the other load is asks for more than most pairs
/// need.
std::vector<std::size_t> broken_limits(const Plunger& plunger, const Budget& budget, const SpringLoads& loads);

}  // namespace seatload::demand
