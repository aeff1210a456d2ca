// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/demand/budget.hpp>

namespace seatload::demand {

/// How the plunger moves with a pair of loads; an interval of loads counts as one more range.
PlungerBehaviour behaviour(const Plunger& plunger, const SpringLoads& loads, std::string words);

/// How it moves with the least and with the greatest loads its budget allows.
std::vector<PlungerBehaviour> behaviours_at_the_ends(const Plunger& plunger, const Budget& budget);

}  // namespace seatload::demand
