// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// What stands above a plot at an upright line: a name, and a number under it.
struct HeightLabel {
    double at = 0.0;  ///< along the plot, on the paper [mm]
    std::string name;
    std::string number;
};
using HeightLabels = std::vector<HeightLabel>;

/// Room they take above a plot [mm].
inline constexpr double kHeightLabels = 8.5;

/// Draws labels above a plot, pushed apart and led back to their lines; they come from left to right. Long names are
/// narrowed, then cut, so that all find room over the plot.
void draw_height_labels(Drawing& drawing, const HeightLabels& labels, const Box& plot);

}  // namespace seatload::sheet
