// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// Writes a commented file of one kind, ready to be filled in, or lists the kinds when none is named. Returns the exit
/// code.
int run_start(const StartOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
