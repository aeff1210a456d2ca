// SPDX-License-Identifier: MIT
#include <seatload/sheet/clip.hpp>

#include <optional>

namespace seatload::sheet {
namespace {

constexpr int kSides = 120;  ///< of the polygon that stands for a circle

/// Where a segment enters and leaves a circle, as shares of its length; nothing when it stays outside.
struct Inside {
    double from;
    double to;
};

std::optional<Inside> inside_circle(Point a, Point b, Point centre, double radius) {
    const Point way = b - a;
    const Point off = a - centre;
    const double square = way.x * way.x + way.y * way.y;
    if (square == 0.0) return std::nullopt;
    const double half = (way.x * off.x + way.y * off.y) / square;
    const double root = half * half - (off.x * off.x + off.y * off.y - radius * radius) / square;
    if (root <= 0.0) return std::nullopt;
    const Inside inside{std::max(0.0, -half - std::sqrt(root)), std::min(1.0, -half + std::sqrt(root))};
    return inside.from < inside.to ? std::optional(inside) : std::nullopt;
}

Point crossing(Point a, Point b, double x) { return {x, a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x)}; }

/// Keeps what lies on the far side of x, in the direction of `side` (+1 right, -1 left).
Path half_plane(const Path& polygon, double x, double side) {
    Path out;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point a = polygon[i];
        const Point b = polygon[(i + 1) % polygon.size()];
        const bool a_in = side * (a.x - x) >= 0.0;
        const bool b_in = side * (b.x - x) >= 0.0;
        if (a_in) out.push_back(a);
        if (a_in != b_in) out.push_back(crossing(a, b, x));
    }
    return out;
}

/// What of a segment lies inside.
struct Piece {
    Point from;
    Point to;
    bool enters;  ///< the segment begins outside
    bool leaves;  ///< the segment ends outside
};

/// The parts of a line inside; `piece_of` gives that of a segment, nothing when it stays outside.
template <class PieceOf>
std::vector<Path> runs_inside(const Path& line, PieceOf piece_of) {
    std::vector<Path> out;
    Path run;
    const auto end_run = [&] {
        if (run.size() > 1) out.push_back(run);
        run.clear();
    };
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const std::optional<Piece> piece = piece_of(line[i], line[i + 1]);
        if (!piece || piece->enters) end_run();
        if (!piece) continue;
        if (run.empty()) run.push_back(piece->from);
        run.push_back(piece->to);
        if (piece->leaves) end_run();
    }
    end_run();
    return out;
}

}  // namespace

Path clip_polygon(const Path& polygon, double left, double right) {
    return half_plane(half_plane(polygon, left, 1.0), right, -1.0);
}

std::vector<Path> clip_line(const Path& line, double left, double right) {
    const auto inside = [&](Point p) { return p.x >= left && p.x <= right; };
    return runs_inside(line, [&](Point a, Point b) -> std::optional<Piece> {
        if (std::max(a.x, b.x) < left || std::min(a.x, b.x) > right) return std::nullopt;
        const auto edge = [&](Point end) { return crossing(a, b, end.x < left ? left : right); };
        return Piece{inside(a) ? a : edge(a), inside(b) ? b : edge(b), !inside(a), !inside(b)};
    });
}

Path clip_polygon(const Path& polygon, Point centre, double radius) {
    // One side of a regular polygon after the other, each turned to stand upright on the right. The sides touch the
    // circle.
    Path out = polygon;
    for (Point& p : out) p = p - centre;
    constexpr double kTurn = 360.0 / kSides;
    for (int side = 0; side < kSides && !out.empty(); ++side) {
        out = half_plane(out, radius, -1.0);
        for (Point& p : out) p = turned(p, kTurn);
    }
    for (Point& p : out) p = p + centre;
    return out;
}

std::vector<Path> clip_line(const Path& line, Point centre, double radius) {
    return runs_inside(line, [&](Point a, Point b) -> std::optional<Piece> {
        const auto inside = inside_circle(a, b, centre, radius);
        if (!inside) return std::nullopt;
        const Point way = b - a;
        return Piece{a + inside->from * way, a + inside->to * way, inside->from > 0.0, inside->to < 1.0};
    });
}

}  // namespace seatload::sheet
