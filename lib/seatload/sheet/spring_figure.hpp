// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/scale.hpp>
#include <seatload/spring/spring.hpp>

namespace seatload::sheet {

/// What is written at the dimensions of the figure.
struct FigureWords {
    std::string wire_diameter;
    std::string coil_diameter;  ///< of De or Di
    std::string free_length;
    std::string seated;        ///< L1
    std::string full_travel;   ///< L2
    std::string seated_plate;  ///< the far plate where it then is
    std::string full_travel_plate;
    std::string squareness;    ///< e1; empty: not shown
    std::string parallelism;   ///< e2; empty: not shown
    std::string detail = "X";  ///< letter of the detail view
    std::string detail_wire;   ///< of the wire in the detail; empty: not shown
};

/// A spring to be drawn with its dimensions.
struct SpringFigure {
    spring::Spring spring;
    double seated_length = 0.0;       ///< L1 [mm]
    double full_travel_length = 0.0;  ///< L2 [mm]
    bool inside_diameter = false;     ///< whether Di is dimensioned instead of De
    FigureWords words;
};

/// The largest scale of ISO 5455 at which the figure and its dimensions fit into a box.
Scale figure_scale(const SpringFigure& figure, const Box& box);

/// Draws the side view of the free spring, its end view (first angle) and their dimensions, centred in the box, at a
/// scale.
void draw_figure(Drawing& drawing, const SpringFigure& figure, const Box& box, Scale scale);

}  // namespace seatload::sheet
