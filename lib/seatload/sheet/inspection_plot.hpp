// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/inspection/lot_verdict.hpp>
#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// Draws one characteristic into a box: the run chart of its values in the order measured, and at its right, over the
/// same axis of values, how often each value came. Limits are wide lines, the limits moved in by U dashed ones; the
/// tolerance interval of the lot is a bar at the histogram. Marks: a disc conforms, a ring is not proven, a cross
/// fails.
void draw_inspection_plot(Drawing& drawing, const Box& box, const inspection::Judged& judged);

/// The key to lines and marks of all such plots, from a point on its base line.
void draw_inspection_key(Drawing& drawing, Point at);

/// Room that the key takes [mm].
inline constexpr double kInspectionKeyHeight = 5.0;

}  // namespace seatload::sheet
