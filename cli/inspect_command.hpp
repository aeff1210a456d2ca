// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// `seatload inspect`: judges samples of a lot by its spec, writes the record of the lot and the report of the
/// inspection. Returns the exit code: kNothingFits when the lot is rejected or not proven.
int run_inspect(const InspectOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
