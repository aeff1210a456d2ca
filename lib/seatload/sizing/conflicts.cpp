// SPDX-License-Identifier: MIT
#include <seatload/sizing/conflicts.hpp>

#include <algorithm>
#include <span>

#include <seatload/sizing/any_fit.hpp>

namespace seatload::sizing {
namespace {

constexpr int kFewRules = 3;            // larger sets explain little
constexpr int kMostRules = 6;           // and beyond this nothing at all
constexpr std::size_t kMostAsked = 24;  // ways out that are tried

/// Whether each rule of a set has one of `sets` to itself, for which it is needed.
bool needs_each_rule(std::span<const RuleSet> sets, RuleSet set) {
    const auto rules = single_rules(set);
    return std::all_of(rules.begin(), rules.end(), [&](RuleSet rule) {
        return std::any_of(sets.begin(), sets.end(), [&](RuleSet other) { return (other & set) == rule; });
    });
}

/// Grows a set until it has a rule of each of `sets`, one of the first set it misses at a time: nothing else need be
/// tried. A rule that is not needed now will not be needed by a larger set either.
void grow(std::span<const RuleSet> sets, RuleSet set, int left, std::vector<RuleSet>& found) {
    const auto missed = std::find_if(sets.begin(), sets.end(), [&](RuleSet other) { return (other & set) == 0; });
    if (missed == sets.end()) {
        found.push_back(set);
        return;
    }
    if (left == 0) return;
    for (const RuleSet rule : single_rules(*missed))
        if (needs_each_rule(sets, set | rule)) grow(sets, set | rule, left - 1, found);
}

/// The smallest sets of at most `size` rules that have a rule in common with each of `sets`, in their order.
std::vector<RuleSet> common_to_all(std::span<const RuleSet> sets, int size) {
    std::vector<RuleSet> found;
    grow(sets, 0, size, found);
    std::sort(found.begin(), found.end(), comes_first);
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

/// What springs break, without sets that hold another.
void add_smallest(std::vector<RuleSet>& broken, RuleSet set) {
    std::erase_if(broken, [&](RuleSet whole) { return is_within(set, whole); });
    broken.push_back(set);
}

/// The contradictions of at most `size` rules; what springs were found to break is added to `broken`.
std::vector<RuleSet> contradictions(const Space& space, const tolerance::Tables& tables, int size, std::size_t most,
                                    const SearchOptions& options, std::vector<RuleSet>& broken) {
    std::vector<RuleSet> found;
    for (bool is_new = true; is_new && found.size() < most;) {
        is_new = false;
        for (const RuleSet set : common_to_all(broken, size)) {
            if (std::find(found.begin(), found.end(), set) != found.end()) continue;
            is_new = true;
            const auto spring = any_fit(space, tables, options, set);
            if (spring)
                add_smallest(broken, broken_rules(space, tables, *spring));
            else
                found.push_back(set);
            break;
        }
    }
    std::sort(found.begin(), found.end(), comes_first);
    return found;
}

std::vector<RuleSet> ways_out(const Space& space, const tolerance::Tables& tables,
                              std::span<const RuleSet> contradictions, const SearchOptions& options) {
    std::vector<RuleSet> found;
    std::size_t asked = 0;
    for (const RuleSet set : common_to_all(contradictions, kFewRules)) {
        if (++asked > kMostAsked) break;
        if (any_fit(space, tables, options, ~set)) found.push_back(set);
    }
    return found;
}

}  // namespace

Conflicts conflicts(const Space& space, const tolerance::Tables& tables, std::size_t most,
                    const SearchOptions& options) {
    Conflicts conflicts;
    const auto first = any_fit(space, tables, options, 0);
    if (!first) return conflicts;
    std::vector<RuleSet> broken{broken_rules(space, tables, *first)};
    if (broken.front() == 0) return conflicts;
    for (int size = kFewRules; size <= kMostRules && conflicts.contradictions.empty(); ++size)
        conflicts.contradictions = contradictions(space, tables, size, most, options, broken);
    if (conflicts.contradictions.empty()) return conflicts;
    conflicts.ways_out = ways_out(space, tables, conflicts.contradictions, options);
    return conflicts;
}

Space wide_space(const demand::Requirement& requirement, const wire::Catalogue& catalogue) {
    demand::Requirement wide = requirement;
    if (wide.space.bore) wide.space.bore->nominal *= 1.25;
    if (wide.space.rod) wide.space.rod->nominal *= 0.75;
    wide.space.free_length.reset();
    if (!wide.grid.free_length)
        wide.grid.free_length = demand::LengthRange{wide.space.full_travel_height, 4.5 * wide.space.seated_height};
    Space space = search_space(wide, catalogue);
    space.demand = check::numbers(requirement);
    return space;
}

}  // namespace seatload::sizing
