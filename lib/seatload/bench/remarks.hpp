// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/bench/measured.hpp>

namespace seatload::bench {

/// What a reader of the results should know besides the numbers, sentence by sentence.
std::vector<std::string> remarks_on(const Readings& session, const SpringRun& run, const MeasuredSpring& spring);

}  // namespace seatload::bench
