// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// `seatload budget`: the loads that the spring of a plunger may have. Returns the exit code: 1 when no spring can do
/// it, or the spring given does not.
int run_budget(const BudgetOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
