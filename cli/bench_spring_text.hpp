// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <cli/bench_view.hpp>

namespace seatload::cli {

// The parts of what is told of one spring, in lines of at most `width` columns.

/// What matters of it: rate, free length and loads, what was left out of the line, the kinds of wire it may be.
std::string bench_brief_text(const BenchedSpring& spring, int width);

// The same in full.

/// Rate, free length and loads, and how far they can be trusted.
std::string bench_results_text(const BenchedSpring& spring, int width);

/// What wire it is, and what may have made it weak.
std::string bench_wire_text(const BenchedSpring& spring, int width);

/// Where the ± of each load comes from, largest first.
std::string bench_budget_text(const BenchedSpring& spring, int width);

/// Every reading, corrected, with what became of it.
std::string bench_points_text(const BenchedSpring& spring, int width);

}  // namespace seatload::cli
