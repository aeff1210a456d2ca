// SPDX-License-Identifier: MIT
#include "drawn_plot.hpp"

#include <cmath>
#include <optional>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/plot_marks.hpp>
#include <support/check.hpp>

namespace seatload::test {
namespace {

using namespace sheet;

constexpr double kHair = 1e-6;

bool is_level(const Line& line) {
    return line.points.size() == 2 && std::abs(line.points[0].y - line.points[1].y) < kHair;
}
bool is_upright(const Line& line) {
    return line.points.size() == 2 && std::abs(line.points[0].x - line.points[1].x) < kHair;
}

double number_of(std::string words) {
    if (words.starts_with("−")) words = "-" + words.substr(std::string("−").size());
    return std::stod(words);
}

/// The ticks that follow an axis: a short line and its number each.
std::vector<DrawnPlot::Tick> ticks_after(const std::vector<Item>& items, std::size_t axis, bool level) {
    std::vector<DrawnPlot::Tick> out;
    for (std::size_t i = axis + 1; i + 1 < items.size(); i += 2) {
        const Line* tick = std::get_if<Line>(&items[i]);
        const Text* text = std::get_if<Text>(&items[i + 1]);
        if (tick == nullptr || text == nullptr || !(level ? is_upright(*tick) : is_level(*tick))) break;
        out.push_back({level ? tick->points[0].x : tick->points[0].y, number_of(text->words)});
    }
    return out;
}

double linear(const std::vector<DrawnPlot::Tick>& ticks, double at) {
    REQUIRE(ticks.size() >= 2);
    const DrawnPlot::Tick& a = ticks.front();
    const DrawnPlot::Tick& b = ticks.back();
    return a.value + (at - a.at) / (b.at - a.at) * (b.value - a.value);
}

const Line* wide_line(const Item& item) {
    const Line* line = std::get_if<Line>(&item);
    return line != nullptr && line->kind == LineKind::wide ? line : nullptr;
}

}  // namespace

double DrawnPlot::horizontal(double x) const { return linear(level, x); }
double DrawnPlot::vertical(double y) const { return linear(upright, y); }

bool DrawnPlot::holds(Point p) const {
    return p.x >= left - kHair && p.x <= right + kHair && p.y >= bottom - kHair && p.y <= top + kHair;
}

std::vector<DrawnPlot> drawn_plots(const Drawing& page) {
    std::vector<DrawnPlot> out;
    const auto& items = page.items();
    std::optional<DrawnPlot> begun;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const Line* axis = wide_line(items[i]);
        if (axis == nullptr) continue;
        if (const auto ticks = is_level(*axis) ? ticks_after(items, i, true) : std::vector<DrawnPlot::Tick>{};
            ticks.size() >= 2) {
            begun = DrawnPlot{};
            begun->level = ticks;
            begun->bottom = axis->points[0].y;
            begun->left = axis->points[0].x;
            begun->right = axis->points[1].x;
            continue;
        }
        if (!begun || !is_upright(*axis) || std::abs(axis->points[0].x - begun->left) > kHair) continue;
        begun->upright = ticks_after(items, i, false);
        begun->top = axis->points[1].y;
        if (begun->upright.size() >= 2) out.push_back(*begun);
        begun.reset();
    }
    return out;
}

std::vector<Path> lines_in(const Drawing& page, const DrawnPlot& plot, LineKind kind) {
    std::vector<Path> out;
    for (const Item& item : page.items()) {
        const Line* line = std::get_if<Line>(&item);
        if (line == nullptr || line->kind != kind) continue;
        bool inside = true;
        for (const Point& p : line->points) inside = inside && plot.holds(p);
        if (inside) out.push_back(line->points);
    }
    return out;
}

std::vector<Point> discs_in(const Drawing& page, const DrawnPlot& plot) {
    std::vector<Point> out;
    for (const Item& item : page.items())
        if (const Disc* disc = std::get_if<Disc>(&item);
            disc != nullptr && disc->radius == kMarkRadius && disc->grey == 0.0 && plot.holds(disc->centre))
            out.push_back(disc->centre);
    return out;
}

std::vector<Point> rings_in(const Drawing& page, const DrawnPlot& plot) {
    std::vector<Point> out;
    for (const Item& item : page.items())
        if (const Arc* arc = std::get_if<Arc>(&item);
            arc != nullptr && arc->radius == kMarkRadius && plot.holds(arc->centre))
            out.push_back(arc->centre);
    return out;
}

std::string words_on(const std::vector<Drawing>& pages) {
    std::string out;
    for (const Drawing& page : pages)
        for (const Item& item : page.items())
            if (const auto* text = std::get_if<Text>(&item)) out += plain(text->words) + "\n";
    for (auto at = out.find("\u00a0"); at != std::string::npos; at = out.find("\u00a0"))
        out.replace(at, std::string("\u00a0").size(), " ");
    return out;
}

}  // namespace seatload::test
