// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// Draws the sheet of each spec file as <output>/<name of the spec file>.pdf. Returns 0, or 2 when a file is wrong or a
/// spec cannot be drawn; then nothing is written.
int run_sheet(const SheetOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
