// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include <seatload/sheet/geometry.hpp>
#include <seatload/spring/spring.hpp>

namespace seatload::sheet {

/// A piece of a view: paper inside `fill` is covered, then the edges are drawn. Pieces come from back to front, so that
/// drawing them in order leaves the hidden edges out.
struct ViewPiece {
    Path fill;  ///< empty when the piece covers nothing
    std::vector<Path> edges;
};

/// The side view of a free spring [mm]: axis along x from 0 to L0, as it really looks - ends, hand, any count of coils.
std::vector<ViewPiece> side_view(const spring::Spring& spring);

/// The view of its left end, seen along the axis [mm]: centre at the origin, first-angle (it stands right of the side
/// view).
std::vector<ViewPiece> end_view(const spring::Spring& spring);

/// The centre line alone, for springs too fine to draw in full (ISO 2162-1, simplified).
Path centre_line_view(const spring::Spring& spring);

/// A point on the edge of the wire in front, on the upper side, for a leader to end on: near the middle of the side
/// view, or so many coils further right; nothing when the wire has ended there.
std::optional<Point> wire_edge_point(const spring::Spring& spring, int coils_right = 0);

}  // namespace seatload::sheet
