// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include <seatload/sizing/family.hpp>

namespace seatload::sizing {

/// The points that the grids of several spaces have in common, but for the mean diameters, which hang on the wire.
struct SharedGrid {
    std::vector<WirePlaces> wires;
    std::vector<spring::Ends> ends;
    std::vector<double> total_coils;
    std::vector<double> free_lengths;  ///< [mm], rising

    /// Wires times ends: the parts in which it is looked through.
    std::size_t parts() const { return wires.size() * ends.size(); }
};

SharedGrid shared_grid(std::span<const Space* const> spaces);

/// The mean diameters [mm], rising, that all spaces try for a wire.
std::vector<double> mean_diameters_of(std::span<const Space* const> spaces, const WirePlaces& wire);

/// The values that lie on every axis, rising.
std::vector<double> common_points(std::span<const Axis> axes);

}  // namespace seatload::sizing
