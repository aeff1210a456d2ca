// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// Judges and ranks what makers offer for an enquiry, writes the report, and the spec of a chosen offer. Returns 0, or
/// 1 when no offer fits or the chosen one cannot be ordered, or 2 when a file or a word is wrong; then nothing is
/// written.
int run_quotes(const QuotesOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
