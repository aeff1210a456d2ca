// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/demand/budget.hpp>
#include <seatload/demand/plunger_point.hpp>

namespace seatload::demand {

/// A number and its unit in a product.
struct Factor {
    double number = 0.0;
    std::string_view unit;
};

/// A summand of a limit: a product with its sign.
struct SumTerm {
    std::string symbol;
    std::string_view words;
    double sign = 1.0;
    std::vector<Factor> factors;

    double value() const;      ///< [N]
    std::string text() const;  ///< the factors with their units, without the sign
};

/// Where a load may lie [N].
struct LoadRoom {
    double least_n = 0.0;
    double most_n = 0.0;

    bool is_there() const { return least_n <= most_n; }
    /// Never nothing, so that a share of it can be asked for even where both ends meet.
    double width() const { return std::max(most_n - least_n, 0.01 * std::max(1.0, std::abs(most_n))); }
};

/// What a limit needs beside the point it is looked at.
struct BudgetSetting {
    const Plunger& plunger;
    double seated_least_n = 0.0;  ///< F1 at its lower end, for limits of F2
    LoadRoom seated;              ///< what the limits of each load alone leave it
    LoadRoom full_travel;
};

/// What a rule needs to be solved.
enum class RuleStage {
    alone,    ///< the plunger alone
    sharing,  ///< the room that those leave to both loads, which it shares out; nothing when they leave none
    last,     ///< the lower end that all these make of F1
};

/// One kind of limit: when it applies, what it hangs on, and its summands at a point.
struct BudgetRule {
    std::string_view id;
    std::string_view title;  ///< "stays shut against leak pressure"
    std::string_view aim;    ///< "to stay shut against leak pressure"
    LoadPlace place;
    Bound bound;
    RuleStage stage;
    bool (*applies)(const Plunger&);
    std::vector<PointMember> members;
    std::vector<SumTerm> (*terms)(const PlungerPoint&, const BudgetSetting&);
    std::string (*where)(const PlungerPoint&, const BudgetSetting&);  ///< what its symbols are made of
    std::string_view source;

    /// The limit at a point [N].
    double value(const PlungerPoint& point, const BudgetSetting& setting) const;
};

/// Every rule, in the order limits are told.
std::span<const BudgetRule> budget_rules();

/// A rule and the corner at which it asks for most.
struct SolvedRule {
    const BudgetRule* rule = nullptr;
    Extreme extreme;  ///< its value is the limit [N]
};

/// Every rule that applies, solved over the corners of a box that need not be the plunger's own, with what the rules
/// that stand on others were given.
struct SolvedRules {
    std::vector<SolvedRule> rules;
    double seated_least_n = 0.0;
    LoadRoom seated;
    LoadRoom full_travel;

    /// The rule that makes an end of a band, or null.
    const SolvedRule* biting(LoadPlace place, Bound bound) const;
    /// By how much the lower end of a band lies above its upper end [N]; negative: there is room.
    double overlap(LoadPlace place) const;
    /// Whether they contradict each other; loads that meet do not, whatever rounding makes of them.
    bool contradict(LoadPlace place) const;
};
SolvedRules solve_rules(const Plunger& plunger, const PlungerBox& box);

}  // namespace seatload::demand
