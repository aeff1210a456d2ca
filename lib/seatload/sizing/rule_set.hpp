// SPDX-License-Identifier: MIT
#pragma once

#include <bit>
#include <cstdint>
#include <string_view>
#include <vector>

namespace seatload::sizing {

/// A set of rules: bit i stands for the rule at i in check::rules().
using RuleSet = std::uint64_t;

inline constexpr RuleSet kAllRules = ~RuleSet{0};

inline RuleSet rule_at(std::size_t index) { return RuleSet{1} << index; }
inline int size_of(RuleSet rules) { return std::popcount(rules); }
inline bool is_within(RuleSet part, RuleSet whole) { return (part & whole) == part; }

/// The set of one rule, by its id; empty when there is no such rule.
RuleSet rule_called(std::string_view id);

/// The rules of a set, one a set, in the order of check::rules().
std::vector<RuleSet> single_rules(RuleSet rules);

/// The indices of its rules in check::rules().
std::vector<std::size_t> indices(RuleSet rules);

/// Fewer rules first; of as many, the one with the earlier rule.
bool comes_first(RuleSet a, RuleSet b);

}  // namespace seatload::sizing
