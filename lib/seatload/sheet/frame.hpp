// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// The drawing space inside the border (ISO 5457: 20 mm at the filing edge on the left, 10 mm elsewhere).
constexpr Box drawing_space(double width, double height) { return {20.0, 10.0, width - 10.0, height - 10.0}; }

/// Draws border, centring marks and the grid reference letters and numerals (ISO 5457; grid on A4 at the top and
/// right).
void draw_frame(Drawing& drawing);

}  // namespace seatload::sheet
