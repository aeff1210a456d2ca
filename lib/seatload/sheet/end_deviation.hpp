// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// How far a ground spring's side and far end may stand off true, as schematic additions to a side view whose base
/// plate is on the left. The spring itself is drawn true; what it may lean to is drawn as an extreme position, at no
/// scale.
struct EndDeviation {
    Point base_corner;        ///< upper outer edge at the base
    Point far_corner;         ///< upper outer edge at the far end
    Point far_foot;           ///< lower outer edge at the far end
    std::string squareness;   ///< at e1, the side off the perpendicular on the base plate; empty: not shown
    std::string parallelism;  ///< at e2, the far end off the base plate's plane; empty: not shown
};

/// What the additions take past the far end and above the view, dimensions included [mm].
inline constexpr double kDeviationReach = 12.0;
inline constexpr double kDeviationRise = 6.5;

void draw(Drawing& drawing, const EndDeviation& deviation);

}  // namespace seatload::sheet
