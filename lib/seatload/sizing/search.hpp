// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include <seatload/sizing/candidate.hpp>
#include <seatload/sizing/fit_map.hpp>
#include <seatload/sizing/front.hpp>
#include <seatload/sizing/space.hpp>

namespace seatload::sizing {

/// How a limit cuts the space.
struct Rejections {
    unsigned long long all = 0;    ///< combinations it rejects, whatever else rejects them
    unsigned long long alone = 0;  ///< combinations that only it rejects
};

/// What a search found.
struct Census {
    unsigned long long looked_at = 0;
    unsigned long long fit = 0;
    std::vector<Rejections> rejections;          ///< by rule, in the order of check::rules()
    std::vector<std::optional<Candidate>> best;  ///< of each wire and ends, index wire * ends.size() + ends
    Front front;                                 ///< of all that fits
    std::vector<MapRow> map;                     ///< by rising wire diameter
};

struct SearchOptions {
    unsigned threads = 0;                  ///< 0: as many as the machine has; the answer does not depend on it
    std::function<void(double)> progress;  ///< told the share done, from one thread
};

/// The exact count of fitting combinations, the same as testing each one: for every wire, mean diameter, ends and coils
/// the free lengths that pass each limit are an interval, because each limit is passed up to or from some free length;
/// its ends are found with the limit itself, so that no rounding can set the count apart from the plain loop.
Census search(const Space& space, const tolerance::Tables& tables, const SearchOptions& options = {});

}  // namespace seatload::sizing
