// SPDX-License-Identifier: MIT
#include <seatload/sheet/spring_figure.hpp>

#include <algorithm>
#include <string>
#include <variant>
#include <vector>

#include <seatload/sheet/coil_outline.hpp>
#include <seatload/sheet/detail_view.hpp>
#include <seatload/sheet/dimension.hpp>
#include <seatload/sheet/end_deviation.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/outline_drawing.hpp>
#include <seatload/sheet/placed_views.hpp>

namespace seatload::sheet {
namespace {

constexpr double kDiameterLine = 7.5;  ///< of Di, so far right of the end view [mm]
constexpr double kAxisOvershoot = 4.0;
constexpr double kFinestOutline = 0.8;  ///< wire drawn thinner than this is shown as a single line
constexpr double kPlateBack = 1.8;      ///< how far its edges are followed

/// Whether no words stand yet where these would.
bool is_clear_of_words(const Drawing& drawing, const Text& text) {
    return std::none_of(drawing.items().begin(), drawing.items().end(), [&](const Item& item) {
        const auto* other = std::get_if<Text>(&item);
        return other != nullptr && text_box(*other).overlaps(text_box(text));
    });
}

/// Whether no line, each piece taken for the box round it, runs where the words would stand.
bool is_clear_of_lines(const Drawing& drawing, const Text& text) {
    return std::none_of(drawing.items().begin(), drawing.items().end(), [&](const Item& item) {
        const auto* line = std::get_if<Line>(&item);
        for (std::size_t i = 1; line != nullptr && i < line->points.size(); ++i) {
            const Box box = include(include(empty_box(), line->points[i - 1]), line->points[i]);
            if (box.overlaps(text_box(text))) return true;
        }
        return false;
    });
}

bool is_simplified(const SpringFigure& figure, Scale scale) {
    return scale.factor() * in_mm(figure.spring.wire_diameter) < kFinestOutline;
}

void draw_views(Drawing& drawing, const PlacedViews& placed) {
    const spring::Spring& spring = placed.figure.spring;
    const LineKind kind = outline_kind(placed.on_paper(in_mm(spring.wire_diameter)));
    if (is_simplified(placed.figure, placed.at_scale)) {
        Path line = centre_line_view(spring);
        for (Point& p : line) p = placed.left_face + placed.scale() * p;
        drawing.add(Line{line, LineKind::narrow});
    } else {
        draw_view(drawing, side_view(spring), placed.left_face, placed.scale(), kind);
    }
    draw_view(drawing, end_view(spring), placed.end_centre, placed.scale(), kind);
}

void draw_axes(Drawing& drawing, const PlacedViews& placed) {
    const Point a = placed.left_face;
    drawing.line({a.x - kAxisOvershoot, a.y}, {a.x + placed.length() + kAxisOvershoot, a.y}, LineKind::axis);
    const Point c = placed.end_centre;
    const double reach = placed.outside_radius() + 3.0;
    drawing.line({c.x - reach, c.y}, {c.x + reach, c.y}, LineKind::axis);
    drawing.line({c.x, c.y - reach}, {c.x, c.y + reach}, LineKind::axis);
}

/// The far plate in an extreme position: its face, and the edges that go back from it.
void draw_plate(Drawing& drawing, double x, double top, double foot, double back) {
    drawing.add(Line{{{x + back, top}, {x, top}, {x, foot}, {x + back, foot}}, LineKind::extreme});
}

/// Where the name of a plate may stand when other words stand above it: on either side of the plate under the view,
/// then over the coils, which it wipes.
std::vector<Text> other_places(const PlacedViews& placed, double plate_x, const std::string& words) {
    const double low = placed.edge() - 4.2;
    const double within = placed.left_face.y + 0.5 * placed.outside_radius() - 0.5 * kLettering;
    const auto place = [&](double y, bool is_right) {
        return Text{.at = {plate_x + (is_right ? 0.8 : -0.8), y},
                    .words = words,
                    .align = is_right ? Align::left : Align::right,
                    .masked = true};
    };
    return {place(low, true), place(low, false), place(within, true), place(within, false)};
}

void draw_plate_name(Drawing& drawing, const PlacedViews& placed, const Text& above, double plate_x) {
    if (is_clear_of_words(drawing, above)) return drawing.add(above);
    const std::vector<Text> others = other_places(placed, plate_x, above.words);
    for (const Text& other : others) {
        const bool is_under = other.at.y < placed.edge();
        if (is_clear_of_words(drawing, other) && (!is_under || is_clear_of_lines(drawing, other)))
            return drawing.add(other);
    }
    drawing.add(others.back());
}

void draw_plate_names(Drawing& drawing, const PlacedViews& placed) {
    const SpringFigure& figure = placed.figure;
    for (const Text& above : names_above_plates(placed)) {
        const bool is_seated = above.words == figure.words.seated_plate;
        const double length = is_seated ? figure.seated_length : figure.full_travel_length;
        draw_plate_name(drawing, placed, above, placed.left_face.x + placed.on_paper(length));
    }
}

/// L0 outermost; the working lengths inside it, their far plate as an extreme position.
void draw_lengths(Drawing& drawing, const PlacedViews& placed) {
    const Point face = placed.left_face;
    const double edge = placed.edge();
    const double top = placed.top();
    struct Row {
        double length;
        const std::string& words;
        bool plate;
    };
    const Row rows[] = {{placed.figure.full_travel_length, placed.figure.words.full_travel, true},
                        {placed.figure.seated_length, placed.figure.words.seated, true},
                        {in_mm(placed.figure.spring.free_length), placed.figure.words.free_length, false}};
    const double apart = placed.on_paper(placed.figure.seated_length - placed.figure.full_travel_length);
    const double back = std::min(kPlateBack, 0.5 * apart);
    const double first =
        edge - 1.5 - PlacedViews::kFigureRowPitch - (below_views(placed.figure, placed.scale()) - PlacedViews::kBelow);
    // Drawn from the outermost inwards: words that do not fit inside wipe the extension lines they stand on.
    for (int i = 2; i >= 0; --i) {
        const double x = face.x + placed.on_paper(rows[i].length);
        if (rows[i].plate) draw_plate(drawing, x, top + PlacedViews::kPlateTop, edge - 0.5, back);
        const bool is_near_end = placed.right_face() - x < PlacedViews::kNearEnd;
        draw(drawing, HorizontalDimension{{face.x, edge},
                                          {x, edge},
                                          first - PlacedViews::kFigureRowPitch * i,
                                          rows[i].words,
                                          i == 2,
                                          is_near_end ? placed.right_face() + 1.5 : 0.0});
    }
}

void draw_diameter(Drawing& drawing, const PlacedViews& placed) {
    const double radius = placed.figure.inside_diameter ? placed.inside_radius() : placed.outside_radius();
    const double x = placed.figure.inside_diameter ? placed.end_centre.x : placed.left_face.x;
    double line_x = x - PlacedViews::kLeft + 6.0;
    if (placed.figure.inside_diameter) line_x = x - placed.outside_radius() - 5.0;
    if (is_diameter_right(placed.figure)) line_x = x + placed.outside_radius() + kDiameterLine;
    const double y = placed.left_face.y;
    VerticalDimension dimension{{x, y - radius}, {x, y + radius}, line_x, placed.figure.words.coil_diameter};
    // Words on the left of the wire may reach over those of the diameter.
    dimension.words_least_y = placed.box.bottom + 0.6;
    if (!is_diameter_right(placed.figure)) dimension.words_most_y = placed.box.top - PlacedViews::kHeading;
    if (const WireLeader leader = wire_leader(placed); leader.is_left)
        dimension.words_most_y = std::min(dimension.words_most_y, leader.knee.y - 1.0);
    draw(drawing, dimension);
}

void draw_wire_leader(Drawing& drawing, const PlacedViews& placed) {
    const WireLeader leader = wire_leader(placed);
    draw(drawing, Leader{leader.feature, leader.knee, placed.figure.words.wire_diameter});
}

void draw_deviation(Drawing& drawing, const PlacedViews& placed) {
    const double x = placed.right_face();
    draw(drawing, EndDeviation{{placed.left_face.x, placed.top()},
                               {x, placed.top()},
                               {x, placed.edge()},
                               placed.figure.words.squareness,
                               placed.figure.words.parallelism});
}

void draw_both_of_detail(Drawing& drawing, const PlacedViews& placed) {
    const FigureWords& words = placed.figure.words;
    mark_detail(drawing, *placed.detail, placed.left_face, placed.at_scale, words.detail, !wire_leader(placed).is_left);
    draw_detail(drawing, placed.figure.spring, *placed.detail, placed.detail_centre, {words.detail, words.detail_wire});
}

}  // namespace

Scale figure_scale(const SpringFigure& figure, const Box& box) { return views_scale(figure, box); }

void draw_figure(Drawing& drawing, const SpringFigure& figure, const Box& box, Scale scale) {
    const PlacedViews placed = placed_views(figure, box, scale);
    draw_views(drawing, placed);
    draw_axes(drawing, placed);
    draw_deviation(drawing, placed);
    draw_lengths(drawing, placed);
    draw_diameter(drawing, placed);
    draw_wire_leader(drawing, placed);
    if (placed.detail) draw_both_of_detail(drawing, placed);
    draw_plate_names(drawing, placed);
}

}  // namespace seatload::sheet
