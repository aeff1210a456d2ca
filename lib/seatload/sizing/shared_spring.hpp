// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include <seatload/sizing/family.hpp>

namespace seatload::sizing {

/// What keeps several requirements from having any combination in common.
enum class Apart { nothing, hand, wire, ends, mean_diameter, total_coils, free_length };

/// A spring that fits every requirement of a family.
struct SharedSpring {
    std::vector<Candidate> in_each;  ///< the same spring as a candidate of each space, with its merit there
    Merit merit;                     ///< the worst among them in each respect
};

/// What fits all requirements of a family at once.
struct SharedCensus {
    Apart apart = Apart::nothing;
    unsigned long long looked_at = 0;  ///< combinations that lie on the grid of every requirement
    unsigned long long fit = 0;        ///< those that keep every limit of every requirement
    std::optional<SharedSpring> best;  ///< by better(); the same whatever the order of the requirements
};

/// The exact count of the combinations that fit all requirements, which are those that the searches of all of them
/// count, and the best one. The free lengths that fit a line are intersected; wires and ends with which a requirement
/// has nothing are passed over.
SharedCensus shared_springs(Family family, const tolerance::Tables& tables, const SearchOptions& options = {});

}  // namespace seatload::sizing
