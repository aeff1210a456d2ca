// SPDX-License-Identifier: MIT
#include <seatload/sheet/plot_marks.hpp>

namespace seatload::sheet {
namespace {

constexpr double kBarEnd = 0.8;
constexpr double kWhite = 1.0;

Path polygon_of(Mark mark, Point at) {
    constexpr double r = kMarkRadius;
    switch (mark) {
        case Mark::square:
        case Mark::open_square: {
            constexpr double half = 0.86 * r;
            return {at + Point{-half, -half}, at + Point{half, -half}, at + Point{half, half}, at + Point{-half, half}};
        }
        case Mark::triangle:
        case Mark::open_triangle:
            return {at + Point{-1.1 * r, -0.75 * r}, at + Point{1.1 * r, -0.75 * r}, at + Point{0.0, 1.25 * r}};
        default:
            return {at + Point{-1.2 * r, 0.0}, at + Point{0.0, -1.2 * r}, at + Point{1.2 * r, 0.0},
                    at + Point{0.0, 1.2 * r}};
    }
}

bool is_open(Mark mark) {
    return mark == Mark::open_square || mark == Mark::open_triangle || mark == Mark::open_diamond;
}

void draw_cross(Drawing& drawing, Point at) {
    constexpr double r = kMarkRadius;
    drawing.line(at + Point{-r, -r}, at + Point{r, r}, LineKind::wide);
    drawing.line(at + Point{-r, r}, at + Point{r, -r}, LineKind::wide);
}

}  // namespace

void draw_mark(Drawing& drawing, Point at, Mark mark) {
    if (mark == Mark::cross) return draw_cross(drawing, at);
    if (mark == Mark::disc) return drawing.add(Disc{at, kMarkRadius});
    if (mark == Mark::ring) {
        drawing.add(Disc{at, kMarkRadius, kWhite});
        return drawing.add(Arc{at, kMarkRadius});
    }
    const Path points = polygon_of(mark, at);
    drawing.add(Area{points, is_open(mark) ? kWhite : 0.0});
    if (is_open(mark)) drawing.add(Line{points, LineKind::narrow, true});
}

void draw_error_bar(Drawing& drawing, double x, double low, double high) {
    drawing.line({x, low}, {x, high});
    for (const double y : {low, high}) drawing.line({x - kBarEnd, y}, {x + kBarEnd, y});
}

}  // namespace seatload::sheet
