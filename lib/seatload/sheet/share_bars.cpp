// SPDX-License-Identifier: MIT
#include <seatload/sheet/share_bars.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr double kTitle = 4.6;
constexpr double kSharePitch = 4.1;
constexpr double kShareFirstLine = 3.2;  ///< base line under the upper edge
constexpr double kNamesShare = 0.6;      ///< of the width, at most
constexpr double kNumberRoom = 9.0;      ///< right of a full bar
constexpr double kShareBarGrey = 0.6;
constexpr double kShareNarrowest = 0.6;  ///< of the natural width of letters

double names_width(const ShareBars& bars, double width) {
    double widest = 0.0;
    for (const ShareBar& bar : bars.bars) widest = std::max(widest, text_width(bar.words, kLettering));
    return std::min(widest, kNamesShare * width);
}

std::string percent(double share) { return fixed(100.0 * share, share < 0.0095 ? 1 : 0) + " %"; }

}  // namespace

double height(const ShareBars& bars) { return kTitle + kSharePitch * static_cast<double>(bars.bars.size()); }

void draw(Drawing& drawing, const Box& box, const ShareBars& bars) {
    drawing.add(fitted({{box.left, box.top - kShareFirstLine}, bars.title, kLettering, Align::left, Face::bold},
                       box.width(), kShareNarrowest));
    const double names = names_width(bars, box.width());
    const double left = box.left + names + 1.5;
    const double full = box.right - kNumberRoom - left;
    double y = box.top - kTitle - kShareFirstLine;
    for (const ShareBar& bar : bars.bars) {
        drawing.add(fitted({{box.left, y}, bar.words}, names, kShareNarrowest));
        const Box drawn{left, y - 0.2, left + full * bar.share, y + kLettering};
        drawing.fill(drawn, kShareBarGrey);
        drawing.box(drawn);
        drawing.add(Text{{drawn.right + 1.0, y}, percent(bar.share)});
        y -= kSharePitch;
    }
}

}  // namespace seatload::sheet
