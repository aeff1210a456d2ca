// SPDX-License-Identifier: MIT
#include <seatload/sheet/placed_views.hpp>

#include <algorithm>
#include <string>

#include <seatload/sheet/coil_outline.hpp>
#include <seatload/sheet/end_deviation.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

// Room kept round the views for their dimensions [mm].
constexpr double kFigureAbove = 7.5;    ///< the leader to the wire
constexpr double kFigureBetween = 9.0;  ///< side view and end view
constexpr double kRight = 4.0;
constexpr double kDiameterRight = 14.0;  ///< with the inside diameter beside the end view
constexpr double kParallelism = 2.2;     ///< what e2 takes below the side view
constexpr double kLeftShare = 0.4;       ///< of the spare width, left of the views
constexpr double kUnderEndView = 4.0;    ///< where the end view's axis ends
constexpr double kDetailBelow = 1.5;     ///< wire drawn thinner than this gets a detail at a larger scale
constexpr double kLeaderRise = 3.2;      ///< of the words for the wire
constexpr double kLeaderWordsTop = 7.0;
constexpr double kDetailLetterRise = 5.5;
constexpr double kDetailMargin = 1.5;      ///< round a detail's circle
constexpr double kDetailTitleReach = 9.0;  ///< of its title on either side of the middle
constexpr double kHighLeader = 4.0;        ///< how much higher words for the wire stand that must clear those of e1
constexpr double kNameAside = 0.4;         ///< of a plate, where two stand close

bool has_deviation(const SpringFigure& figure) {
    return !figure.words.squareness.empty() || !figure.words.parallelism.empty();
}

double between_views(const SpringFigure& figure) {
    return has_deviation(figure) ? kDeviationReach + 1.0 : kFigureBetween;
}

double right_of_views(const SpringFigure& figure) { return is_diameter_right(figure) ? kDiameterRight : kRight; }

/// Puts the views side by side, so far below the upper edge of the box, and with a share of the spare width on their
/// left.
void place_views(PlacedViews& placed, double spare_above, double left_share = kLeftShare) {
    const Box& box = placed.box;
    const double outside = 2.0 * placed.outside_radius();
    const double between = between_views(placed.figure);
    const double spare_x =
        box.width() - PlacedViews::kLeft - placed.length() - between - outside - right_of_views(placed.figure);
    placed.left_face = {box.left + PlacedViews::kLeft + left_share * spare_x,
                        box.top - kFigureAbove - spare_above - 0.5 * outside};
    placed.end_centre = {placed.right_face() + between + 0.2 * spare_x + 0.5 * outside, placed.left_face.y};
}

/// What the views must keep off the upper edge so that neither the words of the diameter, which stand upright, nor the
/// letter of the detail run into a heading.
double heading_room(const PlacedViews& placed) {
    const double words = 0.5 * text_width(placed.figure.words.coil_diameter, kLettering) - placed.outside_radius();
    return PlacedViews::kHeading + std::max(kDetailLetterRise, words + 0.5) - kFigureAbove;
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
DetailRoom room_below(const PlacedViews& placed, double spare_y) {
    const Box& box = placed.box;
    const double above = heading_room(placed);
    return {0.0, {box.left, box.bottom, box.right, box.bottom + spare_y - above}, above, kLeftShare};
}

/// Right of the views.
DetailRoom room_beside(const PlacedViews& placed, double spare_y) {
    const Box& box = placed.box;
    const double left = placed.end_centre.x + placed.outside_radius() + right_of_views(placed.figure);
    return {0.0,
            {left, box.bottom, box.right, box.top},
            std::max(0.5 * spare_y, std::min(heading_room(placed), spare_y)),
            kLeftShare};
}

/// Under the end view, right of the dimensions of length, with the views moved up and to the left.
DetailRoom room_in_corner(const PlacedViews& placed, double spare_y) {
    const Box& box = placed.box;
    const FigureWords& words = placed.figure.words;
    const double above = heading_room(placed);
    double aside = 2.0;
    for (const std::string* text : {&words.free_length, &words.seated, &words.full_travel}) {
        const double width = text_width(*text, kLettering) + 2.0;
        if (width > placed.on_paper(placed.figure.full_travel_length))
            aside = std::max(aside, width + PlacedViews::kNearEnd);
    }
    // The words of Di beside the end view may reach further down than it.
    double under = kUnderEndView;
    if (is_diameter_right(placed.figure))
        under = std::max(under, 0.5 * text_width(words.coil_diameter, kLettering) - placed.outside_radius() + 2.5);
    const double top = box.bottom + spare_y - above + below_views(placed.figure, placed.scale()) - under;
    return {0.0, {box.left + PlacedViews::kLeft + placed.length() + aside, box.bottom, box.right, top}, above, 0.0};
}

/// Finds the room in which the detail gets largest, and moves the views to leave it free.
void place_detail(PlacedViews& placed, double spare_y) {
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

/// Nothing when the wire has no such coil.
std::optional<WireLeader> wire_leader_at(const PlacedViews& placed, int coils_right) {
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

/// Whether a leader and its words keep off the names of the plates.
bool is_clear_of_plates(const PlacedViews& placed, const WireLeader& leader) {
    const double width = text_width(placed.figure.words.wire_diameter, kLettering) + 1.0;
    const Point end{leader.knee.x + (leader.is_left ? -width : width), leader.knee.y + kLettering};
    const Box shelf = include(include(empty_box(), leader.knee), end);
    const Box line = include(include(empty_box(), {leader.feature.x, placed.top()}), leader.knee);
    const std::vector<Text> names = names_above_plates(placed);
    return std::none_of(names.begin(), names.end(), [&](const Text& name) {
        return text_box(name).overlaps(shelf) || text_box(name).overlaps(line);
    });
}

}  // namespace

bool is_diameter_right(const SpringFigure& figure) { return figure.inside_diameter && has_deviation(figure); }

double below_views(const SpringFigure& figure, double scale) {
    const bool is_row_free =
        text_width(figure.words.full_travel, kLettering) + 2.0 <= scale * figure.full_travel_length;
    return figure.words.parallelism.empty() || is_row_free ? PlacedViews::kBelow : PlacedViews::kBelow + kParallelism;
}

std::vector<Text> names_above_plates(const PlacedViews& placed) {
    const SpringFigure& figure = placed.figure;
    const double y = placed.top() + PlacedViews::kPlateTop + 1.0;
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

WireLeader wire_leader(const PlacedViews& placed) {
    const WireLeader usual = wire_leader_at(placed, 0).value();
    const double width = text_width(placed.figure.words.wire_diameter, kLettering) + 1.0;
    std::optional<WireLeader> leader = usual;
    for (int coils = 1; leader; leader = wire_leader_at(placed, coils++)) {
        const bool is_right = !leader->is_left && !leader->is_high && leader->knee.x + width < placed.box.right;
        if ((is_right || leader->feature.x == usual.feature.x) && is_clear_of_plates(placed, *leader)) return *leader;
    }
    return usual;
}

PlacedViews placed_views(const SpringFigure& figure, const Box& box, Scale scale) {
    PlacedViews placed{figure, box, scale, {}, {}, {}, {}};
    const double spare_y =
        box.height() - kFigureAbove - 2.0 * placed.outside_radius() - below_views(figure, scale.factor());
    place_views(placed, 0.5 * spare_y);
    if (wire_leader(placed).is_high) place_views(placed, std::max(0.5 * spare_y, std::min(kHighLeader, spare_y)));
    // Words on the left keep clear of the heading: under it, or right of it where there is no height for that.
    constexpr double kUnderHeading = PlacedViews::kHeading + kLeaderWordsTop - kFigureAbove;
    if (wire_leader(placed).is_left && 0.5 * spare_y < kUnderHeading)
        place_views(placed, std::min(kUnderHeading, spare_y), spare_y < kUnderHeading ? 0.8 : kLeftShare);
    if (placed.on_paper(in_mm(figure.spring.wire_diameter)) < kDetailBelow) place_detail(placed, spare_y);
    return placed;
}

Scale views_scale(const SpringFigure& figure, const Box& box) {
    const double outside = in_mm(figure.spring.outside_diameter());
    const double free = box.width() - PlacedViews::kLeft - between_views(figure) - right_of_views(figure);
    const double across = free / (in_mm(figure.spring.free_length) + outside);
    const auto largest = [&](double above, double below) {
        return largest_scale(std::min(across, (box.height() - above - below) / outside));
    };
    Scale scale = largest(kFigureAbove, PlacedViews::kBelow);
    const double below = below_views(figure, scale.factor());
    if (below > PlacedViews::kBelow) scale = largest(kFigureAbove, below);
    return wire_leader(placed_views(figure, box, scale)).is_high ? largest(kFigureAbove + kHighLeader, below) : scale;
}

}  // namespace seatload::sheet
