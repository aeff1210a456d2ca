// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sizing/rule_set.hpp>
#include <seatload/sizing/search.hpp>

namespace seatload::sizing {

/// Why a space has no spring that fits, in rules.
struct Conflicts {
    /// Sets of rules that no combination keeps together, though it could keep them with any one of them dropped: all of
    /// at most three rules (`most` at most), or else those with the fewest; in the order of comes_first().
    std::vector<RuleSet> contradictions;
    /// Sets of rules with which dropped a spring fits, and with fewer of them does not: up to three rules, fewest
    /// first. Not all of them when contradictions were left out.
    std::vector<RuleSet> ways_out;
};

/// The conflicts of a space in which nothing fits; none when a spring does, or when no combination has active coils. It
/// asks any_fit() of the smallest sets that could be a contradiction: one that a spring keeps is answered by the rules
/// that this spring breaks, of which every contradiction must hold one.
Conflicts conflicts(const Space& space, const tolerance::Tables& tables, std::size_t most,
                    const SearchOptions& options = {});

/// The space of a requirement and of all that its numbers can be changed to: bores up to a quarter wider, rods down to
/// three quarters, free lengths outside the envelope and from the full-travel height to one and a half times the usual
/// longest. The rules are those of the requirement as it stands.
Space wide_space(const demand::Requirement& requirement, const wire::Catalogue& catalogue);

}  // namespace seatload::sizing
