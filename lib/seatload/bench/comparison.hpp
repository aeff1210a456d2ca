// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/bench/measured.hpp>

namespace seatload::bench {

/// First spring less second, errors that both share taken as shared.
template <class Q>
struct Difference {
    Estimate<Q> estimate;
    bool significant = false;  ///< larger than its expanded uncertainty
};

struct LoadDifference {
    AskedHeight asked;
    Difference<Force> load;
    Force rate_part;         ///< of the difference, due to the rate
    Force free_length_part;  ///< due to the free length (set)
};

struct Comparison {
    std::string first;
    std::string second;
    Difference<Rate> rate;
    Difference<Length> free_length;
    std::vector<LoadDifference> loads;  ///< at the heights asked of the first
};

/// How two springs differ; the two parts of a load difference add up to it. Errors of the bench cancel as far as they
/// are common when both were measured in one session.
Comparison compare(const MeasuredSpring& first, const MeasuredSpring& second, bool one_session = true);

}  // namespace seatload::bench
