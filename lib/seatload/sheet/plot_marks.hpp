// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// Signs for points of a plot that can be told from one another in black and white.
enum class Mark { disc, ring, square, open_square, triangle, open_triangle, diamond, open_diamond, cross };

/// Half the width of a mark [mm].
inline constexpr double kMarkRadius = 0.95;

void draw_mark(Drawing& drawing, Point at, Mark mark);

/// An upright bar with a short line across each end, by heights on the paper [mm].
void draw_error_bar(Drawing& drawing, double x, double low, double high);

}  // namespace seatload::sheet
