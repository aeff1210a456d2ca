// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// A load at a length with its tolerances, for the diagram [mm, N].
struct DiagramLoad {
    double length = 0.0;
    double nominal = 0.0;
    double plus = 0.0;
    double minus = 0.0;
    std::optional<double> grade_tolerance;  ///< plus-minus of the EN 15800 grade it corresponds to
    std::string length_words;
    std::string load_words;
};

/// What is written on the axes of a load-length diagram and in its key; a key left empty is not shown.
struct DiagramWords {
    std::string force_axis;   ///< "F [N]"
    std::string length_axis;  ///< "L [mm]"
    std::string ordered;      ///< at the grey band
    std::string grade;        ///< at the bar
    std::string buckling;     ///< at the upright limit line
    std::string permissible;  ///< at the level limit line
};

/// What a load-length diagram shows [mm, N]. The words at a mark are its symbol, a blank and its value.
struct LoadDiagram {
    double free_length = 0.0;
    double rate = 0.0;
    DiagramLoad seated;
    DiagramLoad full_travel;
    double smallest_length = 0.0;  ///< Ln
    double solid_length = 0.0;     ///< Lc
    std::string free_words;
    std::string smallest_words;
    std::string smallest_load_words;
    std::string solid_words;
    std::string solid_load_words;
    std::optional<double> buckling_length;  ///< LK; drawn when it lies between L0 and Lc
    std::string buckling_words;
    std::optional<double> permissible_force;  ///< at which the stress reaches its limit
    std::string permissible_words;            ///< at its line
    std::string permissible_above_words;      ///< instead of the line, when that lies above the diagram
    DiagramWords words;
};

/// Draws the diagram into a box: force upwards, length falling to the right from the free spring to the solid one.
/// Limits stand as narrow double-dotted lines across the plot. Every mark is named; where there is little room those of
/// reference points are named by their symbols alone, or share a label.
void draw_load_diagram(Drawing& drawing, const Box& box, const LoadDiagram& diagram);

}  // namespace seatload::sheet
