// SPDX-License-Identifier: MIT
#include <seatload/sheet/detail_view.hpp>

#include <cmath>

#include <seatload/sheet/clip.hpp>
#include <seatload/sheet/dimension.hpp>
#include <seatload/sheet/outline_drawing.hpp>

namespace seatload::sheet {
namespace {

constexpr double kLetterHeight = 3.5;     ///< one step up from the other lettering (ISO 3098)
constexpr double kThinnestWire = 1.0;     ///< on paper, worth showing
constexpr double kWholeEndMargin = 1.12;  ///< radius over De/2
constexpr double kWholeEndInside = 0.55;  ///< how far the centre lies inside the end, over the radius
constexpr double kEdgeRadius = 3.0;       ///< over d, when only the upper edge is shown

constexpr double kLeaderDegrees = -5.0;  ///< clear of the title above
constexpr double kWellInside = 0.85;     ///< of the radius

Detail whole_end(const spring::Spring& spring) {
    const double radius = kWholeEndMargin * 0.5 * in_mm(spring.outside_diameter());
    return {{}, {kWholeEndInside * radius, 0.0}, radius};
}

Detail upper_edge(const spring::Spring& spring) {
    const double d = in_mm(spring.wire_diameter);
    return {{}, {2.0 * d, 0.5 * in_mm(spring.outside_diameter()) - 1.5 * d}, kEdgeRadius * d};
}

ViewPiece clipped(const ViewPiece& piece, const Detail& detail) {
    ViewPiece out{clip_polygon(piece.fill, detail.centre, detail.radius), {}};
    for (const Path& edge : piece.edges)
        for (Path& part : clip_line(edge, detail.centre, detail.radius)) out.edges.push_back(std::move(part));
    return out;
}

/// The point of the visible edges that lies farthest out on the side of the leader, well inside the circle.
Point outermost(const std::vector<ViewPiece>& pieces, const Detail& detail) {
    const Point way = turned({1.0, 0.0}, kLeaderDegrees);
    const auto reach = [&](Point p) { return (p.x - detail.centre.x) * way.x + (p.y - detail.centre.y) * way.y; };
    Point best = detail.centre;
    for (const ViewPiece& piece : pieces)
        for (const Path& edge : piece.edges)
            for (const Point p : edge) {
                const double from_centre = std::hypot(p.x - detail.centre.x, p.y - detail.centre.y);
                if (from_centre < kWellInside * detail.radius && reach(p) > reach(best)) best = p;
            }
    return best;
}

}  // namespace

std::optional<Detail> end_detail(const spring::Spring& spring, Scale view, double largest_radius) {
    for (Detail detail : {whole_end(spring), upper_edge(spring)}) {
        detail.scale = largest_scale(largest_radius / detail.radius);
        const bool is_larger = detail.scale.factor() > view.factor();
        if (is_larger && detail.scale.factor() * in_mm(spring.wire_diameter) >= kThinnestWire) return detail;
    }
    return std::nullopt;
}

void mark_detail(Drawing& drawing, const Detail& detail, Point face, Scale view, const std::string& letter,
                 bool letter_above) {
    const Point centre = face + view.factor() * detail.centre;
    const double radius = view.factor() * detail.radius;
    const Item circle = Arc{centre, radius};
    drawing.add(circle);
    Point beside = centre + turned({radius + 0.8, 0.0}, letter_above ? 120.0 : 240.0);
    // Under the circle, clear of the extension line that goes down from the left face.
    if (!letter_above) beside = {std::min(beside.x, face.x - 0.8), beside.y - kLetterHeight};
    // The axis, or an extension line, may run behind it.
    drawing.add(Text{.at = beside, .words = letter, .height = kLetterHeight, .align = Align::right, .masked = true});
}

void draw_detail(Drawing& drawing, const spring::Spring& spring, const Detail& detail, Point at,
                 const DetailWords& words) {
    std::vector<ViewPiece> pieces = side_view(spring);
    for (ViewPiece& piece : pieces) piece = clipped(piece, detail);
    const double scale = detail.scale.factor();
    const Point origin = at - scale * detail.centre;
    draw_view(drawing, pieces, origin, scale, outline_kind(scale * in_mm(spring.wire_diameter)));
    const double radius = scale * detail.radius;
    if (std::abs(detail.centre.y) < 0.5 * detail.radius)
        drawing.line({at.x - radius + 1.0, origin.y}, {at.x + radius - 1.0, origin.y}, LineKind::axis);
    const Item circle = Arc{at, radius};
    drawing.add(circle);
    drawing.add(Text{
        {at.x, at.y + radius + 1.6}, words.letter + " (" + detail.scale.text() + ")", kLetterHeight, Align::centre});
    if (words.wire.empty()) return;
    const Point knee = at + turned({radius + kDetailLeader, 0.0}, kLeaderDegrees);
    draw(drawing, Leader{origin + scale * outermost(pieces, detail), knee, words.wire});
}

}  // namespace seatload::sheet
