// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <utility>
#include <vector>

#include <seatload/demand/requirement.hpp>

namespace seatload::test {

/// Pairs of small requirements drawn at random, always the same ones: places alike enough that one spring often serves
/// both, on grids that overlap in part and have the same or other steps.
std::vector<std::pair<demand::Requirement, demand::Requirement>> family_pairs(std::size_t count);

}  // namespace seatload::test
