// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <utility>
#include <vector>

#include <seatload/sizing/search.hpp>

namespace seatload::test {

/// What testing every combination of a space finds.
struct PlainCount {
    unsigned long long looked_at = 0;
    unsigned long long fit = 0;
    std::vector<sizing::Rejections> rejections;
    std::vector<std::optional<sizing::Candidate>> best;
    /// Of each wire diameter and mean diameter [mm] at which something fits: how many, and the most tolerance room in
    /// whole tenths.
    std::map<std::pair<double, double>, std::pair<unsigned long long, double>> at_diameters;
};

/// Tests each combination against each limit, one after another: slow, and too plain to be wrong in the way a search
/// can be.
PlainCount count_every_combination(const sizing::Space& space, const tolerance::Tables& tables);

}  // namespace seatload::test
