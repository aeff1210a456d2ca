// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include <seatload/sheet/detail_view.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/spring_figure.hpp>

namespace seatload::sheet {

/// The views of a figure and where they stand, moved by the words about them.
struct PlacedViews {
    static constexpr double kLeft = 12.5;           ///< room kept left of them, for the diameter [mm]
    static constexpr double kFigureRowPitch = 4.9;  ///< between the dimension lines of the three lengths [mm]
    static constexpr double kBelow = 3.0 * kFigureRowPitch + 2.5;  ///< room kept for these [mm]
    static constexpr double kNearEnd = 15.0;  ///< words of lengths so near to L0 stand right of its extension line [mm]
    static constexpr double kHeading = 4.5;   ///< of the box's upper left corner, where there may be a heading [mm]
    static constexpr double kPlateTop = 2.0;  ///< of a plate over the view [mm]

    const SpringFigure& figure;
    Box box;
    Scale at_scale;
    Point left_face;  ///< on the axis, left end of the side view
    Point end_centre;
    std::optional<Detail> detail;
    Point detail_centre;

    double scale() const { return at_scale.factor(); }
    double on_paper(double real_mm) const { return scale() * real_mm; }
    double outside_radius() const { return 0.5 * on_paper(in_mm(figure.spring.outside_diameter())); }
    double inside_radius() const { return 0.5 * on_paper(in_mm(figure.spring.inside_diameter())); }
    double length() const { return on_paper(in_mm(figure.spring.free_length)); }
    double right_face() const { return left_face.x + length(); }
    double top() const { return left_face.y + outside_radius(); }
    double edge() const { return left_face.y - outside_radius(); }
};

/// Where the words for the wire stand: right of it, or left where they would run into e1.
struct WireLeader {
    Point feature;
    Point knee;
    bool is_left;
    bool is_high;  ///< over e1, for want of room on the left
};

/// The views of a figure in a box at a scale, with the detail where the wire is too thin to be seen.
PlacedViews placed_views(const SpringFigure& figure, const Box& box, Scale scale);

/// The largest scale of ISO 5455 at which the views and their dimensions fit into a box.
Scale views_scale(const SpringFigure& figure, const Box& box);

/// What the dimensions of length take under the views [mm]: e2 stands level with the uppermost row, and pushes it down
/// when its words stand outside the arrows.
double below_views(const SpringFigure& figure, double scale);

/// Whether Di stands right of the end view, as what the ends may deviate by takes up its left.
bool is_diameter_right(const SpringFigure& figure);

/// The names of the plates above them; those that stand close are named on their far sides.
std::vector<Text> names_above_plates(const PlacedViews& placed);

/// From the coil near the middle, or from one further right where that one's words would stand over a plate.
WireLeader wire_leader(const PlacedViews& placed);

}  // namespace seatload::sheet
