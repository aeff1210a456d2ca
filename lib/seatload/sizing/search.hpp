// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include <seatload/sizing/candidate.hpp>
#include <seatload/sizing/fit_map.hpp>
#include <seatload/sizing/front.hpp>
#include <seatload/sizing/space.hpp>
#include <seatload/tolerance/tables.hpp>

namespace seatload::sizing {

/// How a limit cuts the space.
struct Rejections {
    /// Combinations it rejects, whatever else rejects them; absent when the grid has too many lines to ask them all.
    std::optional<unsigned long long> all;
    unsigned long long alone = 0;  ///< combinations that only it rejects
};

/// What a search found.
struct Census {
    unsigned long long looked_at = 0;
    unsigned long long fit = 0;
    std::vector<Rejections> rejections;          ///< by rule, in the order of check::rules(); empty if not counted
    std::vector<std::optional<Candidate>> best;  ///< of each wire and ends, index wire * ends.size() + ends
    Front front;                                 ///< of all that fits
    std::vector<MapRow> map;                     ///< by rising wire diameter

    /// Whether Rejections::all is known.
    bool counts_all_rejections() const { return !rejections.empty() && rejections.front().all.has_value(); }
};

struct SearchOptions {
    unsigned threads = 0;                  ///< 0: as many as the machine has; the answer does not depend on it
    std::function<void(double)> progress;  ///< told the share done, from one thread
    bool counts_rejections = true;         ///< false: only what fits is looked for, which is found sooner
    /// Rejections::all is counted when the space has at most so many lines.
    unsigned long long most_lines_counted = 1'000'000;
};

/// The exact count of fitting combinations, the same as testing each one. For every wire, ends, mean diameter and coils
/// (a line) the free lengths that pass each limit are an interval, because each limit is passed up to or from some free
/// length; its ends are found with the limit itself, so that no rounding can set the count apart from the plain loop.
/// Blocks of lines on which two limits leave nothing at all are passed over, so that time follows what nearly fits.
Census search(const Space& space, const tolerance::Tables& tables, const SearchOptions& options = {});

/// The spring that would be offered first; null when none fits. Equals are told the same way at any time.
const Candidate* first_ranked(const Census& census, const demand::Order& order);

}  // namespace seatload::sizing
