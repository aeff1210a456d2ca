// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/plot.hpp>

// Curves and areas of a plot, given in the numbers of its axes and cut off at its box.

namespace seatload::sheet {

/// What hatching looks like: distance of its lines [mm] and their direction, anticlockwise from level [deg].
struct Hatching {
    double pitch = 2.2;
    double degrees = 45.0;
};

void draw_curve(Drawing& drawing, const Plot& plot, const Path& values, LineKind kind);
void fill_area(Drawing& drawing, const Plot& plot, const Path& values, double grey);
void hatch_area(Drawing& drawing, const Plot& plot, const Path& values, const Hatching& hatching = {});

/// A line across the whole plot at a number of the level or of the upright axis; nothing when the axis does not reach
/// it.
void draw_upright_line(Drawing& drawing, const Plot& plot, double horizontal, LineKind kind);
void draw_level_line(Drawing& drawing, const Plot& plot, double vertical, LineKind kind);

/// Which side of a limit line is forbidden.
enum class Side { below, above };
/// A level line across the plot, hatched on its forbidden side between two numbers of the level axis.
void draw_limit_line(Drawing& drawing, const Plot& plot, double vertical, Side forbidden, double from, double to);

/// Hatches a polygon on the paper; areas hatched alike join without a seam.
void hatch(Drawing& drawing, const Path& polygon, const Hatching& hatching = {});

}  // namespace seatload::sheet
