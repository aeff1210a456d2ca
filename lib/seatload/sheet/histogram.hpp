// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// How often a number fell into each of a row of equal bins, and the limits it is held to.
struct Histogram {
    std::string title;
    std::string axis;   ///< "F1 [N]"
    double from = 0.0;  ///< lower edge of the first bin
    double to = 1.0;    ///< upper edge of the last one
    std::vector<long> counts;
    long total = 0;
    std::optional<double> ordered_least, ordered_most;  ///< as ordered
    std::optional<double> need_least, need_most;        ///< what the mechanism needs
    double nominal = 0.0;
};

/// Draws it into a box: bars, the limits as upright lines, the share of each bin upwards [%].
void draw_histogram(Drawing& drawing, const Box& box, const Histogram& histogram);

/// The key to the lines of all histograms, from a point on its base line.
void draw_histogram_key(Drawing& drawing, Point at);

}  // namespace seatload::sheet
