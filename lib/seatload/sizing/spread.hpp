// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sizing/search.hpp>

namespace seatload::sizing {

/// A fitting spring offered for quotation, and why it is among them.
struct Alternative {
    Candidate candidate;
    std::string why;                           ///< what it is best at, in a phrase
    std::vector<demand::Criterion> best_at{};  ///< no other alternative is better at these
    bool is_on_front = true;                   ///< no fitting spring is better at one thing and as good at the rest
};

/// At most `count` fitting springs, the best first by the requirement's preference; no two are near-twins, which are of
/// the same grade and ends and of wire as thick within 4 %. They are the best of all, then the best at each other
/// criterion, then those that differ most in wire diameter, grade and ends from the ones before, so that a maker finds
/// wire he stocks. All come out of the Pareto set while it has one to offer, then out of the best of each wire and
/// ends. They come by the classes of Standing, and last in each those with less than half of what the best one has of
/// the criterion that decides.
std::vector<Alternative> spread(const Space& space, const Census& census, std::size_t count);

}  // namespace seatload::sizing
