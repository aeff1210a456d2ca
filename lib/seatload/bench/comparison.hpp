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
    std::vector<LoadDifference> loads;  ///< at the heights of the session
};

/// How two springs of one session differ; the two parts of a load difference add up to it.
Comparison compare(const MeasuredSpring& first, const MeasuredSpring& second);

}  // namespace seatload::bench
