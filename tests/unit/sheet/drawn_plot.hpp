// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>

// Takes drawn plots apart again: what a place on the paper stands for, by the numbers at the ticks of the axes.

namespace seatload::test {

/// The two axes of a plot as drawn, read off their ticks.
struct DrawnPlot {
    struct Tick {
        double at;  ///< on the paper [mm]
        double value;
    };
    std::vector<Tick> level;
    std::vector<Tick> upright;
    double bottom = 0.0;  ///< of the level axis on the paper
    double left = 0.0;    ///< its ends
    double right = 0.0;
    double top = 0.0;  ///< of the upright axis

    double horizontal(double x) const;
    double vertical(double y) const;
    sheet::Point value(sheet::Point p) const { return {horizontal(p.x), vertical(p.y)}; }
    bool holds(sheet::Point p) const;
};

/// The plots of a page that have two axes with numbers, in the order drawn.
std::vector<DrawnPlot> drawn_plots(const sheet::Drawing& page);

/// What lies inside a plot: lines of a kind, and discs and rings of the size of a mark.
std::vector<sheet::Path> lines_in(const sheet::Drawing& page, const DrawnPlot& plot, sheet::LineKind kind);
std::vector<sheet::Point> discs_in(const sheet::Drawing& page, const DrawnPlot& plot);
std::vector<sheet::Point> rings_in(const sheet::Drawing& page, const DrawnPlot& plot);

/// All words of pages, a text a line, blanks that hold together as plain ones.
std::string words_on(const std::vector<sheet::Drawing>& pages);

}  // namespace seatload::test
