// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// Round numbers along an axis: 1, 2 or 5 times a power of ten apart.
struct Ticks {
    std::vector<double> at;
    int decimals = 0;
};
/// At most `most` of them (at least 2) between two ends.
Ticks round_ticks(double low, double high, int most);

/// A plot with straight axes: where numbers lie on the paper. Either axis may run backwards.
struct Plot {
    Box box;  ///< inside the axes
    double left_value = 0.0;
    double right_value = 1.0;
    double bottom_value = 0.0;
    double top_value = 1.0;

    double x(double value) const { return box.left + (value - left_value) / (right_value - left_value) * box.width(); }
    double y(double value) const {
        return box.bottom + (value - bottom_value) / (top_value - bottom_value) * box.height();
    }
    Point at(double horizontal, double vertical) const { return {x(horizontal), y(vertical)}; }
    bool spans(double horizontal) const {
        return horizontal >= std::min(left_value, right_value) && horizontal <= std::max(left_value, right_value);
    }
};

/// Room an axis takes below a plot with its numbers and its name [mm].
inline constexpr double kBelowPlot = 9.5;
/// And above one for the name of its upright axis, where nothing calls for less.
inline constexpr double kAbovePlot = 6.0;
/// And left of it, for numbers so wide.
double left_of_plot(double low, double high, int most);

/// Draws an axis with its ticks and numbers, and its name at the end of the numbers' line below (empty: none).
void draw_level_axis(Drawing& drawing, const Plot& plot, const std::string& name, int most_ticks);
/// The same at the left side, its name above (empty: none).
void draw_upright_axis(Drawing& drawing, const Plot& plot, const std::string& name, int most_ticks);

/// A sign with what it stands for, in a key.
struct KeyLine {
    LineKind kind = LineKind::narrow;
    std::string words;
};
/// Draws short pieces of line with their words side by side from a point; returns where the next may begin.
double draw_key_line(Drawing& drawing, Point at, const KeyLine& key);

}  // namespace seatload::sheet
