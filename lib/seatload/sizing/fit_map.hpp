// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sizing/axis.hpp>
#include <seatload/units/quantities.hpp>

namespace seatload::sizing {

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

}  // namespace seatload::sizing
