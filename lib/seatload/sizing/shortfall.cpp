// SPDX-License-Identifier: MIT
#include <seatload/sizing/shortfall.hpp>

#include <algorithm>

#include <seatload/sizing/alteration.hpp>
#include <seatload/sizing/any_fit.hpp>
#include <seatload/sizing/conflicts.hpp>

namespace seatload::sizing {
namespace {

using demand::Requirement;
using Together = std::vector<const Easing*>;

constexpr std::size_t kMostContradictions = 8;
constexpr std::size_t kMostNumbersTried = 12;  // joint changes looked at
constexpr std::size_t kMostJoint = 4;          // and told

RuleSet mended_by(const Easing& easing) {
    RuleSet rules = 0;
    for (const std::string_view id : easing.mends) rules |= rule_called(id);
    return rules;
}

/// Whether what mends some rules has a hold on every contradiction, without which it cannot serve.
bool may_serve(RuleSet mends, const std::vector<RuleSet>& contradictions) {
    return std::all_of(contradictions.begin(), contradictions.end(),
                       [&](RuleSet contradiction) { return (contradiction & mends) != 0; });
}

bool may_serve(const Easing& easing, const Requirement& requirement, const std::vector<RuleSet>& contradictions) {
    return easing.now(requirement) && (easing.mends_more || may_serve(mended_by(easing), contradictions));
}

void sort_by_change(std::vector<Relief>& reliefs) {
    std::stable_sort(reliefs.begin(), reliefs.end(),
                     [](const Relief& a, const Relief& b) { return a.change < b.change; });
}

std::vector<Relief> single_reliefs(const Requirement& requirement, const std::vector<RuleSet>& contradictions,
                                   const Setting& setting) {
    std::vector<Relief> reliefs;
    for (const Easing& easing : easings()) {
        if (!may_serve(easing, requirement, contradictions)) continue;
        const Easing* alone[] = {&easing};
        if (auto relief = least_relief(requirement, alone, setting)) reliefs.push_back(std::move(*relief));
    }
    sort_by_change(reliefs);
    return reliefs;
}

/// The easings that can make a rule pass; those that can also do harm only when there are no others.
Together easings_of(RuleSet rule, const Requirement& requirement) {
    Together steady, all;
    for (const Easing& easing : easings()) {
        if (!easing.now(requirement) || !is_within(rule, mended_by(easing))) continue;
        all.push_back(&easing);
        if (easing.is_steady) steady.push_back(&easing);
    }
    return steady.empty() ? all : steady;
}

/// Every choice of one easing for each rule of a set.
std::vector<Together> choices(RuleSet rules, const Requirement& requirement) {
    std::vector<Together> all{{}};
    for (const RuleSet rule : single_rules(rules)) {
        std::vector<Together> longer;
        for (const Together& chosen : all)
            for (const Easing* easing : easings_of(rule, requirement)) {
                longer.push_back(chosen);
                if (std::find(chosen.begin(), chosen.end(), easing) == chosen.end()) longer.back().push_back(easing);
            }
        all = std::move(longer);
    }
    return all;
}

/// Whether one of these would do alone; then the others are not needed.
bool one_does_alone(const Together& together, const std::vector<Relief>& alone) {
    return std::any_of(alone.begin(), alone.end(), [&](const Relief& relief) {
        return std::find(together.begin(), together.end(), relief.numbers[0].easing) != together.end();
    });
}

std::vector<Relief> joint_reliefs(const Requirement& requirement, const std::vector<RuleSet>& ways_out,
                                  const std::vector<Relief>& alone, const Setting& setting) {
    std::vector<Relief> reliefs;
    std::vector<Together> tried;
    for (const RuleSet rules : ways_out)
        for (Together& together : choices(rules, requirement)) {
            std::sort(together.begin(), together.end());  // pointers into one table: its order
            const bool is_known = std::find(tried.begin(), tried.end(), together) != tried.end();
            if (together.size() < 2 || is_known || one_does_alone(together, alone)) continue;
            if (tried.size() >= kMostNumbersTried) break;
            tried.push_back(together);
            if (auto relief = least_relief(requirement, together, setting)) reliefs.push_back(std::move(*relief));
        }
    sort_by_change(reliefs);
    if (reliefs.size() > kMostJoint) reliefs.resize(kMostJoint);
    return reliefs;
}

std::vector<AlteredRelief> altered_reliefs(const Requirement& requirement, const std::vector<RuleSet>& contradictions,
                                           const Setting& setting) {
    std::vector<AlteredRelief> reliefs;
    for (const Alteration& alteration : alterations(requirement)) {
        if (!may_serve(alteration.mends, contradictions)) continue;
        if (const auto spring = proof(alteration.changed, setting))
            reliefs.push_back({alteration.id, alteration.words, *spring});
    }
    return reliefs;
}

}  // namespace

Shortfall shortfall(const Requirement& requirement, const Setting& setting) {
    Shortfall why;
    const Space wide = wide_space(requirement, setting.catalogue);
    why.has_combinations = any_fit(wide, setting.tables, setting.options, 0).has_value();
    const Conflicts found = conflicts(wide, setting.tables, kMostContradictions, setting.options);
    why.contradictions = found.contradictions;
    why.reliefs = single_reliefs(requirement, found.contradictions, setting);
    why.altered = altered_reliefs(requirement, found.contradictions, setting);
    const bool is_alone = !found.ways_out.empty() && size_of(found.ways_out.front()) == 1;
    if (why.reliefs.empty() || !is_alone) why.joint = joint_reliefs(requirement, found.ways_out, why.reliefs, setting);
    return why;
}

}  // namespace seatload::sizing
