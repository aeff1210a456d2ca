// SPDX-License-Identifier: MIT
#include <seatload/sheet/end_deviation.hpp>

#include <seatload/sheet/dimension.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr double kLean = 2.0;     ///< of the side, shown
constexpr double kTilt = 1.6;     ///< of the end plane, shown
constexpr double kEndGap = 1.0;   ///< before an extension line
constexpr double kOut = 5.5;      ///< the dimension line of e1 past the far end
constexpr double kDown = 2.6;     ///< the dimension line of e2 under the view
constexpr double kEndTail = 5.0;  ///< of an arrow set outside

/// e1 between the true side, carried on past the end, and the side leaning out from the base.
void draw_squareness(Drawing& drawing, const EndDeviation& d) {
    const Point corner = d.far_corner;
    const double x = corner.x + kOut;
    const double leaning = corner.y + kLean;
    drawing.line(d.base_corner, {corner.x, leaning}, LineKind::extreme);
    for (const double y : {corner.y, leaning}) drawing.line({corner.x + kEndGap, y}, {x + kExtensionOvershoot, y});
    arrow_head(drawing, {x, corner.y}, 90.0);
    arrow_head(drawing, {x, leaning}, 270.0);
    drawing.line({x, corner.y - kEndTail}, {x, leaning + kEndTail - 1.0});
    drawing.add(Text{{x + 1.0, leaning + 1.1}, d.squareness});
}

/// e2 between the true end and the end tilting about its upper edge.
void draw_parallelism(Drawing& drawing, const EndDeviation& d) {
    const Point foot = d.far_foot;
    const double y = foot.y - kDown;
    const double tilted = foot.x + kTilt;
    drawing.line(d.far_corner, {tilted, foot.y}, LineKind::extreme);
    for (const double x : {foot.x, tilted}) drawing.line({x, foot.y - 0.5}, {x, y - kExtensionOvershoot});
    arrow_head(drawing, {foot.x, y}, 0.0);
    arrow_head(drawing, {tilted, y}, 180.0);
    const double words = foot.x + kOut + kExtensionOvershoot;  // clear of the arrow of e1
    drawing.line({foot.x - kEndTail + 1.0, y}, {words + 0.5 + text_width(d.parallelism, kLettering), y});
    drawing.add(Text{{words, y + 0.9}, d.parallelism});
}

}  // namespace

void draw(Drawing& drawing, const EndDeviation& deviation) {
    if (!deviation.squareness.empty()) draw_squareness(drawing, deviation);
    if (!deviation.parallelism.empty()) draw_parallelism(drawing, deviation);
}

}  // namespace seatload::sheet
