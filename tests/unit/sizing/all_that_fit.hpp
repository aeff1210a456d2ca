// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sizing/candidate.hpp>
#include <seatload/sizing/space.hpp>

namespace seatload::test {

/// Every combination of a space that breaks no rule, found by asking each of each.
std::vector<sizing::Candidate> all_that_fit(const sizing::Space& space);

}  // namespace seatload::test
