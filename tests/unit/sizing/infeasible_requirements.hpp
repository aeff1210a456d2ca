// SPDX-License-Identifier: MIT
#pragma once

#include "varied_requirements.hpp"

namespace seatload::test {

/// Small requirements of all kinds that nothing can meet: the varied ones, each made harder in several ways, as far as
/// the search finds nothing for them and their space is small enough to test every combination.
const std::vector<NamedRequirement>& infeasible_requirements();

}  // namespace seatload::test
