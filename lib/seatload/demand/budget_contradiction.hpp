// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/demand/budget_rule.hpp>

namespace seatload::demand {

/// Where the lower end of a band lies above its upper end: said in words, with what would mend it, each tried alone.
std::vector<Contradiction> contradictions(const Plunger& plunger, const PlungerBox& box, const SolvedRules& solved);

}  // namespace seatload::demand
