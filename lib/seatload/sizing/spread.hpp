// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sizing/search.hpp>

namespace seatload::sizing {

/// A fitting spring offered for quotation, and why it is among them.
struct Alternative {
    Candidate candidate;
    std::string why;
};

/// At most `count` fitting springs, best first, no two with the same wire diameter, grade and ends: after the best one,
/// those that differ in the most of these three, the better ones first, so that a maker finds a wire he stocks. Springs
/// with less than half the best one's tolerance room come last.
std::vector<Alternative> spread(const Space& space, const Census& census, std::size_t count);

}  // namespace seatload::sizing
