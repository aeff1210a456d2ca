// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// What run_size() does for one requirement, for each of several; and looks for one wire, and for one spring, that
/// serves all of them. Returns 0; 1 when nothing fits one of them; 2 when a file is wrong. No paper is written unless
/// all could be made.
int run_size_family(const SizeOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
