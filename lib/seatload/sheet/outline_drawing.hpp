// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sheet/coil_outline.hpp>
#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// The line that edges are drawn in, by how thick the wire is on paper [mm]: narrow where wide ones would run together.
LineKind outline_kind(double wire_on_paper);

/// Draws a view at a scale, its origin at a place on the paper.
void draw_view(Drawing& drawing, const std::vector<ViewPiece>& pieces, Point origin, double scale, LineKind kind);

}  // namespace seatload::sheet
