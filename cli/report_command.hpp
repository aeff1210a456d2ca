// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// Writes the calculation report of each spec and returns the exit code.
int run_report(const ReportOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
