// SPDX-License-Identifier: MIT
#include <seatload/sheet/dimension.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr double kHeadLength = 2.5;
constexpr double kHeadHalfWidth = 0.4;
constexpr double kTail = 5.0;          ///< of an arrow set outside
constexpr double kDimensionGap = 1.0;  ///< between a feature and its extension line (8 line widths would be 2 mm)
constexpr double kLift = 0.9;          ///< of words above their line

double sign_of(double value) { return value < 0.0 ? -1.0 : 1.0; }

}  // namespace

void arrow_head(Drawing& drawing, Point at, double degrees) {
    Path head{{0.0, 0.0}, {-kHeadLength, kHeadHalfWidth}, {-kHeadLength, -kHeadHalfWidth}};
    for (Point& p : head) p = at + turned(p, degrees);
    drawing.add(Area{head, 0.0});
}

void draw(Drawing& drawing, const HorizontalDimension& dimension) {
    const double y = dimension.line_y;
    const auto extend = [&](Point p) {
        const double way = sign_of(y - p.y);
        drawing.line({p.x, p.y + way * kDimensionGap}, {p.x, y + way * kExtensionOvershoot});
    };
    if (dimension.extended_from) extend(dimension.from);
    extend(dimension.to);
    const double left = std::min(dimension.from.x, dimension.to.x);
    const double right = std::max(dimension.from.x, dimension.to.x);
    const double width = text_width(dimension.words, kLettering);
    const bool words_inside = width + 2.0 <= right - left;
    const bool arrows_inside = right - left >= 2.5 * kHeadLength;
    drawing.line({left, y}, {right, y});
    arrow_head(drawing, {left, y}, arrows_inside ? 180.0 : 0.0);
    arrow_head(drawing, {right, y}, arrows_inside ? 0.0 : 180.0);
    if (!arrows_inside) drawing.line({left - kTail, y}, {left, y});
    if (words_inside) {
        drawing.add(Text{{0.5 * (left + right), y + kLift}, dimension.words, kLettering, Align::centre});
        return;
    }
    const double start = std::max(dimension.words_from, arrows_inside ? right + 1.0 : right + kHeadLength + 1.0);
    drawing.line({right, y}, {start + width + 0.5, y});
    drawing.add(Text{.at = {start, y + kLift}, .words = dimension.words, .masked = true});
}

void draw(Drawing& drawing, const VerticalDimension& dimension) {
    const double x = dimension.line_x;
    for (const Point p : {dimension.from, dimension.to}) {
        const double way = sign_of(x - p.x);
        drawing.line({p.x + way * kDimensionGap, p.y}, {x + way * kExtensionOvershoot, p.y});
    }
    const double low = std::min(dimension.from.y, dimension.to.y);
    const double high = std::max(dimension.from.y, dimension.to.y);
    const double width = text_width(dimension.words, kLettering);
    const bool words_inside = width + 2.0 <= high - low;
    const bool arrows_inside = high - low >= 2.5 * kHeadLength;
    drawing.line({x, low}, {x, high});
    arrow_head(drawing, {x, low}, arrows_inside ? 270.0 : 90.0);
    arrow_head(drawing, {x, high}, arrows_inside ? 90.0 : 270.0);
    if (!arrows_inside) drawing.line({x, low - kTail}, {x, low});
    if (words_inside) {
        drawing.add(Text{
            .at = {x - kLift, 0.5 * (low + high)}, .words = dimension.words, .align = Align::centre, .turn = 90.0});
        return;
    }
    if (!arrows_inside) drawing.line({x, high}, {x, high + kTail});
    const bool extended_from_right = dimension.from.x > x;
    const double clear = extended_from_right ? -kExtensionOvershoot - kLift : kExtensionOvershoot + kLift + kLettering;
    constexpr double kNarrowestWords = 0.6;
    const double room = dimension.words_most_y - dimension.words_least_y;
    const double squeeze = std::clamp(room / width, kNarrowestWords, 1.0);
    double y = std::max(0.5 * (low + high), dimension.words_least_y + 0.5 * squeeze * width);
    y = std::min(y, dimension.words_most_y - 0.5 * squeeze * width);
    Text text{.at = {x + clear, y}, .words = dimension.words, .align = Align::centre, .squeeze = squeeze};
    text.turn = 90.0;
    drawing.add(text);
}

void draw(Drawing& drawing, const Leader& leader) {
    const double width = text_width(leader.words, kLettering);
    const bool to_right = leader.knee.x >= leader.feature.x;
    const double end = leader.knee.x + (to_right ? width + 1.0 : -width - 1.0);
    drawing.add(Line{{leader.feature, leader.knee, {end, leader.knee.y}}, LineKind::narrow});
    const Point along = leader.feature - leader.knee;
    arrow_head(drawing, leader.feature, std::atan2(along.y, along.x) * 180.0 / std::numbers::pi);
    // Over the end of a dimension line that may reach up to it.
    drawing.add(
        Text{.at = {std::min(leader.knee.x, end) + 0.5, leader.knee.y + kLift}, .words = leader.words, .masked = true});
}

}  // namespace seatload::sheet
