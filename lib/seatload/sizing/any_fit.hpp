// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/sizing/rule_set.hpp>
#include <seatload/sizing/search.hpp>

namespace seatload::sizing {

/// A spring of the space that keeps every limit, or nothing when there is none: the question of search() with an early
/// end. The same spring for every number of threads: the first one of the first wire and ends that have any. It is not
/// the best one, and its merit is not worked out. Rules outside `rules` are not asked.
std::optional<Candidate> any_fit(const Space& space, const tolerance::Tables& tables, const SearchOptions& options = {},
                                 RuleSet rules = kAllRules);

/// The rules a combination of the space breaks.
RuleSet broken_rules(const Space& space, const tolerance::Tables& tables, const Candidate& candidate);

/// The space cut down to one wire and one kind of ends; without any wire when the space lacks it.
Space only(const Space& space, const std::string& grade, Length wire_diameter, spring::Ends ends);

}  // namespace seatload::sizing
