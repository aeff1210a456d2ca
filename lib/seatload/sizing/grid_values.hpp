// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sizing/space.hpp>

namespace seatload::sizing {

/// The numbers of a space's grid that every wire shares, worked out once.
struct GridValues {
    explicit GridValues(const Space& space) {
        for (long i = 0; i < space.free_lengths.count; ++i) free_lengths.push_back(space.free_lengths.at(i));
        for (const spring::Ends ends : space.ends) {
            std::vector<check::Turns>& turns = turns_of_ends.emplace_back();
            for (long i = 0; i < space.total_coils.count; ++i)
                turns.emplace_back(space.demand, ends, space.total_coils.at(i));
        }
    }

    std::vector<double> free_lengths;                      ///< [mm]
    std::vector<std::vector<check::Turns>> turns_of_ends;  ///< by index into Space::ends
};

}  // namespace seatload::sizing
