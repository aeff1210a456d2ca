// SPDX-License-Identifier: MIT
#include "drawn_figure.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace seatload::test {
namespace {

using namespace sheet;

Box extent(const Path& path) {
    Box box = empty_box();
    for (const Point p : path) box = include(box, p);
    return box;
}

std::vector<Passing> passings(const ViewPiece& piece, double axis) {
    std::vector<Passing> out;
    for (const Path& edge : piece.edges)
        for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
            const Point a = edge[i];
            const Point b = edge[i + 1];
            if ((a.y < axis) != (b.y < axis)) out.push_back({a.x + (axis - a.y) * (b.x - a.x) / (b.y - a.y), b - a});
        }
    return out;
}

/// A closed circle, whose points all lie at the same distance from its middle.
bool is_ring(const Path& path) {
    if (path.size() < 90) return false;
    const Point middle = extent(path).centre();
    const double radius = std::hypot(path[0].x - middle.x, path[0].y - middle.y);
    return std::all_of(path.begin(), path.end(), [&](Point p) {
        return std::abs(std::hypot(p.x - middle.x, p.y - middle.y) - radius) < 1e-3 * radius;
    });
}

/// White areas, each with the lines drawn right after it.
Pieces pieces_of(const Drawing& page) {
    Pieces out;
    bool open = false;
    for (const Item& item : page.items()) {
        const sheet::Area* area = std::get_if<sheet::Area>(&item);
        const Line* line = std::get_if<Line>(&item);
        if (area && area->grey == 1.0) {
            out.push_back({area->points, {}});
            open = true;
        } else if (line && open && (line->kind == LineKind::wide || line->kind == LineKind::narrow)) {
            out.back().edges.push_back(line->points);
        } else {
            open = false;
        }
    }
    return out;
}

/// A half-turn reaches from one side of the spring to the other; the last one may end on its way.
double turns_of(const ViewPiece& piece, const Box& whole, double wire) {
    const Box box = extent(piece.fill);
    if (box.height() > 0.95 * whole.height()) return 0.5;
    const double radius = 0.5 * (whole.height() - wire);
    const bool from_top = box.top > whole.top - 0.3 * whole.height();
    const double reached = from_top ? whole.centre().y - box.bottom : box.top - whole.centre().y;
    return std::acos(std::clamp(-reached / radius, -1.0, 1.0)) / (2.0 * std::numbers::pi);
}

/// Turns of a drawn centre line that starts at the top: it passes the axis at a quarter turn and every half-turn after
/// it; its height at the end says how far it goes on from the last passing.
double turns_of(const Path& line) {
    const Box box = extent(line);
    const double axis = box.centre().y;
    const auto passed = passings({{}, {line}}, axis).size();
    const double height = std::abs(line.back().y - axis);
    const double rest = std::asin(std::min(1.0, 2.0 * height / box.height())) / (2.0 * std::numbers::pi);
    const bool comes_back = height < std::abs(line[line.size() - 2].y - axis);
    return 0.25 + 0.5 * (static_cast<double>(passed) - 1.0) + (comes_back ? 0.5 - rest : rest);
}

bool is_wire(const ViewPiece& piece, const Box& whole) { return extent(piece.fill).height() > 0.3 * whole.height(); }

}  // namespace

Box extent(const Pieces& pieces) {
    Box box = empty_box();
    for (const ViewPiece& piece : pieces)
        for (const Path& edge : piece.edges)
            for (const Point p : edge) box = include(box, p);
    return box;
}

std::vector<std::vector<Passing>> half_turns(const Pieces& pieces, double axis) {
    const Box whole = extent(pieces);
    std::vector<std::vector<Passing>> out;
    for (const ViewPiece& piece : pieces)
        // The wire's end faces and the ground faces are not wire: far lower than a half-turn, or covering nothing.
        if (auto all = passings(piece, axis); !all.empty() && is_wire(piece, whole)) out.push_back(all);
    return out;
}

std::vector<Passing> flattest_half_turn(const Pieces& pieces, double axis) {
    std::vector<Passing> best;
    double lowest = 1e9;
    for (const auto& all : half_turns(pieces, axis)) {
        const double slope = std::abs(all[0].direction.y / all[0].direction.x);
        if (all.size() == 2 && slope < lowest) {
            lowest = slope;
            best = all;
        }
    }
    return best;
}

double distance_across(const std::vector<Passing>& two) {
    const Point way = two[0].direction;
    return std::abs(two[1].x - two[0].x) * std::abs(way.y) / std::hypot(way.x, way.y);
}

DrawnFigure drawn_figure(const Drawing& page) {
    DrawnFigure out;
    bool before_end_view = true;
    for (ViewPiece& piece : pieces_of(page)) {
        if (is_ring(piece.fill)) {
            before_end_view = false;
            out.outer_ring = piece.edges.at(0);
            out.inner_ring = piece.edges.at(1);
        } else {
            (before_end_view ? out.side : out.detail).push_back(std::move(piece));
        }
    }
    if (!out.side.empty()) return out;
    for (const Item& item : page.items())
        if (const Line* line = std::get_if<Line>(&item); line && line->points.size() > 50 && !out.line)
            out.line = line->points;
    return out;
}

Measured measured(const DrawnFigure& figure) {
    Measured out;
    const double ring = 0.5 * (extent(figure.outer_ring).width() - extent(figure.inner_ring).width());
    if (figure.line) {
        const Box box = extent(*figure.line);
        return {box.height() + ring, box.width(), ring, turns_of(*figure.line)};
    }
    const Box whole = extent(figure.side);
    out.outside_diameter = whole.height();
    out.free_length = whole.width();
    if (const auto two = flattest_half_turn(figure.side, whole.centre().y); !two.empty())
        out.wire_diameter = distance_across(two);
    for (const ViewPiece& piece : figure.side)
        if (is_wire(piece, whole)) out.total_coils += turns_of(piece, whole, ring);
    return out;
}

int hand(const Pieces& pieces, double axis) {
    const Point front = half_turns(pieces, axis).back()[0].direction;
    return front.y / front.x < 0.0 ? 1 : -1;
}

}  // namespace seatload::test
