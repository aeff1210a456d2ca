// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sizing/search.hpp>

namespace seatload::test {

/// What testing every combination of a space finds.
struct PlainCount {
    unsigned long long looked_at = 0;
    unsigned long long fit = 0;
    std::vector<sizing::Rejections> rejections;
    std::vector<std::optional<sizing::Candidate>> best;
};

/// Tests each combination against each limit, one after another: slow, and too plain to be wrong in the way a search
/// can be.
PlainCount count_every_combination(const sizing::Space& space, const tolerance::Tables& tables);

}  // namespace seatload::test
