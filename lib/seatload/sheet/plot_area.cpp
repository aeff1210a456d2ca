// SPDX-License-Identifier: MIT
#include <seatload/sheet/plot_area.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/sheet/clip.hpp>

namespace seatload::sheet {
namespace {

constexpr double kShortest = 0.3;  ///< of a hatching line [mm]: shorter ones print as dots

constexpr double kHatchedStrip = 1.8;  ///< along a limit line [mm]
constexpr Hatching kStripHatching{1.5, 45.0};

Path on_paper(const Plot& plot, const Path& values) {
    Path out;
    for (const Point& value : values) out.push_back(plot.at(value.x, value.y));
    return out;
}

/// Mirrored at the diagonal, so that what cuts between upright lines cuts between level ones.
Path mirrored(Path path) {
    for (Point& p : path) std::swap(p.x, p.y);
    return path;
}

std::vector<Path> inside_line(const Path& line, const Box& box) {
    std::vector<Path> out;
    for (const Path& part : clip_line(line, box.left, box.right))
        for (Path& piece : clip_line(mirrored(part), box.bottom, box.top)) out.push_back(mirrored(std::move(piece)));
    return out;
}

Path inside_polygon(const Path& polygon, const Box& box) {
    return mirrored(clip_polygon(mirrored(clip_polygon(polygon, box.left, box.right)), box.bottom, box.top));
}

/// Where a level line meets the edges of a polygon, from left to right.
std::vector<double> crossings(const Path& polygon, double y) {
    std::vector<double> out;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point a = polygon[i];
        const Point b = polygon[(i + 1) % polygon.size()];
        if ((a.y <= y) != (b.y <= y)) out.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
    }
    std::sort(out.begin(), out.end());
    return out;
}

}  // namespace

void draw_curve(Drawing& drawing, const Plot& plot, const Path& values, LineKind kind) {
    for (Path& part : inside_line(on_paper(plot, values), plot.box)) drawing.add(Line{std::move(part), kind});
}

void fill_area(Drawing& drawing, const Plot& plot, const Path& values, double grey) {
    Path inside = inside_polygon(on_paper(plot, values), plot.box);
    if (inside.size() > 2) drawing.add(Area{std::move(inside), grey});
}

void hatch_area(Drawing& drawing, const Plot& plot, const Path& values, const Hatching& hatching) {
    hatch(drawing, inside_polygon(on_paper(plot, values), plot.box), hatching);
}

void draw_upright_line(Drawing& drawing, const Plot& plot, double horizontal, LineKind kind) {
    if (plot.spans(horizontal))
        drawing.line({plot.x(horizontal), plot.box.bottom}, {plot.x(horizontal), plot.box.top}, kind);
}

void draw_level_line(Drawing& drawing, const Plot& plot, double vertical, LineKind kind) {
    const double y = plot.y(vertical);
    if (y >= plot.box.bottom && y <= plot.box.top) drawing.line({plot.box.left, y}, {plot.box.right, y}, kind);
}

void draw_limit_line(Drawing& drawing, const Plot& plot, double vertical, Side forbidden, double from, double to) {
    draw_level_line(drawing, plot, vertical, LineKind::narrow);
    const double line = plot.y(vertical);
    if (line < plot.box.bottom || line > plot.box.top) return;
    const double edge = line + (forbidden == Side::above ? kHatchedStrip : -kHatchedStrip);
    hatch(drawing, {{plot.x(from), line}, {plot.x(to), line}, {plot.x(to), edge}, {plot.x(from), edge}},
          kStripHatching);
}

void hatch(Drawing& drawing, const Path& polygon, const Hatching& hatching) {
    Path level;
    Box extent = empty_box();
    for (const Point& p : polygon) {
        level.push_back(turned(p, -hatching.degrees));
        extent = include(extent, level.back());
    }
    if (level.size() < 3) return;
    // Lines lie on one grid for the whole sheet, whatever is hatched.
    for (double k = std::ceil(extent.bottom / hatching.pitch); k * hatching.pitch < extent.top; k += 1.0) {
        const double y = k * hatching.pitch;
        const std::vector<double> at = crossings(level, y);
        for (std::size_t i = 0; i + 1 < at.size(); i += 2)
            if (at[i + 1] - at[i] > kShortest)
                drawing.line(turned({at[i], y}, hatching.degrees), turned({at[i + 1], y}, hatching.degrees));
    }
}

}  // namespace seatload::sheet
