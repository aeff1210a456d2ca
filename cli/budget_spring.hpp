// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/diagnostic.hpp>
#include <seatload/record/plunger_file.hpp>

namespace seatload::cli {

/// Takes the loads that the bench found of a spring, less and more what they may be off by, as those of the spring to
/// be looked at. Returns what is wrong: the file, or that it holds no load measured at the plunger's heights.
Diagnostics look_at_spring(const std::string& spring_file, record::PlungerFile& plunger);

}  // namespace seatload::cli
