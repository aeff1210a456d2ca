// SPDX-License-Identifier: MIT
#include <seatload/demand/budget_rule.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

#include <seatload/core/text.hpp>

namespace seatload::demand {

double SumTerm::value() const {
    double product = sign;
    for (const Factor& factor : factors) product *= factor.number;
    return product;
}

std::string SumTerm::text() const {
    constexpr int kDigits = 5;
    std::vector<std::string> pieces;
    for (const Factor& factor : factors) {
        std::string number = significant(factor.number, kDigits);
        if (factor.number < 0.0) number = '(' + number + ')';
        pieces.push_back(number + std::string(factor.unit));
    }
    return join(pieces, " × ");
}

double BudgetRule::value(const PlungerPoint& point, const BudgetSetting& setting) const {
    double sum = 0.0;
    for (const SumTerm& term : terms(point, setting)) sum += term.value();
    return sum;
}

const SolvedRule* SolvedRules::biting(LoadPlace place, Bound bound) const {
    const SolvedRule* found = nullptr;
    for (const SolvedRule& each : rules) {
        if (each.rule->place != place || each.rule->bound != bound) continue;
        const bool is_harder =
            found == nullptr || (bound == Bound::at_least ? each.extreme.value > found->extreme.value
                                                          : each.extreme.value < found->extreme.value);
        if (is_harder) found = &each;
    }
    return found;
}

double SolvedRules::overlap(LoadPlace place) const {
    const SolvedRule* least = biting(place, Bound::at_least);
    const SolvedRule* most = biting(place, Bound::at_most);
    if (most == nullptr) return -std::numeric_limits<double>::infinity();
    // no spring pulls
    return std::max(0.0, least == nullptr ? 0.0 : least->extreme.value) - most->extreme.value;
}

bool SolvedRules::contradict(LoadPlace place) const {
    constexpr double kMeeting = 1e-9;
    const SolvedRule* most = biting(place, Bound::at_most);
    return most != nullptr && overlap(place) > kMeeting * std::abs(most->extreme.value);
}

namespace {

SolvedRule solve(const BudgetRule& rule, const PlungerBox& box, const BudgetSetting& setting) {
    const auto value = [&](const PlungerPoint& point) { return rule.value(point, setting); };
    return {&rule, furthest(box, rule.members, rule.bound == Bound::at_least, value)};
}

double least_of(const SolvedRules& solved, LoadPlace place) {
    const SolvedRule* rule = solved.biting(place, Bound::at_least);
    return rule == nullptr ? 0.0 : std::max(0.0, rule->extreme.value);
}

LoadRoom room_of(const SolvedRules& solved, LoadPlace place) {
    return {least_of(solved, place), solved.biting(place, Bound::at_most)->extreme.value};
}

}  // namespace

SolvedRules solve_rules(const Plunger& plunger, const PlungerBox& box) {
    SolvedRules solved;
    const auto solve_all = [&](RuleStage stage) {
        const BudgetSetting setting{plunger, solved.seated_least_n, solved.seated, solved.full_travel};
        for (const BudgetRule& rule : budget_rules())
            if (rule.stage == stage && rule.applies(plunger)) solved.rules.push_back(solve(rule, box, setting));
    };
    solve_all(RuleStage::alone);
    solved.seated = room_of(solved, LoadPlace::seated);
    solved.full_travel = room_of(solved, LoadPlace::full_travel);
    // a spring pushes no less at full travel than at its seat
    solved.full_travel.least_n = std::max(solved.full_travel.least_n, solved.seated.least_n);
    if (solved.seated.is_there() && solved.full_travel.is_there())
        solve_all(RuleStage::sharing);
    solved.seated_least_n = least_of(solved, LoadPlace::seated);
    solve_all(RuleStage::last);
    // told in the order of the table
    std::stable_sort(solved.rules.begin(), solved.rules.end(),
                     [](const SolvedRule& a, const SolvedRule& b) { return a.rule < b.rule; });
    return solved;
}

}  // namespace seatload::demand
