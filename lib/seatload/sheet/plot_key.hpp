// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <variant>
#include <vector>

#include <seatload/sheet/plot_area.hpp>
#include <seatload/sheet/plot_marks.hpp>

namespace seatload::sheet {

struct ErrorBarSample {};
struct GreySample {
    double grey;
};
struct HatchSample {
    Hatching hatching{};
};
struct ArrowSample {};
struct NoSample {};
/// A mark with an error bar on a line: what a fitted spring looks like.
struct MarkOnLine {
    Mark mark;
    LineKind kind;
};

/// What is drawn before the words of a key's entry.
using KeySample =
    std::variant<NoSample, LineKind, Mark, MarkOnLine, ErrorBarSample, ArrowSample, GreySample, HatchSample>;

struct PlotKeyEntry {
    KeySample sample;
    std::string words;
};

/// A key beside a plot: one entry under the other, long words broken into lines.
using PlotKey = std::vector<PlotKeyEntry>;

double key_height(const PlotKey& key, double width);

/// Draws it from the upper edge of a box downwards.
void draw_plot_key(Drawing& drawing, const Box& box, const PlotKey& key);

}  // namespace seatload::sheet
