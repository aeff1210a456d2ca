// SPDX-License-Identifier: MIT
#include <seatload/sheet/fatigue_diagram.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/plot.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kFatigueKeyWidth = 58.0;
constexpr int kTicks = 8;
constexpr int kUprightTicks = 6;
constexpr int kPieces = 60;  ///< of a curve

std::string name(demand::FatigueLine line) {
    switch (line) {
        case demand::FatigueLine::goodman:
            return "Goodman";
        case demand::FatigueLine::gerber:
            return "Gerber";
        case demand::FatigueLine::sines:
            return "Sines";
    }
    return {};
}

/// The amplitude the line allows at a mean stress.
double allowed(const FatigueDiagram& d, double mean) {
    const double used = mean / d.shear_strength;
    switch (d.line) {
        case demand::FatigueLine::goodman:
            return spring::goodman_endurance(d.endurance, d.shear_strength) * (1.0 - used);
        case demand::FatigueLine::gerber:
            return spring::gerber_endurance(d.endurance, d.shear_strength) * (1.0 - used * used);
        case demand::FatigueLine::sines:
            return d.endurance.amplitude;
    }
    return 0.0;
}

/// The line, or the line drawn in by a factor along rays from the origin.
Path curve(const FatigueDiagram& d, const Plot& plot, double factor) {
    Path path;
    for (int i = 0; i <= kPieces; ++i) {
        const double mean = d.shear_strength * i / kPieces;
        path.push_back(plot.at(mean / factor, allowed(d, mean) / factor));
    }
    return path;
}

/// The ray from the origin through the spring's point, as far as the line.
void draw_load_line(Drawing& drawing, const FatigueDiagram& d, const Plot& plot) {
    const double reach = std::max(1.0, std::min(d.factor, plot.right_value / std::max(d.mean, 1e-9)));
    const double high = std::min(reach, plot.top_value / std::max(d.amplitude, 1e-9));
    drawing.line(plot.at(0.0, 0.0), plot.at(high * d.mean, high * d.amplitude), LineKind::hidden);
}

void draw_mark(Drawing& drawing, Point at, bool is_full) {
    if (is_full)
        drawing.add(Disc{at, 1.1});
    else
        drawing.add(Arc{at, 1.1, LineKind::wide});
}

void draw_key(Drawing& drawing, const Box& box, const FatigueDiagram& d) {
    double y = box.top - 6.0;
    const auto words = [&](const std::string& text) {
        for (const std::string& line : wrapped(text, box.width() - 11.0)) {
            drawing.add(Text{{box.left + 11.0, y}, line});
            y -= 4.2;
        }
        y -= 1.4;
    };
    const auto sample = [&](LineKind kind, const std::string& text) {
        drawing.line({box.left, y + 1.2}, {box.left + 9.0, y + 1.2}, kind);
        words(text);
    };
    sample(LineKind::wide, name(d.line) + " line, factor 1");
    sample(LineKind::axis, "the same at the factor asked for, " + significant(d.factor_asked, 4));
    sample(LineKind::hidden, "load line of the spring");
    draw_mark(drawing, {box.left + 4.5, y + 1.2}, true);
    words("the spring: " + with_sub("τ", "m") + " = " + fixed(d.mean, 1) + ", " + with_sub("τ", "a") + " = " +
          fixed(d.amplitude, 1) + " MPa, " + with_sub("n", "f") + " = " + significant(d.factor, 4));
    draw_mark(drawing, {box.left + 4.5, y + 1.2}, false);
    words("endurance point (Zimmerli): " + fixed(d.endurance.mean, 1) + ", " + fixed(d.endurance.amplitude, 1) +
          " MPa");
}

}  // namespace

void draw_fatigue_diagram(Drawing& drawing, const Box& box, const FatigueDiagram& d) {
    const double top = 1.15 * std::max({allowed(d, 0.0), d.amplitude, d.endurance.amplitude});
    const double right = 1.05 * std::max(d.shear_strength, d.mean);
    const Box inner{box.left + left_of_plot(0.0, top, kUprightTicks), box.bottom + kBelowPlot,
                    box.right - kFatigueKeyWidth - 6.0, box.top - kAbovePlot};
    const Plot plot{inner, 0.0, right, 0.0, top};
    drawing.add(Line{curve(d, plot, 1.0), LineKind::wide, false});
    if (d.factor_asked != 1.0) drawing.add(Line{curve(d, plot, d.factor_asked), LineKind::axis, false});
    draw_load_line(drawing, d, plot);
    draw_mark(drawing, plot.at(d.endurance.mean, d.endurance.amplitude), false);
    draw_mark(drawing, plot.at(d.mean, d.amplitude), true);
    draw_level_axis(drawing, plot, "mean stress " + with_sub("τ", "m") + " [MPa], corrected", kTicks);
    draw_upright_axis(drawing, plot, "amplitude " + with_sub("τ", "a") + " [MPa], corrected", kUprightTicks);
    draw_key(drawing, {box.right - kFatigueKeyWidth, box.bottom, box.right, box.top}, d);
}

}  // namespace seatload::sheet
