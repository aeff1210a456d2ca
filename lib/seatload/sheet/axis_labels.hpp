// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>

// Labels of marks on the axes of a diagram, pushed apart where they would overlap and led back to their marks.

namespace seatload::sheet {

/// Where a mark lies along its axis on the paper [mm], and what is written at it.
struct AxisLabel {
    double at = 0.0;
    std::string words;
    std::vector<double> also = {};  ///< further marks that are led to the same words
};
using AxisLabels = std::vector<AxisLabel>;

/// How labels stand under a level axis.
enum class AxisRows { one, two };

/// What labels under a level axis take below it [mm].
double height_under_axis(AxisRows rows);

/// Whether labels find room in a width [mm]. Where they lie does not matter.
bool have_room_under_axis(const AxisLabels& labels, AxisRows rows, double width);

/// How far a label under a level axis is moved at the most from the place it belongs to, between two ends [mm].
double farthest_under_axis(const AxisLabels& labels, AxisRows rows, double left, double right);

/// Draws labels under a level axis, from left to right; they keep between two ends.
void draw_under_axis(Drawing& drawing, const AxisLabels& labels, AxisRows rows, double axis_y, double left,
                     double right);

/// What labels left of an upright axis take [mm].
double width_beside_axis(const AxisLabels& labels);

/// How many labels find room left of an upright axis of that height [mm].
std::size_t labels_beside_axis(double height);

/// Draws labels left of an upright axis, from the bottom up; they keep between two heights, closer than usual where
/// these leave little room.
void draw_beside_axis(Drawing& drawing, const AxisLabels& labels, double axis_x, double bottom, double top);

}  // namespace seatload::sheet
