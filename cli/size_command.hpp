// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// Finds every spring that meets a requirement and writes, for each alternative, a spec and a sheet, and one enquiry
/// for all. Returns 0; 1 when nothing fits; 2 when a file is wrong. Papers are written only when all of them could be
/// made.
int run_size(const SizeOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
