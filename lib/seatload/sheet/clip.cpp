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

}  // namespace

Path clip_polygon(const Path& polygon, double left, double right) {
    return half_plane(half_plane(polygon, left, 1.0), right, -1.0);
}

std::vector<Path> clip_line(const Path& line, double left, double right) {
    std::vector<Path> out;
    Path run;
    const auto end_run = [&] {
        if (run.size() > 1) out.push_back(run);
        run.clear();
    };
    const auto inside = [&](Point p) { return p.x >= left && p.x <= right; };
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        Point a = line[i];
        Point b = line[i + 1];
        if (std::max(a.x, b.x) < left || std::min(a.x, b.x) > right) {
            end_run();
            continue;
        }
        const Point whole_a = a;
        const Point whole_b = b;
        if (!inside(a)) a = crossing(whole_a, whole_b, a.x < left ? left : right);
        if (!inside(b)) b = crossing(whole_a, whole_b, b.x < left ? left : right);
        if (run.empty()) run.push_back(a);
        run.push_back(b);
        if (!inside(whole_b)) end_run();
    }
    end_run();
    return out;
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
    std::vector<Path> out;
    Path run;
    const auto end_run = [&] {
        if (run.size() > 1) out.push_back(run);
        run.clear();
    };
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const auto inside = inside_circle(line[i], line[i + 1], centre, radius);
        if (!inside || inside->from > 0.0) end_run();
        if (!inside) continue;
        const Point way = line[i + 1] - line[i];
        if (run.empty()) run.push_back(line[i] + inside->from * way);
        run.push_back(line[i] + inside->to * way);
        if (inside->to < 1.0) end_run();
    }
    end_run();
    return out;
}

}  // namespace seatload::sheet
