// SPDX-License-Identifier: MIT
#include <seatload/sheet/plot.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr double kTick = 1.2;
constexpr double kKeySample = 8.0;

std::string shown(double value, int decimals) {
    const std::string text = fixed(value, decimals);
    return text.starts_with('-') ? "−" + text.substr(1) : text;
}

}  // namespace

Ticks round_ticks(double low, double high, int most) {
    const double wanted = (high - low) / most;
    const double power = std::pow(10.0, std::floor(std::log10(wanted)));
    double step = 10.0 * power;
    for (const double share : {5.0, 2.0, 1.0})
        if (share * power >= wanted) step = share * power;
    Ticks ticks;
    ticks.decimals = std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)));
    for (double k = std::ceil(low / step - 1e-9); k * step <= high + 1e-9 * step; k += 1.0)
        ticks.at.push_back(k * step);
    return ticks;
}

double left_of_plot(double low, double high, int most) {
    const Ticks ticks = round_ticks(low, high, most);
    double widest = 0.0;
    for (const double value : ticks.at) widest = std::max(widest, text_width(shown(value, ticks.decimals), kLettering));
    return widest + kTick + 1.0;
}

void draw_level_axis(Drawing& drawing, const Plot& plot, const std::string& name, int most_ticks) {
    const auto [low, high] = std::minmax(plot.left_value, plot.right_value);
    const Ticks ticks = round_ticks(low, high, most_ticks);
    drawing.line({plot.box.left, plot.box.bottom}, {plot.box.right, plot.box.bottom}, LineKind::wide);
    for (const double value : ticks.at) {
        const double x = plot.x(value);
        drawing.line({x, plot.box.bottom}, {x, plot.box.bottom - kTick});
        drawing.add(Text{{x, plot.box.bottom - kTick - 3.3}, shown(value, ticks.decimals), kLettering, Align::centre});
    }
    if (!name.empty())
        drawing.add(Text{{plot.box.right, plot.box.bottom - kTick - 7.3}, name, kLettering, Align::right});
}

void draw_upright_axis(Drawing& drawing, const Plot& plot, const std::string& name, int most_ticks) {
    const Ticks ticks = round_ticks(plot.bottom_value, plot.top_value, most_ticks);
    drawing.line({plot.box.left, plot.box.bottom}, {plot.box.left, plot.box.top}, LineKind::wide);
    for (const double value : ticks.at) {
        const double y = plot.y(value);
        drawing.line({plot.box.left, y}, {plot.box.left - kTick, y});
        // Kept clear of the first number of the level axis.
        const double base = std::max(y - 0.5 * kLettering, plot.box.bottom);
        drawing.add(Text{{plot.box.left - kTick - 0.6, base}, shown(value, ticks.decimals), kLettering, Align::right});
    }
    if (!name.empty()) drawing.add(Text{{plot.box.left, plot.box.top + 2.6}, name});
}

double draw_key_line(Drawing& drawing, Point at, const KeyLine& key) {
    drawing.line({at.x, at.y + 0.5 * kLettering}, {at.x + kKeySample, at.y + 0.5 * kLettering}, key.kind);
    const Text text{{at.x + kKeySample + 1.2, at.y}, key.words};
    drawing.add(text);
    return text_box(text).right + 4.0;
}

}  // namespace seatload::sheet
