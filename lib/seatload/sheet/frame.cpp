// SPDX-License-Identifier: MIT
#include <seatload/sheet/frame.hpp>

#include <string>

namespace seatload::sheet {
namespace {

constexpr double kField = 50.0;      ///< grid fields, counted from the centring marks
constexpr double kTrim = 5.0;        ///< outer edge of the grid border
constexpr double kGridHeight = 3.5;  ///< of letters and numerals

/// Borders between grid fields along an edge, from low to high: whole fields from the middle outwards.
std::vector<double> field_edges(double low, double high, double middle) {
    std::vector<double> edges{low};
    const double first = middle - kField * std::floor((middle - low) / kField);
    for (double at = first; at < high - 1.0; at += kField)
        if (at > low + 1.0) edges.push_back(at);
    edges.push_back(high);
    return edges;
}

void draw_top_fields(Drawing& drawing, const Box& space) {
    const auto edges = field_edges(space.left, space.right, 0.5 * drawing.width());
    const double top = drawing.height() - kTrim;
    for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
        drawing.line({edges[i], space.top}, {edges[i], top});
        drawing.add(Text{
            {0.5 * (edges[i] + edges[i + 1]), space.top + 0.8}, std::to_string(i + 1), kGridHeight, Align::centre});
    }
    drawing.line({space.right, space.top}, {space.right, top});
}

void draw_right_fields(Drawing& drawing, const Box& space) {
    const auto edges = field_edges(space.bottom, space.top, 0.5 * drawing.height());
    const double right = drawing.width() - kTrim;
    for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
        const std::string letter(1, static_cast<char>('A' + static_cast<int>(edges.size() - 2 - i)));
        drawing.line({space.right, edges[i]}, {right, edges[i]});
        drawing.add(Text{{0.5 * (space.right + right), 0.5 * (edges[i] + edges[i + 1] - kGridHeight)},
                         letter,
                         kGridHeight,
                         Align::centre});
    }
    drawing.line({space.right, space.top}, {right, space.top});
}

}  // namespace

void draw_frame(Drawing& drawing) {
    const Box space = drawing_space(drawing.width(), drawing.height());
    drawing.box({kTrim, kTrim, drawing.width() - kTrim, drawing.height() - kTrim});
    drawing.box(space, LineKind::frame);
    draw_top_fields(drawing, space);
    draw_right_fields(drawing, space);
    const double x = 0.5 * drawing.width();
    const double y = 0.5 * drawing.height();
    // They end at the border here, not inside it: the tables reach up to it.
    drawing.line({x, drawing.height()}, {x, space.top}, LineKind::frame);
    drawing.line({x, 0.0}, {x, space.bottom}, LineKind::frame);
    drawing.line({0.0, y}, {space.left, y}, LineKind::frame);
    drawing.line({drawing.width(), y}, {space.right, y}, LineKind::frame);
}

}  // namespace seatload::sheet
