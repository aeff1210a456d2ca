// SPDX-License-Identifier: MIT
#include <seatload/demand/budget.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/demand/budget_contradiction.hpp>
#include <seatload/demand/budget_rule.hpp>
#include <seatload/demand/leakage.hpp>
#include <seatload/demand/plunger_behaviour.hpp>
#include <seatload/demand/ramp.hpp>

namespace seatload::demand {
namespace {

std::string left_side(const BudgetRule& rule) {
    return std::string(rule.place == LoadPlace::seated ? "F1" : "F2") + (rule.bound == Bound::at_least ? " ≥ " : " ≤ ");
}

/// Terms with their signs, by symbols or by numbers.
template <class Text>
std::string signed_sum(const std::vector<SumTerm>& terms, const Text& text) {
    std::string sum;
    for (const SumTerm& term : terms) {
        if (sum.empty())
            sum = (term.sign < 0.0 ? "−" : "") + text(term);
        else
            sum += (term.sign < 0.0 ? " − " : " + ") + text(term);
    }
    return sum;
}

std::vector<BudgetTerm> shares(const std::vector<SumTerm>& terms, double total) {
    std::vector<BudgetTerm> all;
    for (const SumTerm& term : terms)
        all.push_back(
            {term.symbol, std::string(term.words), term.value() * newton, total == 0.0 ? 0.0 : term.value() / total});
    return all;
}

/// The inputs that make a difference at the corner where a rule bites.
std::vector<PointMember> what_counts(const SolvedRule& solved, const BudgetSetting& setting, const PlungerBox& box) {
    constexpr double kNudge = 1e-3;
    std::vector<PointMember> members;
    for (const PointMember member : solved.rule->members) {
        PlungerPoint moved = solved.extreme.at;
        moved.*member += kNudge * std::max(std::abs(box.low.*member), std::abs(box.high.*member));
        if (solved.rule->value(moved, setting) != solved.extreme.value) members.push_back(member);
    }
    return members;
}

std::vector<CornerValue> corner_of(const SolvedRule& solved, const std::vector<PointMember>& members,
                                   const PlungerBox& box) {
    std::vector<CornerValue> corner;
    for (const PointMember member : members) {
        const PointInput& input = input_of(member);
        const double value = solved.extreme.at.*member;
        corner.push_back({std::string(input.symbol), std::string(input.words), input.shown(value), box.is_range(member),
                          value == box.high.*member});
    }
    return corner;
}

wire::Evidence weakest(const std::vector<PointMember>& members, const PlungerTrust& trust) {
    wire::Evidence found = wire::Evidence::given;
    for (const PointMember member : members) found = wire::weaker(found, trust.*input_of(member).trust);
    return found;
}

/// The weakest of what the rules before it put in that a rule stands on: those that make F1's lower end for the last
/// ones, all that bound either load for those that share out the room between them.
wire::Evidence weakest_before(const SolvedRule& solved, const SolvedRules& all, const Plunger& plunger,
                              const PlungerBox& box) {
    const BudgetSetting setting{plunger, all.seated_least_n, all.seated, all.full_travel};
    const SolvedRule* least = all.biting(LoadPlace::seated, Bound::at_least);
    wire::Evidence found = wire::Evidence::given;
    for (const SolvedRule& each : all.rules) {
        const bool is_before = each.rule->stage < solved.rule->stage;
        if (!is_before || (solved.rule->stage == RuleStage::last && &each != least)) continue;
        found = wire::weaker(found, weakest(what_counts(each, setting, box), plunger.trust));
        found = wire::weaker(found, weakest_before(each, all, plunger, box));
    }
    return found;
}

BudgetLimit told(const SolvedRule& solved, const SolvedRules& all, const Plunger& plunger, const PlungerBox& box) {
    const BudgetSetting setting{plunger, all.seated_least_n, all.seated, all.full_travel};
    const std::vector<SumTerm> terms = solved.rule->terms(solved.extreme.at, setting);
    BudgetLimit limit;
    limit.id = solved.rule->id;
    limit.title = solved.rule->title;
    limit.place = solved.rule->place;
    limit.bound = solved.rule->bound;
    limit.value = solved.extreme.value * newton;
    limit.formula = left_side(*solved.rule) + signed_sum(terms, [](const SumTerm& t) { return t.symbol; });
    limit.numbers = signed_sum(terms, [](const SumTerm& t) { return t.text(); });
    limit.where = solved.rule->where(solved.extreme.at, setting);
    limit.terms = shares(terms, solved.extreme.value);
    const std::vector<PointMember> members = what_counts(solved, setting, box);
    limit.corner = corner_of(solved, members, box);
    limit.source = solved.rule->source;
    limit.evidence = wire::weaker(weakest(members, plunger.trust), weakest_before(solved, all, plunger, box));
    limit.bites = all.biting(limit.place, limit.bound)->rule == solved.rule;
    return limit;
}

LoadBand band(const SolvedRules& solved, LoadPlace place) {
    LoadBand found;
    if (const SolvedRule* least = solved.biting(place, Bound::at_least); least != nullptr && least->extreme.value > 0.0)
        found.at_least = least->extreme.value * newton;
    if (const SolvedRule* most = solved.biting(place, Bound::at_most)) found.at_most = most->extreme.value * newton;
    return found;
}

/// To a tenth of a newton, or two significant digits where that is finer; up for a lower end, down for an upper one.
Force rounded(Force load, bool up) {
    constexpr double kStepSlack = 1e-6;  // of a step: a load meant to lie on it does
    const double n = in_newton(load);
    if (n <= 0.0 || !std::isfinite(n)) return load;
    const double steps = std::max(10.0, std::pow(10.0, 1.0 - std::floor(std::log10(n))));
    return (up ? std::ceil(n * steps - kStepSlack) : std::floor(n * steps + kStepSlack)) / steps * newton;
}

LoadBand rounded_inwards(const LoadBand& exact) {
    LoadBand round = exact;
    if (exact.at_least) round.at_least = rounded(*exact.at_least, true);
    if (exact.at_most) round.at_most = rounded(*exact.at_most, false);
    const bool is_lost = round.at_least && round.at_most && *round.at_least > *round.at_most;
    return is_lost ? exact : round;
}

/// Without a lower end that F2 >= F1 brings about by itself.
LoadBand without_what_follows(LoadBand full_travel, const LoadBand& seated) {
    if (full_travel.at_least && seated.at_least && *full_travel.at_least <= *seated.at_least)
        full_travel.at_least.reset();
    return full_travel;
}

std::optional<Interval<Angle>> self_holding(const Plunger& plunger) {
    if (!plunger.side_load) return std::nullopt;
    const SideLoad& side = *plunger.side_load;
    return Interval<Angle>{self_holding_angle(side.flank_friction.low, side.bore_friction.low) * radian,
                           self_holding_angle(side.flank_friction.high, side.bore_friction.high) * radian};
}

}  // namespace

std::string trust_words(wire::Evidence weakest) {
    const std::string what = "the weakest number put in is ";
    switch (weakest) {
        case wire::Evidence::given:
            return {};
        case wire::Evidence::standard:
            return what + "out of a standard or handbook";
        case wire::Evidence::fit:
            return what + "a fit";
        case wire::Evidence::memory:
            return what + "from memory";
        case wire::Evidence::estimate:
            return what + "an estimate";
    }
    return {};
}

Budget plunger_budget(const Plunger& plunger, const std::optional<SpringLoads>& spring) {
    const PlungerBox box = box_of(plunger);
    const SolvedRules solved = solve_rules(plunger, box);
    Budget budget;
    for (const SolvedRule& each : solved.rules) budget.limits.push_back(told(each, solved, plunger, box));
    budget.seated = band(solved, LoadPlace::seated);
    budget.full_travel = band(solved, LoadPlace::full_travel);
    budget.seated_rounded = rounded_inwards(budget.seated);
    budget.full_travel_rounded = without_what_follows(rounded_inwards(budget.full_travel), budget.seated_rounded);
    budget.contradictions = contradictions(plunger, box, solved);
    budget.leak_pressure = leak_pressure(plunger.pressures);
    budget.self_holding = self_holding(plunger);
    if (budget.is_possible()) budget.behaviours = behaviours_at_the_ends(plunger, budget);
    if (spring) budget.behaviours.push_back(behaviour(plunger, *spring, "spring given"));
    return budget;
}

}  // namespace seatload::demand
