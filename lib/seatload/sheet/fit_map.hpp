// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>

#include <seatload/sheet/drawing.hpp>
#include <seatload/sizing/search.hpp>

namespace seatload::sheet {

/// An alternative's place on the map.
struct MapMark {
    std::string letter;
    double wire_diameter_mm = 0.0;
    double mean_diameter_mm = 0.0;
};

/// Whether anything on the map fits.
bool has_fit(std::span<const sizing::MapRow> map);

/// Draws what fits: a column a wire diameter, mean diameters upwards, each cell shaded by the best tolerance room in it
/// (darker is more), cells where nothing fits left white; a key above, and letters for the alternatives at the right.
/// Something must fit.
void draw_fit_map(Drawing& drawing, const Box& box, std::span<const sizing::MapRow> map,
                  std::span<const MapMark> marks);

}  // namespace seatload::sheet
