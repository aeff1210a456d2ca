// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// Evaluates each spring file. Returns 0 when all keep their limits, 1 when one does not, 2 when a file is wrong (all
/// wrong files are told, and nothing is written on `out`).
int run_check(const CheckOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
