// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/bench/measured.hpp>
#include <seatload/sheet/plot_key.hpp>

namespace seatload::sheet {

/// A measured spring and the signs it is drawn with.
struct DrawnSpring {
    const bench::MeasuredSpring& spring;
    Mark mark = Mark::disc;
    LineKind line = LineKind::wide;
};

/// The signs of the first, second, ... spring of a plot that holds several.
DrawnSpring drawn_as(const bench::MeasuredSpring& spring, std::size_t index);

/// What heights a plot shows: it begins with the greatest, at the left.
struct HeightRange {
    double greatest = 0.0;  ///< [mm]
    double least = 0.0;
};
/// All that is read, asked for, or met by the lines.
HeightRange height_range(const std::vector<DrawnSpring>& springs);

/// How many times too long error bars must be drawn to be seen beside the marks: 1, 2 or 5 times a power of ten.
/// `mm_per_newton` on the paper.
double magnification(const bench::MeasuredSpring& spring, double mm_per_newton);

/// One spring: force against height with error bars, points left out, contact and closing coils; under it what is left
/// between points and line, in expanded uncertainties of the points, over the same heights; the key at their right.
void draw_spring_plots(Drawing& drawing, const Box& box, const bench::MeasuredSpring& spring);

/// Several springs: points used and lines, with the key at the right.
void draw_overlay_plot(Drawing& drawing, const Box& box, const std::vector<DrawnSpring>& springs);

}  // namespace seatload::sheet
