// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/demand/budget.hpp>
#include <seatload/sheet/ruled_table.hpp>

namespace seatload::sheet {

/// How the plunger moves: a column for each pair of loads.
RuledTable behaviour_table(const demand::Budget& budget, double width);

/// Every limit with formula, numbers, value, the corner at which it bites, and trust.
RuledTable budget_limits_table(const demand::Budget& budget, double width);

/// What the limits rest on, by their numbers: "1, 4: statics of the plunger (textbook); ...".
std::string budget_sources(const demand::Budget& budget);

}  // namespace seatload::sheet
