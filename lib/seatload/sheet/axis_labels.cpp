// SPDX-License-Identifier: MIT
#include <seatload/sheet/axis_labels.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spread.hpp>

namespace seatload::sheet {
namespace {

constexpr double kPitch = 4.3;    ///< of rows
constexpr double kClosest = 3.6;  ///< of rows beside an axis: letters of 2.5 mm with their descenders take 3.4
constexpr double kGap = 2.0;      ///< between labels in a row
constexpr double kPass = 2.4;     ///< for the line to a label in the second row
constexpr double kLeader = 3.0;   ///< from the axis
constexpr double kSlant = 1.8;    ///< and from the first row to the second
constexpr double kDrop = 3.3;     ///< from the end of a leader to the base line under it
constexpr double kRow = 4.5;      ///< one row with its descenders

double room_for(const AxisLabel& label) { return text_width(label.words, kLettering) + kGap; }

bool is_in_first_row(std::size_t index) { return index % 2 == 0; }

double widest(const AxisLabels& labels) {
    double width = 0.0;
    for (const AxisLabel& label : labels) width = std::max(width, text_width(label.words, kLettering));
    return width;
}

/// Where labels in two rows stand, and where their lines pass the first of them.
struct TwoRows {
    std::vector<double> first;   ///< of all labels
    std::vector<double> second;  ///< of every other
};

/// The first row holds every other label and lets the lines to the second pass.
TwoRows two_rows(const AxisLabels& labels, double left, double right) {
    std::vector<Spot> spots;
    for (std::size_t i = 0; i < labels.size(); ++i)
        spots.push_back({labels[i].at, is_in_first_row(i) ? room_for(labels[i]) : kPass});
    TwoRows out{spread(spots, left, right), {}};
    std::vector<Spot> lower;
    for (std::size_t i = 0; i < labels.size(); ++i)
        if (!is_in_first_row(i)) lower.push_back({out.first[i], room_for(labels[i])});
    out.second = spread(lower, left, right);
    return out;
}

void draw_two_rows(Drawing& drawing, const AxisLabels& labels, double axis_y, double left, double right) {
    const auto [first, second] = two_rows(labels, left, right);
    const double end = axis_y - kLeader;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const Point foot{labels[i].at, axis_y};
        if (is_in_first_row(i)) {
            drawing.line(foot, {first[i], end});
            drawing.add(Text{{first[i], end - kDrop}, labels[i].words, kLettering, Align::centre});
            continue;
        }
        const Point lowest{second[i / 2], end - kPitch - kSlant};
        drawing.add(Line{{foot, {first[i], end}, {first[i], end - kPitch}, lowest}});
        drawing.add(Text{{lowest.x, lowest.y - kDrop}, labels[i].words, kLettering, Align::centre});
    }
}

std::vector<double> in_one_row(const AxisLabels& labels, double left, double right) {
    std::vector<Spot> spots;
    for (const AxisLabel& label : labels) spots.push_back({label.at, room_for(label)});
    return spread(spots, left, right);
}

/// Where a label would stand if it were alone: amid its marks.
double middle_of_marks(const AxisLabel& label) {
    const double sum = std::accumulate(label.also.begin(), label.also.end(), label.at);
    return sum / static_cast<double>(1 + label.also.size());
}

}  // namespace

double height_under_axis(AxisRows rows) {
    return rows == AxisRows::one ? kLeader + kRow : kLeader + kPitch + kSlant + kRow;
}

bool have_room_under_axis(const AxisLabels& labels, AxisRows rows, double width) {
    double first = 0.0;
    double second = 0.0;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const bool is_first = rows == AxisRows::one || is_in_first_row(i);
        first += is_first ? room_for(labels[i]) : kPass;
        second += is_first ? 0.0 : room_for(labels[i]);
    }
    return std::max(first, second) <= width;
}

double farthest_under_axis(const AxisLabels& labels, AxisRows rows, double left, double right) {
    const auto places = rows == AxisRows::two ? two_rows(labels, left, right).first : in_one_row(labels, left, right);
    double farthest = 0.0;
    for (std::size_t i = 0; i < labels.size(); ++i) farthest = std::max(farthest, std::abs(places[i] - labels[i].at));
    return farthest;
}

void draw_under_axis(Drawing& drawing, const AxisLabels& labels, AxisRows rows, double axis_y, double left,
                     double right) {
    if (rows == AxisRows::two) return draw_two_rows(drawing, labels, axis_y, left, right);
    const auto places = in_one_row(labels, left, right);
    const double end = axis_y - kLeader;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        drawing.line({labels[i].at, axis_y}, {places[i], end});
        drawing.add(Text{{places[i], end - kDrop}, labels[i].words, kLettering, Align::centre});
    }
}

double width_beside_axis(const AxisLabels& labels) { return kLeader + widest(labels) + 2.0; }

std::size_t labels_beside_axis(double height) { return static_cast<std::size_t>(std::max(0.0, height) / kClosest); }

void draw_beside_axis(Drawing& drawing, const AxisLabels& labels, double axis_x, double bottom, double top) {
    const double share = (top - bottom) / static_cast<double>(std::max<std::size_t>(1, labels.size()));
    std::vector<Spot> spots;
    for (const AxisLabel& label : labels)
        spots.push_back({middle_of_marks(label), std::clamp(share, kClosest, kPitch)});
    const auto places = spread(spots, bottom, top);
    const double end = axis_x - kLeader;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        std::vector<double> marks = labels[i].also;
        marks.push_back(labels[i].at);
        for (const double mark : marks) drawing.line({axis_x, mark}, {end, places[i]});
        drawing.add(Text{{end - 0.6, places[i] - 0.5 * kLettering}, labels[i].words, kLettering, Align::right});
    }
}

}  // namespace seatload::sheet
