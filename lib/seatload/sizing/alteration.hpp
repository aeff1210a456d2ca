// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/demand/requirement.hpp>
#include <seatload/sizing/rule_set.hpp>

namespace seatload::sizing {

/// A change to a requirement that is no change of a number.
struct Alteration {
    std::string id;     ///< in JSON and tests: "space.seats.guided"
    std::string words;  ///< "guide the spring along its length"
    demand::Requirement changed;
    RuleSet mends = kAllRules;  ///< the rules that it can make pass
};

/// Every such change that a requirement leaves open: how the ends are held, shot-peening, other ends, any wire, a finer
/// or wider grid.
std::vector<Alteration> alterations(const demand::Requirement& requirement);

}  // namespace seatload::sizing
