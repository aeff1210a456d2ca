// SPDX-License-Identifier: MIT
#include <seatload/sheet/side_labels.hpp>

#include <algorithm>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spread.hpp>

namespace seatload::sheet {
namespace {

constexpr double kSidePitch = 3.9;
constexpr double kSideLeader = 4.0;
constexpr double kSideGap = 0.8;

}  // namespace

void draw_labels_at_right(Drawing& drawing, AxisLabels labels, const Box& room) {
    std::stable_sort(labels.begin(), labels.end(), [](const AxisLabel& a, const AxisLabel& b) { return a.at < b.at; });
    std::vector<Spot> spots;
    for (const AxisLabel& label : labels) spots.push_back({label.at, kSidePitch});
    const auto places = spread(spots, room.bottom, room.top);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        drawing.line({room.left, labels[i].at}, {room.left + kSideLeader, places[i]});
        drawing.add(fitted({{room.left + kSideLeader + kSideGap, places[i] - 0.5 * kLettering}, labels[i].words},
                           room.width() - kSideLeader - kSideGap));
    }
}

}  // namespace seatload::sheet
