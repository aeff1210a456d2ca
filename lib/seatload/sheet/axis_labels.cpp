// SPDX-License-Identifier: MIT
#include <seatload/sheet/axis_labels.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spread.hpp>

namespace seatload::sheet {
namespace {

constexpr double kPitch = 4.3;   ///< of rows, and of labels turned upright
constexpr double kGap = 2.0;     ///< between labels in a row
constexpr double kPass = 2.4;    ///< for the line to a label in the second row
constexpr double kLeader = 3.0;  ///< from the axis
constexpr double kSlant = 1.8;   ///< and from the first row to the second
constexpr double kDrop = 3.3;    ///< from the end of a leader to the base line under it
constexpr double kRow = 4.5;     ///< one row with its descenders

enum class Rows { one, two, upright };

double room_for(const AxisLabel& label) { return text_width(label.words, kLettering) + kGap; }

bool is_in_first_row(std::size_t index) { return index % 2 == 0; }

Rows rows_of(const AxisLabels& labels, double width) {
    double all = 0.0;
    double first = 0.0;
    double second = 0.0;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const double room = room_for(labels[i]);
        all += room;
        first += is_in_first_row(i) ? room : kPass;
        second += is_in_first_row(i) ? 0.0 : room;
    }
    if (all <= width) return Rows::one;
    return std::max(first, second) <= width ? Rows::two : Rows::upright;
}

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

}  // namespace

double farthest_under_axis(const AxisLabels& labels, double left, double right) {
    const Rows rows = rows_of(labels, right - left);
    std::vector<double> places;
    if (rows == Rows::two) {
        places = two_rows(labels, left, right).first;
    } else {
        std::vector<Spot> spots;
        for (const AxisLabel& label : labels)
            spots.push_back({label.at, rows == Rows::upright ? kPitch : room_for(label)});
        places = spread(spots, left, right);
    }
    double farthest = 0.0;
    for (std::size_t i = 0; i < labels.size(); ++i) farthest = std::max(farthest, std::abs(places[i] - labels[i].at));
    return farthest;
}

double height_under_axis(const AxisLabels& labels, double width) {
    switch (rows_of(labels, width)) {
        case Rows::one:
            return kLeader + kRow;
        case Rows::two:
            return kLeader + kPitch + kSlant + kRow;
        case Rows::upright:
            return kLeader + widest(labels) + 1.5;
    }
    return 0.0;
}

void draw_under_axis(Drawing& drawing, const AxisLabels& labels, double axis_y, double left, double right) {
    const Rows rows = rows_of(labels, right - left);
    if (rows == Rows::two) return draw_two_rows(drawing, labels, axis_y, left, right);
    std::vector<Spot> spots;
    for (const AxisLabel& label : labels) spots.push_back({label.at, rows == Rows::upright ? kPitch : room_for(label)});
    const auto places = spread(spots, left, right);
    const double end = axis_y - kLeader;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        drawing.line({labels[i].at, axis_y}, {places[i], end});
        Text text{{places[i], end - kDrop}, labels[i].words, kLettering, Align::centre};
        if (rows == Rows::upright) {
            text.at = {places[i] + 0.5 * kLettering, end - 0.8};
            text.align = Align::right;
            text.turn = 90.0;
        }
        drawing.add(text);
    }
}

double width_beside_axis(const AxisLabels& labels) { return kLeader + widest(labels) + 2.0; }

std::size_t labels_beside_axis(double height) { return static_cast<std::size_t>(std::max(0.0, height) / kPitch); }

void draw_beside_axis(Drawing& drawing, const AxisLabels& labels, double axis_x, double bottom, double top) {
    std::vector<Spot> spots;
    for (const AxisLabel& label : labels) spots.push_back({label.at, kPitch});
    const auto places = spread(spots, bottom, top);
    const double end = axis_x - kLeader;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        drawing.line({axis_x, labels[i].at}, {end, places[i]});
        drawing.add(Text{{end - 0.6, places[i] - 0.5 * kLettering}, labels[i].words, kLettering, Align::right});
    }
}

}  // namespace seatload::sheet
