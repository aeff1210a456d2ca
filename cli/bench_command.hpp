// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// `seatload bench`: tells what springs pressed on the bench carry, writes a spring file of each and the bench sheet.
/// Returns the exit code.
int run_bench(const BenchOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
