// SPDX-License-Identifier: MIT
#include <seatload/sheet/height_labels.hpp>

#include <algorithm>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spread.hpp>

namespace seatload::sheet {
namespace {

constexpr double kWidest = 34.0;
constexpr double kHeightGap = 2.0;
constexpr double kHeightPitch = 3.6;
constexpr double kHeightLeader = 1.8;

Text centred(Point at, const std::string& words, double width) {
    return fitted(Text{at, words, kLettering, Align::centre}, width);
}

}  // namespace

void draw_height_labels(Drawing& drawing, const HeightLabels& labels, const Box& plot) {
    if (labels.empty()) return;
    const double widest = std::min(kWidest, plot.width() / static_cast<double>(labels.size()) - kHeightGap);
    std::vector<Spot> spots;
    for (const HeightLabel& label : labels) {
        const double wider = std::max(text_width(label.name, kLettering), text_width(label.number, kLettering));
        spots.push_back({label.at, std::min(wider, widest) + kHeightGap});
    }
    const auto places = spread(spots, plot.left, plot.right);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const double foot = plot.top + kHeightLeader;
        drawing.line({labels[i].at, plot.top}, {places[i], foot});
        drawing.add(centred({places[i], foot + 0.9}, labels[i].number, widest));
        drawing.add(centred({places[i], foot + 0.9 + kHeightPitch}, labels[i].name, widest));
    }
}

}  // namespace seatload::sheet
