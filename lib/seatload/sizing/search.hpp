// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include <seatload/sizing/axis.hpp>
#include <seatload/sizing/merit.hpp>
#include <seatload/sizing/space.hpp>

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

/// How a limit cuts the space.
struct Rejections {
    unsigned long long all = 0;    ///< combinations it rejects, whatever else rejects them
    unsigned long long alone = 0;  ///< combinations that only it rejects
};

/// What fits at one mean diameter with wire of one diameter, whatever the grade, ends, coils and free length.
struct MapCell {
    unsigned long long fit = 0;
    double room_in_tenths = 0.0;  ///< the most tolerance room of those that fit; 0 when none does
    bool operator==(const MapCell&) const = default;
};

/// All mean diameters looked at with wire of one diameter.
struct MapRow {
    Length wire_diameter;
    Axis mean_diameters;
    std::vector<MapCell> cells;  ///< one a mean diameter
};

/// What a search found.
struct Census {
    unsigned long long looked_at = 0;
    unsigned long long fit = 0;
    std::vector<Rejections> rejections;          ///< by rule, in the order of check::rules()
    std::vector<std::optional<Candidate>> best;  ///< of each wire and ends, index wire * ends.size() + ends
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
