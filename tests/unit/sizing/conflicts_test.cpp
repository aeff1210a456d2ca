// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/any_fit.hpp>
#include <seatload/sizing/conflicts.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "infeasible_requirements.hpp"

using namespace seatload;
using sizing::RuleSet;

namespace {

constexpr std::size_t kMost = 1000;  // more than any has

/// Wide spaces with more combinations take long to test one by one.
constexpr unsigned long long kQuickToTest = 1'500'000;

/// What each combination breaks, by testing each against each rule; combinations without active coils are no springs.
std::set<RuleSet> all_broken_sets(const sizing::Space& space) {
    std::set<RuleSet> sets;
    for (const sizing::WireOption& wire : space.wires)
        for (const spring::Ends ends : space.ends)
            for (long d = 0; d < wire.mean_diameters.count; ++d)
                for (long n = 0; n < space.total_coils.count; ++n) {
                    const check::Coil coil(space.demand, wire.numbers, test::tolerances(), wire.mean_diameters.at(d),
                                           ends, space.total_coils.at(n));
                    if (coil.active_coils <= 0.0) continue;
                    for (long l = 0; l < space.free_lengths.count; ++l) {
                        RuleSet broken = 0;
                        for (std::size_t i = 0; i < check::rules().size(); ++i) {
                            const check::Rule& rule = check::rules()[i];
                            if (rule.applies(space.demand, ends) &&
                                !check::passes(rule, coil, space.free_lengths.at(l)))
                                broken |= RuleSet{1} << i;
                        }
                        sets.insert(broken);
                    }
                }
    return sets;
}

/// Some combination keeps all of these rules.
bool can_be_kept(RuleSet rules, const std::set<RuleSet>& broken) {
    return std::any_of(broken.begin(), broken.end(), [&](RuleSet b) { return (b & rules) == 0; });
}

/// No combination keeps them together, but any one fewer.
bool is_contradiction(RuleSet rules, const std::set<RuleSet>& broken) {
    if (can_be_kept(rules, broken)) return false;
    for (std::size_t i = 0; i < check::rules().size(); ++i)
        if ((rules >> i & 1) != 0 && !can_be_kept(rules & ~(RuleSet{1} << i), broken)) return false;
    return true;
}

/// Every contradiction of one, two or three rules, by trying all sets of as many.
std::set<RuleSet> small_contradictions(const std::set<RuleSet>& broken) {
    std::set<RuleSet> found;
    const std::size_t count = check::rules().size();
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t j = i; j < count; ++j)
            for (std::size_t k = j; k < count; ++k) {
                const RuleSet rules = RuleSet{1} << i | RuleSet{1} << j | RuleSet{1} << k;
                if (is_contradiction(rules, broken)) found.insert(rules);
            }
    return found;
}

/// A combination breaks nothing but some of these rules.
bool lets_in(RuleSet dropped, const std::set<RuleSet>& broken) {
    return std::any_of(broken.begin(), broken.end(), [&](RuleSet b) { return (b & ~dropped) == 0; });
}

}  // namespace

TEST_CASE("there are forty infeasible requirements and more, of all kinds") {
    CHECK(test::infeasible_requirements().size() >= 40);
    std::set<std::string> origins;
    for (const auto& each : test::infeasible_requirements()) origins.insert(each.name.substr(0, each.name.rfind(',')));
    CHECK(origins.size() >= 12);
}

TEST_CASE("contradictions are those that testing every combination finds") {
    std::size_t with_contradictions = 0, larger = 0;
    for (const auto& [name, requirement] : test::infeasible_requirements()) {
        CAPTURE(name);
        const sizing::Space space = sizing::wide_space(requirement, test::wires());
        if (space.size() > kQuickToTest) continue;
        const std::set<RuleSet> broken = all_broken_sets(space);
        const sizing::Conflicts found = sizing::conflicts(space, test::tolerances(), kMost);
        REQUIRE(found.contradictions.empty() == broken.empty());
        for (const RuleSet rules : found.contradictions) CHECK(is_contradiction(rules, broken));
        CHECK(std::is_sorted(found.contradictions.begin(), found.contradictions.end(), sizing::comes_first));
        const std::set<RuleSet> small = small_contradictions(broken);
        if (small.empty())
            larger += found.contradictions.empty() ? 0 : 1;
        else
            CHECK(std::set<RuleSet>(found.contradictions.begin(), found.contradictions.end()) == small);
        with_contradictions += found.contradictions.empty() ? 0 : 1;
        for (const RuleSet dropped : found.ways_out) {
            CHECK(lets_in(dropped, broken));
            for (const RuleSet rule : sizing::single_rules(dropped)) CHECK_FALSE(lets_in(dropped & ~rule, broken));
        }
    }
    CHECK(with_contradictions >= 40);
    CHECK(larger >= 1);
}

TEST_CASE("a single rule in the way of all springs is found among the ways out") {
    for (const auto& [name, requirement] : test::infeasible_requirements()) {
        CAPTURE(name);
        const sizing::Space space = sizing::wide_space(requirement, test::wires());
        const sizing::Census census = sizing::search(space, test::tolerances());
        const auto ways = sizing::conflicts(space, test::tolerances(), kMost).ways_out;
        for (std::size_t i = 0; i < census.rejections.size(); ++i) {
            CAPTURE(check::rules()[i].id);
            const bool is_way = std::find(ways.begin(), ways.end(), sizing::rule_at(i)) != ways.end();
            CHECK(is_way == (census.rejections[i].alone > 0));
        }
    }
}

TEST_CASE("a space with springs that fit has no conflicts") {
    std::size_t fitting = 0;
    for (const auto& [name, requirement] : test::varied_requirements()) {
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        if (sizing::search(space, test::tolerances()).fit == 0) continue;
        CAPTURE(name);
        ++fitting;
        const sizing::Conflicts found = sizing::conflicts(space, test::tolerances(), kMost);
        CHECK(found.contradictions.empty());
        CHECK(found.ways_out.empty());
    }
    CHECK(fitting >= 12);
}

TEST_CASE("the wide space of a requirement has no spring that its own space lacks") {
    for (const auto& [name, requirement] : test::infeasible_requirements()) {
        CAPTURE(name);
        CHECK(sizing::search(sizing::wide_space(requirement, test::wires()), test::tolerances()).fit == 0);
    }
}
