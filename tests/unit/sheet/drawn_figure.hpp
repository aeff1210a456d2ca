// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include <seatload/sheet/coil_outline.hpp>
#include <seatload/sheet/drawing.hpp>

// Takes a drawn figure apart again, by its lines and white areas alone.

namespace seatload::test {

/// Where a line passes an axis: its place along it, and its direction.
struct Passing {
    double x;
    sheet::Point direction;
};

using Pieces = std::vector<sheet::ViewPiece>;

/// Everything that the edges reach.
sheet::Box extent(const Pieces& pieces);

/// The half-turns of wire that pass the axis at a height, wire in the back first, then in front; a ground one may show
/// one outline only.
std::vector<std::vector<Passing>> half_turns(const Pieces& pieces, double axis = 0.0);

/// The half-turn with the largest lead: an active coil, where the outlines run parallel on the axis. Empty when none
/// shows both.
std::vector<Passing> flattest_half_turn(const Pieces& pieces, double axis = 0.0);

/// Distance of two parallel lines that pass the axis.
double distance_across(const std::vector<Passing>& two);

/// The views of a figure as they lie on the paper.
struct DrawnFigure {
    Pieces side;                      ///< outlines; empty for a simplified picture
    std::optional<sheet::Path> line;  ///< the centre line of a simplified picture
    sheet::Path outer_ring;
    sheet::Path inner_ring;
    Pieces detail;
};

/// The figure on a page. The end view is found by its ring: what is drawn before it is the side view, what comes after
/// it the detail.
DrawnFigure drawn_figure(const sheet::Drawing& page);

/// What is measured on the side view [mm on paper].
struct Measured {
    double outside_diameter = 0.0;
    double free_length = 0.0;
    double wire_diameter = 0.0;
    double total_coils = 0.0;
};
Measured measured(const DrawnFigure& figure);

/// +1 when wire in front falls to the right, as on a right-hand spring; -1 when it rises.
int hand(const Pieces& pieces, double axis);

}  // namespace seatload::test
