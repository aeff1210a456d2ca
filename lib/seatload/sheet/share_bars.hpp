// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// A part of a whole, with its name.
struct ShareBar {
    std::string words;
    double share = 0.0;  ///< 0 to 1
};

/// Parts of a whole as level bars under a title, the longest first as given; the percentage stands at each bar's end.
struct ShareBars {
    std::string title;
    std::vector<ShareBar> bars;
};

double height(const ShareBars& bars);

/// Draws them from the upper edge of a box downwards; a bar of 100 % would fill what the names and numbers leave.
void draw(Drawing& drawing, const Box& box, const ShareBars& bars);

}  // namespace seatload::sheet
