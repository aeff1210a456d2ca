// SPDX-License-Identifier: MIT
#include <seatload/sheet/spring_figure.hpp>

#include <seatload/sheet/coil_outline.hpp>
#include <seatload/sheet/dimension.hpp>

namespace seatload::sheet {
namespace {

// Room kept round the views for their dimensions [mm].
constexpr double kLeft = 12.5;     ///< the diameter
constexpr double kAbove = 7.5;     ///< the leader to the wire
constexpr double kRowPitch = 4.9;  ///< between the dimension lines of the three lengths
constexpr double kBelow = 3.0 * kRowPitch + 2.5;
constexpr double kBetween = 9.0;  ///< side view and end view
constexpr double kRight = 4.0;
constexpr double kAxisOvershoot = 4.0;
constexpr double kFinestOutline = 0.8;  ///< wire drawn thinner than this is shown as a single line
constexpr double kFinestWide = 2.0;     ///< and with narrow outlines below this

/// The views and where they stand.
struct Placed {
    const SpringFigure& figure;
    double scale;
    Point left_face;  ///< on the axis, left end of the side view
    Point end_centre;

    double on_paper(double real_mm) const { return scale * real_mm; }
    double outside_radius() const { return 0.5 * on_paper(in_mm(figure.spring.outside_diameter())); }
    double inside_radius() const { return 0.5 * on_paper(in_mm(figure.spring.inside_diameter())); }
    double length() const { return on_paper(in_mm(figure.spring.free_length)); }
};

void draw_view(Drawing& drawing, const std::vector<ViewPiece>& pieces, Point origin, double scale, LineKind kind) {
    const auto moved = [&](Path path) {
        for (Point& p : path) p = origin + scale * p;
        return path;
    };
    for (const ViewPiece& piece : pieces) {
        if (piece.fill.size() > 2) drawing.add(Area{moved(piece.fill), 1.0});
        for (const Path& edge : piece.edges)
            if (edge.size() > 1) drawing.add(Line{moved(edge), kind});
    }
}

void draw_views(Drawing& drawing, const Placed& placed) {
    const double wire = placed.on_paper(in_mm(placed.figure.spring.wire_diameter));
    const LineKind kind = wire < kFinestWide ? LineKind::narrow : LineKind::wide;
    if (wire < kFinestOutline) {
        Path line = centre_line_view(placed.figure.spring);
        for (Point& p : line) p = placed.left_face + placed.scale * p;
        drawing.add(Line{line, LineKind::narrow});
    } else {
        draw_view(drawing, side_view(placed.figure.spring), placed.left_face, placed.scale, kind);
    }
    draw_view(drawing, end_view(placed.figure.spring), placed.end_centre, placed.scale, kind);
}

void draw_axes(Drawing& drawing, const Placed& placed) {
    const Point a = placed.left_face;
    drawing.line({a.x - kAxisOvershoot, a.y}, {a.x + placed.length() + kAxisOvershoot, a.y}, LineKind::axis);
    const Point c = placed.end_centre;
    const double reach = placed.outside_radius() + 3.0;
    drawing.line({c.x - reach, c.y}, {c.x + reach, c.y}, LineKind::axis);
    drawing.line({c.x, c.y - reach}, {c.x, c.y + reach}, LineKind::axis);
}

/// L0 outermost; the working lengths inside it, their far plate as an extreme position.
void draw_lengths(Drawing& drawing, const Placed& placed) {
    const Point face = placed.left_face;
    const double edge = face.y - placed.outside_radius();
    const double top = face.y + placed.outside_radius();
    struct Row {
        double length;
        const std::string& words;
        bool plate;
    };
    const Row rows[] = {{placed.figure.full_travel_length, placed.figure.words.full_travel, true},
                        {placed.figure.seated_length, placed.figure.words.seated, true},
                        {in_mm(placed.figure.spring.free_length), placed.figure.words.free_length, false}};
    // Drawn from the outermost inwards: words that do not fit inside wipe the extension lines they stand on.
    for (int i = 2; i >= 0; --i) {
        const double x = face.x + placed.on_paper(rows[i].length);
        if (rows[i].plate) drawing.line({x, top + 2.0}, {x, edge - 0.5}, LineKind::extreme);
        draw(drawing, HorizontalDimension{{face.x, edge}, {x, edge}, edge - 1.5 - kRowPitch * (i + 1), rows[i].words});
    }
}

void draw_diameter(Drawing& drawing, const Placed& placed) {
    const double radius = placed.figure.inside_diameter ? placed.inside_radius() : placed.outside_radius();
    if (!placed.figure.inside_diameter) {
        const double x = placed.left_face.x;
        draw(drawing, VerticalDimension{{x, placed.left_face.y - radius},
                                        {x, placed.left_face.y + radius},
                                        x - kLeft + 6.0,
                                        placed.figure.words.coil_diameter});
        return;
    }
    const Point c = placed.end_centre;
    draw(drawing, VerticalDimension{{c.x, c.y - radius},
                                    {c.x, c.y + radius},
                                    c.x - placed.outside_radius() - 5.0,
                                    placed.figure.words.coil_diameter});
}

void draw_wire_leader(Drawing& drawing, const Placed& placed) {
    const Point feature = placed.left_face + placed.scale * wire_edge_point(placed.figure.spring);
    const double y = placed.left_face.y + placed.outside_radius() + 3.2;
    draw(drawing, Leader{feature, {feature.x + 0.5 * (y - feature.y) + 1.5, y}, placed.figure.words.wire_diameter});
}

}  // namespace

Scale figure_scale(const SpringFigure& figure, const Box& box) {
    const double outside = in_mm(figure.spring.outside_diameter());
    const double across = (box.width() - kLeft - kBetween - kRight) / (in_mm(figure.spring.free_length) + outside);
    const double upwards = (box.height() - kAbove - kBelow) / outside;
    return largest_scale(std::min(across, upwards));
}

void draw_figure(Drawing& drawing, const SpringFigure& figure, const Box& box, Scale scale) {
    const double outside = scale.factor() * in_mm(figure.spring.outside_diameter());
    const double length = scale.factor() * in_mm(figure.spring.free_length);
    const double spare_x = box.width() - kLeft - length - kBetween - outside - kRight;
    const double spare_y = box.height() - kAbove - outside - kBelow;
    const Point face{box.left + kLeft + 0.4 * spare_x, box.top - kAbove - 0.5 * spare_y - 0.5 * outside};
    const Placed placed{
        figure, scale.factor(), face, {face.x + length + kBetween + 0.2 * spare_x + 0.5 * outside, face.y}};
    draw_views(drawing, placed);
    draw_axes(drawing, placed);
    draw_lengths(drawing, placed);
    draw_diameter(drawing, placed);
    draw_wire_leader(drawing, placed);
}

}  // namespace seatload::sheet
