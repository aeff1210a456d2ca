// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sizing/relief.hpp>
#include <seatload/sizing/rule_set.hpp>

namespace seatload::sizing {

/// A change that is no change of a number, and what it lets in.
struct AlteredRelief {
    std::string id;
    std::string words;
    Proof proof;
};

/// Why nothing fits a requirement, and what would let a spring in.
struct Shortfall {
    bool has_combinations = true;         ///< there is something to look at at all
    std::vector<RuleSet> contradictions;  ///< of the wide space, see conflicts()
    std::vector<Relief> reliefs;          ///< one number alone, the smallest change first
    std::vector<AlteredRelief> altered;   ///< in the order of alterations()
    std::vector<Relief>
        joint;  ///< when no rule alone stands in the way: some numbers together, the smallest change first
};

/// The shortfall of a requirement that no spring fits. Every relief has been searched again, with the number as told.
Shortfall shortfall(const demand::Requirement& requirement, const Setting& setting);

}  // namespace seatload::sizing
