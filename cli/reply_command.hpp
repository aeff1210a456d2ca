// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/options.hpp>

namespace seatload::cli {

/// Shows what each maker's reply offers. Returns 0, or 2 when a file is wrong; then none is shown.
int run_reply(const ReplyOptions& options, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
