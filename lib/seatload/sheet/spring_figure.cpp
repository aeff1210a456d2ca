// SPDX-License-Identifier: MIT
#include <seatload/sheet/spring_figure.hpp>

#include <optional>

#include <seatload/sheet/coil_outline.hpp>
#include <seatload/sheet/detail_view.hpp>
#include <seatload/sheet/dimension.hpp>
#include <seatload/sheet/end_deviation.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/outline_drawing.hpp>

namespace seatload::sheet {
namespace {

// Room kept round the views for their dimensions [mm].
constexpr double kLeft = 12.5;           ///< the diameter
constexpr double kFigureAbove = 7.5;     ///< the leader to the wire
constexpr double kFigureRowPitch = 4.9;  ///< between the dimension lines of the three lengths
constexpr double kBelow = 3.0 * kFigureRowPitch + 2.5;
constexpr double kFigureBetween = 9.0;  ///< side view and end view
constexpr double kRight = 4.0;
constexpr double kDiameterRight = 14.0;  ///< with the inside diameter beside the end view
constexpr double kDiameterLine = 7.5;    ///< where its dimension line then stands
constexpr double kParallelism = 2.2;     ///< what e2 takes below the side view
constexpr double kAxisOvershoot = 4.0;
constexpr double kFinestOutline = 0.8;  ///< wire drawn thinner than this is shown as a single line
constexpr double kLeftShare = 0.4;      ///< of the spare width, left of the views
constexpr double kUnderEndView = 4.0;   ///< where the end view's axis ends
constexpr double kDetailBelow = 1.5;    ///< wire drawn thinner than this gets a detail at a larger scale
constexpr double kLeaderRise = 3.2;     ///< of the words for the wire
constexpr double kNearEnd = 15.0;       ///< words of lengths so near to L0 stand right of its extension line
constexpr double kLeaderWordsTop = 7.0;
constexpr double kHeading = 4.5;  ///< of the upper left corner of the box, where the caller may put a heading
constexpr double kDetailLetterRise = 5.5;
constexpr double kDetailMargin = 1.5;      ///< round a detail's circle
constexpr double kDetailTitleReach = 9.0;  ///< of its title on either side of the middle
constexpr double kHighLeader = 4.0;        ///< how much higher words for the wire stand that must clear those of e1
constexpr double kPlateTop = 2.0;          ///< of a plate over the view
constexpr double kNameAside = 0.4;         ///< of a plate, where two stand close
constexpr double kPlateBack = 1.8;         ///< how far its edges are followed

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

bool has_deviation(const SpringFigure& figure) {
    return !figure.words.squareness.empty() || !figure.words.parallelism.empty();
}

/// Di stands at the end view: on its left, or on its right when what the ends may deviate by takes up the left.
bool is_diameter_right(const SpringFigure& figure) { return figure.inside_diameter && has_deviation(figure); }

double between_views(const SpringFigure& figure) {
    return has_deviation(figure) ? kDeviationReach + 1.0 : kFigureBetween;
}
double right_of_views(const SpringFigure& figure) { return is_diameter_right(figure) ? kDiameterRight : kRight; }

/// e2 stands level with the uppermost row, and pushes it down when its words stand outside the arrows.
double below_views(const SpringFigure& figure, double scale) {
    const bool is_row_free =
        text_width(figure.words.full_travel, kLettering) + 2.0 <= scale * figure.full_travel_length;
    return figure.words.parallelism.empty() || is_row_free ? kBelow : kBelow + kParallelism;
}

bool is_simplified(const SpringFigure& figure, Scale scale) {
    return scale.factor() * in_mm(figure.spring.wire_diameter) < kFinestOutline;
}

/// The views and where they stand.
struct Placed {
    const SpringFigure& figure;
    Box box;
    Scale at_scale;
    Point left_face;  ///< on the axis, left end of the side view
    Point end_centre;
    std::optional<Detail> detail;
    Point detail_centre;

    double scale() const { return at_scale.factor(); }
    double on_paper(double real_mm) const { return scale() * real_mm; }
    double outside_radius() const { return 0.5 * on_paper(in_mm(figure.spring.outside_diameter())); }
    double inside_radius() const { return 0.5 * on_paper(in_mm(figure.spring.inside_diameter())); }
    double length() const { return on_paper(in_mm(figure.spring.free_length)); }
    double right_face() const { return left_face.x + length(); }
    double top() const { return left_face.y + outside_radius(); }
    double edge() const { return left_face.y - outside_radius(); }
};

/// Puts the views side by side, so far below the upper edge of the box, and with a share of the spare width on their
/// left.
void place_views(Placed& placed, double spare_above, double left_share = kLeftShare) {
    const Box& box = placed.box;
    const double outside = 2.0 * placed.outside_radius();
    const double between = between_views(placed.figure);
    const double spare_x = box.width() - kLeft - placed.length() - between - outside - right_of_views(placed.figure);
    placed.left_face = {box.left + kLeft + left_share * spare_x, box.top - kFigureAbove - spare_above - 0.5 * outside};
    placed.end_centre = {placed.right_face() + between + 0.2 * spare_x + 0.5 * outside, placed.left_face.y};
}

/// What the views must keep off the upper edge so that neither the words of the diameter, which stand upright, nor the
/// letter of the detail run into a heading.
double heading_room(const Placed& placed) {
    const double words = 0.5 * text_width(placed.figure.words.coil_diameter, kLettering) - placed.outside_radius();
    return kHeading + std::max(kDetailLetterRise, words + 0.5) - kFigureAbove;
}

/// What the leader to the wire takes right of a detail's circle.
double right_of_detail(const SpringFigure& figure) {
    const std::string& words = figure.words.detail_wire;
    return words.empty() ? 0.0 : text_width(words, kLettering) + kDetailLeader + 1.5;
}

/// Room for a detail's circle, title and margins taken off [mm].
struct DetailRoom {
    double radius;
    Box box;  ///< for circle and title
    double spare_above;
    double left_share;
};

/// Under all dimensions, with the views moved up.
DetailRoom room_below(const Placed& placed, double spare_y) {
    const Box& box = placed.box;
    const double above = heading_room(placed);
    return {0.0, {box.left, box.bottom, box.right, box.bottom + spare_y - above}, above, kLeftShare};
}

/// Right of the views.
DetailRoom room_beside(const Placed& placed, double spare_y) {
    const Box& box = placed.box;
    const double left = placed.end_centre.x + placed.outside_radius() + right_of_views(placed.figure);
    return {0.0,
            {left, box.bottom, box.right, box.top},
            std::max(0.5 * spare_y, std::min(heading_room(placed), spare_y)),
            kLeftShare};
}

/// Under the end view, right of the dimensions of length, with the views moved up and to the left.
DetailRoom room_in_corner(const Placed& placed, double spare_y) {
    const Box& box = placed.box;
    const FigureWords& words = placed.figure.words;
    const double above = heading_room(placed);
    double aside = 2.0;
    for (const std::string* text : {&words.free_length, &words.seated, &words.full_travel}) {
        const double width = text_width(*text, kLettering) + 2.0;
        if (width > placed.on_paper(placed.figure.full_travel_length)) aside = std::max(aside, width + kNearEnd);
    }
    // The words of Di beside the end view may reach further down than it.
    double under = kUnderEndView;
    if (is_diameter_right(placed.figure))
        under = std::max(under, 0.5 * text_width(words.coil_diameter, kLettering) - placed.outside_radius() + 2.5);
    const double top = box.bottom + spare_y - above + below_views(placed.figure, placed.scale()) - under;
    return {0.0, {box.left + kLeft + placed.length() + aside, box.bottom, box.right, top}, above, 0.0};
}

/// Finds the room in which the detail gets largest, and moves the views to leave it free.
void place_detail(Placed& placed, double spare_y) {
    DetailRoom best{};
    for (const auto room_in : {&room_below, &room_beside, &room_in_corner}) {
        DetailRoom room = room_in(placed, spare_y);
        room.box.right -= right_of_detail(placed.figure);
        room.radius = 0.5 * std::min(room.box.width(), room.box.height() - kDetailTitle) - kDetailMargin;
        if (room.radius > best.radius) best = room;
    }
    placed.detail = end_detail(placed.figure.spring, placed.at_scale, best.radius);
    if (!placed.detail) return;
    place_views(placed, best.spare_above, best.left_share);
    const double radius = placed.detail->scale.factor() * placed.detail->radius;
    const double reach = radius + kDetailMargin;
    // Below, it stands under the end that it shows; elsewhere in the middle of its room.
    const bool is_under_end = best.box.left < placed.left_face.x;
    const double x = is_under_end ? placed.left_face.x + std::max(radius, 0.25 * placed.length()) : best.box.centre().x;
    const double least = best.box.left + std::max(reach, kDetailTitleReach);
    placed.detail_centre = {std::clamp(x, least, std::max(least, best.box.right - reach)),
                            best.box.centre().y - 0.5 * kDetailTitle};
}

/// Where the words for the wire stand: right of it, or left where they would run into e1.
struct WireLeader {
    Point feature;
    Point knee;
    bool is_left;
    bool is_high;  ///< over e1, for want of room on the left
};

/// Nothing when the wire has no such coil.
std::optional<WireLeader> wire_leader_at(const Placed& placed, int coils_right) {
    const auto edge = wire_edge_point(placed.figure.spring, coils_right);
    if (!edge) return std::nullopt;
    const Point feature = placed.left_face + placed.scale() * *edge;
    const double y = placed.top() + kLeaderRise;
    const double aside = 0.5 * (y - feature.y) + 1.5;
    const double reach = aside + text_width(placed.figure.words.wire_diameter, kLettering) + 2.0;
    const bool meets_e1 = has_deviation(placed.figure) && feature.x + reach > placed.right_face();
    const bool is_left = meets_e1 && feature.x - reach > placed.box.left;
    const bool is_high = meets_e1 && !is_left;
    return WireLeader{
        feature, {feature.x + (is_left ? -aside : aside), y + (is_high ? kHighLeader : 0.0)}, is_left, is_high};
}

/// The names of the plates above them; those that stand close are named on their far sides.
std::vector<Text> names_above_plates(const Placed& placed) {
    const SpringFigure& figure = placed.figure;
    const double y = placed.top() + kPlateTop + 1.0;
    const auto x = [&](double length) { return placed.left_face.x + placed.on_paper(length); };
    const double apart = placed.on_paper(figure.seated_length - figure.full_travel_length);
    const bool is_crowded = apart < text_width(figure.words.full_travel_plate, kLettering) + 1.0;
    const double aside = is_crowded ? kNameAside : 0.0;
    std::vector<Text> out;
    const auto add = [&](double length, double way, const std::string& words, Align crowded) {
        if (!words.empty())
            out.push_back({.at = {x(length) + way * aside, y},
                           .words = words,
                           .align = is_crowded ? crowded : Align::centre,
                           .masked = true});
    };
    add(figure.full_travel_length, -1.0, figure.words.full_travel_plate, Align::right);
    add(figure.seated_length, 1.0, figure.words.seated_plate, Align::left);
    return out;
}

/// Whether a leader and its words keep off the names of the plates.
bool is_clear_of_plates(const Placed& placed, const WireLeader& leader) {
    const double width = text_width(placed.figure.words.wire_diameter, kLettering) + 1.0;
    const Point end{leader.knee.x + (leader.is_left ? -width : width), leader.knee.y + kLettering};
    const Box shelf = include(include(empty_box(), leader.knee), end);
    const Box line = include(include(empty_box(), {leader.feature.x, placed.top()}), leader.knee);
    const std::vector<Text> names = names_above_plates(placed);
    return std::none_of(names.begin(), names.end(), [&](const Text& name) {
        return text_box(name).overlaps(shelf) || text_box(name).overlaps(line);
    });
}

/// From the coil near the middle, or from one further right where that one's words would stand over a plate.
WireLeader wire_leader(const Placed& placed) {
    const WireLeader usual = wire_leader_at(placed, 0).value();
    const double width = text_width(placed.figure.words.wire_diameter, kLettering) + 1.0;
    std::optional<WireLeader> leader = usual;
    for (int coils = 1; leader; leader = wire_leader_at(placed, coils++)) {
        const bool is_right = !leader->is_left && !leader->is_high && leader->knee.x + width < placed.box.right;
        if ((is_right || leader->feature.x == usual.feature.x) && is_clear_of_plates(placed, *leader)) return *leader;
    }
    return usual;
}

Placed place(const SpringFigure& figure, const Box& box, Scale scale) {
    Placed placed{figure, box, scale, {}, {}, {}, {}};
    const double spare_y =
        box.height() - kFigureAbove - 2.0 * placed.outside_radius() - below_views(figure, scale.factor());
    place_views(placed, 0.5 * spare_y);
    if (wire_leader(placed).is_high) place_views(placed, std::max(0.5 * spare_y, std::min(kHighLeader, spare_y)));
    // Words on the left keep clear of the heading: under it, or right of it where there is no height for that.
    constexpr double kUnderHeading = kHeading + kLeaderWordsTop - kFigureAbove;
    if (wire_leader(placed).is_left && 0.5 * spare_y < kUnderHeading)
        place_views(placed, std::min(kUnderHeading, spare_y), spare_y < kUnderHeading ? 0.8 : kLeftShare);
    if (placed.on_paper(in_mm(figure.spring.wire_diameter)) < kDetailBelow) place_detail(placed, spare_y);
    return placed;
}

void draw_views(Drawing& drawing, const Placed& placed) {
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

void draw_axes(Drawing& drawing, const Placed& placed) {
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
std::vector<Text> other_places(const Placed& placed, double plate_x, const std::string& words) {
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

void draw_plate_name(Drawing& drawing, const Placed& placed, const Text& above, double plate_x) {
    if (is_clear_of_words(drawing, above)) return drawing.add(above);
    const std::vector<Text> others = other_places(placed, plate_x, above.words);
    for (const Text& other : others) {
        const bool is_under = other.at.y < placed.edge();
        if (is_clear_of_words(drawing, other) && (!is_under || is_clear_of_lines(drawing, other)))
            return drawing.add(other);
    }
    drawing.add(others.back());
}

void draw_plate_names(Drawing& drawing, const Placed& placed) {
    const SpringFigure& figure = placed.figure;
    for (const Text& above : names_above_plates(placed)) {
        const bool is_seated = above.words == figure.words.seated_plate;
        const double length = is_seated ? figure.seated_length : figure.full_travel_length;
        draw_plate_name(drawing, placed, above, placed.left_face.x + placed.on_paper(length));
    }
}

/// L0 outermost; the working lengths inside it, their far plate as an extreme position.
void draw_lengths(Drawing& drawing, const Placed& placed) {
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
    const double first = edge - 1.5 - kFigureRowPitch - (below_views(placed.figure, placed.scale()) - kBelow);
    // Drawn from the outermost inwards: words that do not fit inside wipe the extension lines they stand on.
    for (int i = 2; i >= 0; --i) {
        const double x = face.x + placed.on_paper(rows[i].length);
        if (rows[i].plate) draw_plate(drawing, x, top + kPlateTop, edge - 0.5, back);
        const bool is_near_end = placed.right_face() - x < kNearEnd;
        draw(drawing, HorizontalDimension{{face.x, edge},
                                          {x, edge},
                                          first - kFigureRowPitch * i,
                                          rows[i].words,
                                          i == 2,
                                          is_near_end ? placed.right_face() + 1.5 : 0.0});
    }
}

void draw_diameter(Drawing& drawing, const Placed& placed) {
    const double radius = placed.figure.inside_diameter ? placed.inside_radius() : placed.outside_radius();
    const double x = placed.figure.inside_diameter ? placed.end_centre.x : placed.left_face.x;
    double line_x = x - kLeft + 6.0;
    if (placed.figure.inside_diameter) line_x = x - placed.outside_radius() - 5.0;
    if (is_diameter_right(placed.figure)) line_x = x + placed.outside_radius() + kDiameterLine;
    const double y = placed.left_face.y;
    VerticalDimension dimension{{x, y - radius}, {x, y + radius}, line_x, placed.figure.words.coil_diameter};
    // Words on the left of the wire may reach over those of the diameter.
    dimension.words_least_y = placed.box.bottom + 0.6;
    if (!is_diameter_right(placed.figure)) dimension.words_most_y = placed.box.top - kHeading;
    if (const WireLeader leader = wire_leader(placed); leader.is_left)
        dimension.words_most_y = std::min(dimension.words_most_y, leader.knee.y - 1.0);
    draw(drawing, dimension);
}

void draw_wire_leader(Drawing& drawing, const Placed& placed) {
    const WireLeader leader = wire_leader(placed);
    draw(drawing, Leader{leader.feature, leader.knee, placed.figure.words.wire_diameter});
}

void draw_deviation(Drawing& drawing, const Placed& placed) {
    const double x = placed.right_face();
    draw(drawing, EndDeviation{{placed.left_face.x, placed.top()},
                               {x, placed.top()},
                               {x, placed.edge()},
                               placed.figure.words.squareness,
                               placed.figure.words.parallelism});
}

void draw_both_of_detail(Drawing& drawing, const Placed& placed) {
    const FigureWords& words = placed.figure.words;
    mark_detail(drawing, *placed.detail, placed.left_face, placed.at_scale, words.detail, !wire_leader(placed).is_left);
    draw_detail(drawing, placed.figure.spring, *placed.detail, placed.detail_centre, {words.detail, words.detail_wire});
}

}  // namespace

Scale figure_scale(const SpringFigure& figure, const Box& box) {
    const double outside = in_mm(figure.spring.outside_diameter());
    const double free = box.width() - kLeft - between_views(figure) - right_of_views(figure);
    const double across = free / (in_mm(figure.spring.free_length) + outside);
    const auto largest = [&](double above, double below) {
        return largest_scale(std::min(across, (box.height() - above - below) / outside));
    };
    Scale scale = largest(kFigureAbove, kBelow);
    const double below = below_views(figure, scale.factor());
    if (below > kBelow) scale = largest(kFigureAbove, below);
    return wire_leader(place(figure, box, scale)).is_high ? largest(kFigureAbove + kHighLeader, below) : scale;
}

void draw_figure(Drawing& drawing, const SpringFigure& figure, const Box& box, Scale scale) {
    const Placed placed = place(figure, box, scale);
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
