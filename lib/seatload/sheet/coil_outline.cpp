// SPDX-License-Identifier: MIT
#include <seatload/sheet/coil_outline.hpp>

#include <seatload/sheet/clip.hpp>
#include <seatload/sheet/coil_curve.hpp>

// Orthographic views of a tube about a space curve: the contour of a round wire is the pair of curves parallel to the
// projected centre line at d/2. Where the centre line turns back at the top and bottom of a coil the inner one has
// cusps, and what lies between them is inside the tube: it is left out.

namespace seatload::sheet {
namespace {

/// The projected centre line at one place: point, unit normal, curvature.
struct CurvePlace {
    Point at;
    Point normal;
    double curvature;
};

CurvePlace place(const CoilCurve& curve, double u) {
    const double x1 = curve.lead(u) / kTwoPi;  // derivatives by the angle
    const double x2 = curve.lead_slope(u) / (kTwoPi * kTwoPi);
    const double y1 = -curve.radius() * std::sin(kTwoPi * u);
    const double y2 = -curve.radius() * std::cos(kTwoPi * u);
    const double speed = std::hypot(x1, y1);
    return {{curve.x(u), curve.y(u)}, {-y1 / speed, x1 / speed}, (x1 * y2 - y1 * x2) / (speed * speed * speed)};
}

double direction(const CoilCurve& curve, double u) {
    return std::atan2(-curve.radius() * std::sin(kTwoPi * u), curve.lead(u) / kTwoPi);
}

/// Turns between which the projected direction changes little: even steps would look faceted at the extremes.
void sample(const CoilCurve& curve, double from, double to, int depth, std::vector<double>& turns) {
    constexpr double kStep = 4.0 * std::numbers::pi / 180.0;
    const double middle = 0.5 * (from + to);
    const bool bent = std::abs(direction(curve, to) - direction(curve, from)) > kStep;
    if (depth < 3 || (depth < 12 && bent)) {
        sample(curve, from, middle, depth + 1, turns);
        sample(curve, middle, to, depth + 1, turns);
    } else {
        turns.push_back(to);
    }
}

/// The wire between two turns, on one side of the spring.
ViewPiece tube(const CoilCurve& curve, double from, double to) {
    std::vector<double> turns{from};
    sample(curve, from, to, 0, turns);
    const double r = curve.wire_radius();
    ViewPiece piece;
    Path back;
    for (const double side : {1.0, -1.0}) {
        Path run;
        for (const double u : turns) {
            const CurvePlace p = place(curve, u);
            const Point edge = p.at + side * r * p.normal;
            (side > 0.0 ? piece.fill : back).push_back(edge);
            if (1.0 - side * r * p.curvature > 0.0) {
                run.push_back(edge);
                continue;
            }
            piece.edges.push_back(run);
            run.clear();
        }
        piece.edges.push_back(run);
    }
    piece.fill.insert(piece.fill.end(), back.rbegin(), back.rend());
    return piece;
}

/// The flat end of the wire, square to it, as seen from the side.
ViewPiece tip(const CoilCurve& curve, double u) {
    const double speed = std::hypot(curve.lead(u), kTwoPi * curve.radius());
    const double tx = curve.lead(u) / speed;
    const double around = kTwoPi * curve.radius() / speed;
    // Two unit vectors square to the wire: outwards from the axis, and the one square to that and to the wire.
    const Point outwards{0.0, curve.y(u) / curve.radius()};
    const Point across{around, tx * std::sin(kTwoPi * u)};
    ViewPiece piece;
    for (int degree = 0; degree <= 360; degree += 6) {
        const double a = radians(degree);
        piece.fill.push_back(Point{curve.x(u), curve.y(u)} +
                             curve.wire_radius() * (std::cos(a) * outwards + std::sin(a) * across));
    }
    piece.edges.push_back(piece.fill);
    return piece;
}

/// Whether a point of a tip's outline lies behind the wire that runs from the tip towards the viewer.
bool is_covered(const CoilCurve& curve, Point p, double u, bool first) {
    constexpr double kStep = 1.0 / 256.0;
    for (double t = kStep; t <= std::min(0.5, curve.turns()); t += kStep) {
        const double v = first ? u + t : u - t;
        if (std::hypot(p.x - curve.x(v), p.y - curve.y(v)) < 0.999 * curve.wire_radius()) return true;
    }
    return false;
}

/// The outline of a tip whose face looks away from the viewer, as far as the wire leaves it visible.
ViewPiece tip_from_behind(const CoilCurve& curve, double u, bool first) {
    ViewPiece piece = tip(curve, u);
    const Path whole = piece.edges.front();
    piece.edges.assign(1, {});
    for (const Point p : whole) {
        if (!is_covered(curve, p, u, first))
            piece.edges.back().push_back(p);
        else if (!piece.edges.back().empty())
            piece.edges.emplace_back();
    }
    return piece;
}

/// Half-width of the cut that grinding makes in the wire, by how deep the face lies from the wire's centre.
double half_cut(const CoilCurve& curve, double depth) {
    const double r = curve.wire_radius();
    return std::abs(depth) < r ? std::sqrt(r * r - depth * depth) : 0.0;
}

/// The turns, from an end inwards, in which the face cuts the wire.
std::vector<double> ground_turns(const CoilCurve& curve, bool left) {
    std::vector<double> turns;
    const double step = 1.0 / 256.0;
    for (double t = 0.0; t <= std::min(1.5, curve.turns()); t += step) {
        const double u = left ? t : curve.turns() - t;
        if ((left ? curve.x(u) : curve.x_from_right(u)) >= curve.wire_radius()) break;
        turns.push_back(u);
    }
    return turns;
}

/// The edge-on ground face in the side view.
ViewPiece ground_face(const CoilCurve& curve, bool left) {
    Box extent = empty_box();
    for (const double u : ground_turns(curve, left)) {
        const double cut = half_cut(curve, left ? curve.x(u) : curve.x_from_right(u));
        for (const double radius : {curve.radius() + cut, curve.radius() - cut})
            extent = include(extent, {left ? 0.0 : curve.length(), radius * std::cos(kTwoPi * u)});
    }
    ViewPiece piece;
    if (extent.bottom < extent.top) piece.edges.push_back({{extent.left, extent.bottom}, {extent.left, extent.top}});
    return piece;
}

ViewPiece clipped(const ViewPiece& piece, double left, double right) {
    ViewPiece out{clip_polygon(piece.fill, left, right), {}};
    if (out.fill.size() < 3) out.fill.clear();
    for (const Path& edge : piece.edges)
        for (Path& part : clip_line(edge, left, right)) out.edges.push_back(std::move(part));
    return out;
}

/// True when the wire between two turns lies on the viewer's side of the axis.
bool is_in_front(const CoilCurve& curve, double from, double to) { return curve.z(0.5 * (from + to)) > 0.0; }

void add_half(const CoilCurve& curve, double from, double to, std::vector<ViewPiece>& pieces) {
    const bool is_first = from == 0.0;
    const bool is_last = to == curve.turns();
    // The first tip's face looks away along the wire's start, the last one's along its end.
    const bool first_faces_viewer = curve.z(1e-3) < curve.z(0.0);
    const bool last_faces_viewer = curve.z(curve.turns()) > curve.z(curve.turns() - 1e-3);
    if (is_first && !first_faces_viewer) pieces.push_back(tip_from_behind(curve, from, true));
    if (is_last && !last_faces_viewer) pieces.push_back(tip_from_behind(curve, to, false));
    pieces.push_back(tube(curve, from, to));
    if (is_first && first_faces_viewer) pieces.push_back(tip(curve, from));
    if (is_last && last_faces_viewer) pieces.push_back(tip(curve, to));
}

}  // namespace

std::vector<ViewPiece> side_view(const spring::Spring& spring) {
    const CoilCurve curve(spring);
    std::vector<ViewPiece> pieces;
    for (const bool front : {false, true})
        for (double from = 0.0; from < curve.turns(); from += 0.5) {
            const double to = std::min(from + 0.5, curve.turns());
            if (to - from > 1e-6 && is_in_front(curve, from, to) == front) add_half(curve, from, to, pieces);
        }
    if (!curve.ground()) return pieces;
    for (ViewPiece& piece : pieces) piece = clipped(piece, 0.0, curve.length());
    pieces.push_back(ground_face(curve, true));
    pieces.push_back(ground_face(curve, false));
    return pieces;
}

std::vector<ViewPiece> end_view(const spring::Spring& spring) {
    const CoilCurve curve(spring);
    const double r = curve.wire_radius();
    const auto ring = [](double radius) {
        Path path;
        for (int degree = 0; degree <= 360; degree += 2) path.push_back(turned({radius, 0.0}, degree));
        return path;
    };
    // Seen from the left, z points to the right.
    const auto at = [&](double u, double radius) {
        return Point{curve.z(u) / curve.radius() * radius, curve.y(u) / curve.radius() * radius};
    };
    ViewPiece rings{ring(curve.radius() + r), {ring(curve.radius() + r), ring(curve.radius() - r)}};
    const std::vector<double> cut_turns = curve.ground() ? ground_turns(curve, true) : std::vector<double>{};
    const double reach = cut_turns.empty() ? r : half_cut(curve, curve.x(0.0));
    rings.edges.push_back({at(0.0, curve.radius() - reach), at(0.0, curve.radius() + reach)});
    for (const double side : {1.0, -1.0}) {
        Path edge;
        for (const double u : cut_turns) edge.push_back(at(u, curve.radius() + side * half_cut(curve, curve.x(u))));
        if (edge.size() > 1) rings.edges.push_back(edge);
    }
    return {rings};
}

Path centre_line_view(const spring::Spring& spring) {
    const CoilCurve curve(spring);
    std::vector<double> turns{0.0};
    for (double from = 0.0; from < curve.turns(); from += 0.5)
        sample(curve, from, std::min(from + 0.5, curve.turns()), 0, turns);
    Path path;
    for (const double u : turns) path.push_back({std::clamp(curve.x(u), 0.0, curve.length()), curve.y(u)});
    return path;
}

std::optional<Point> wire_edge_point(const spring::Spring& spring, int coils_right) {
    const CoilCurve curve(spring);
    // A place on the upper quarter of a front half-turn past the middle.
    const double half = spring.hand == spring::Hand::right ? 0.0 : 0.5;
    double u = std::floor(0.6 * curve.turns()) + half + (half == 0.0 ? 0.14 : 0.36);
    if (u > curve.turns()) u -= 1.0;
    u += coils_right;
    if (u > curve.turns()) return std::nullopt;
    const CurvePlace p = place(curve, u);
    const double upper = p.normal.y > 0.0 ? 1.0 : -1.0;
    return p.at + upper * curve.wire_radius() * p.normal;
}

}  // namespace seatload::sheet
