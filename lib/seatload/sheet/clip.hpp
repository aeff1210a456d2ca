// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sheet/geometry.hpp>

namespace seatload::sheet {

/// The part of a filled polygon between two upright lines; empty when none is.
Path clip_polygon(const Path& polygon, double left, double right);

/// The parts of a line between two upright lines.
std::vector<Path> clip_line(const Path& line, double left, double right);

/// The part of a filled polygon inside a circle; empty when none is.
Path clip_polygon(const Path& polygon, Point centre, double radius);

/// The parts of a line inside a circle.
std::vector<Path> clip_line(const Path& line, Point centre, double radius);

}  // namespace seatload::sheet
