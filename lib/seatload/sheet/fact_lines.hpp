// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// A heading and what is said under it.
struct Fact {
    std::string heading;
    std::string words;
};

/// Facts one under the other, headings in bold in a column of their own, long words broken into lines.
struct FactLines {
    std::vector<Fact> facts;
    double width = 0.0;          ///< of both columns [mm]
    double heading_width = 0.0;  ///< of the first [mm]
};

double height(const FactLines& lines);
void draw(Drawing& drawing, Point upper_left, const FactLines& lines);

}  // namespace seatload::sheet
