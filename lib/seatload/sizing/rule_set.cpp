// SPDX-License-Identifier: MIT
#include <seatload/sizing/rule_set.hpp>

#include <seatload/check/rule.hpp>

namespace seatload::sizing {
namespace {

/// The set's earliest rule alone.
RuleSet earliest(RuleSet rules) { return rules & (~rules + 1); }

}  // namespace

RuleSet rule_called(std::string_view id) {
    const auto rules = check::rules();
    for (std::size_t i = 0; i < rules.size(); ++i)
        if (rules[i].id == id) return rule_at(i);
    return 0;
}

std::vector<RuleSet> single_rules(RuleSet rules) {
    std::vector<RuleSet> singles;
    for (; rules != 0; rules &= rules - 1) singles.push_back(earliest(rules));
    return singles;
}

std::vector<std::size_t> indices(RuleSet rules) {
    std::vector<std::size_t> found;
    for (const RuleSet rule : single_rules(rules)) found.push_back(static_cast<std::size_t>(std::countr_zero(rule)));
    return found;
}

bool comes_first(RuleSet a, RuleSet b) {
    if (size_of(a) != size_of(b)) return size_of(a) < size_of(b);
    return (a & earliest(a ^ b)) != 0;
}

}  // namespace seatload::sizing
