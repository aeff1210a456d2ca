// SPDX-License-Identifier: MIT
#include <seatload/sheet/clip.hpp>

namespace seatload::sheet {
namespace {

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

}  // namespace seatload::sheet
