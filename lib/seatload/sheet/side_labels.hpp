// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/axis_labels.hpp>

namespace seatload::sheet {

/// Draws labels right of a plot, led to the heights they belong to, from the bottom up; they keep between two heights,
/// and words too long for the width are narrowed, then cut.
void draw_labels_at_right(Drawing& drawing, AxisLabels labels, const Box& room);

}  // namespace seatload::sheet
