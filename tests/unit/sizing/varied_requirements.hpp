// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/demand/requirement.hpp>

namespace seatload::test {

struct NamedRequirement {
    std::string name;
    demand::Requirement requirement;
};

/// Small requirements that between them put every limit in play: both schools, all ends, all seats, bores, rods,
/// one-sided and two-sided loads, heat, motion, and some that nothing can meet.
std::vector<NamedRequirement> varied_requirements();

}  // namespace seatload::test
