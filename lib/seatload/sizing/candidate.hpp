// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>

#include <seatload/sizing/merit.hpp>
#include <seatload/spring/ends.hpp>

namespace seatload::sizing {

/// A point of the space that meets every limit.
struct Candidate {
    std::size_t wire = 0;  ///< index into Space::wires
    spring::Ends ends = spring::Ends::closed_ground;
    double mean_diameter_mm = 0.0;
    double total_coils = 0.0;
    double free_length_mm = 0.0;
    Merit merit;
};

}  // namespace seatload::sizing
