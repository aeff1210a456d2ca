// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <variant>
#include <vector>

#include <seatload/sheet/geometry.hpp>

namespace seatload::sheet {

/// Kinds of line (ISO 128-2; wide to narrow 2:1, group 0.5 for A4 and A3).
enum class LineKind {
    frame,    ///< continuous, 0.7 mm: border of the drawing space
    wide,     ///< continuous, 0.5 mm: visible edges
    narrow,   ///< continuous, 0.25 mm: dimension, extension, leader and table lines
    hidden,   ///< dashed, 0.25 mm: hidden edges and construction lines
    axis,     ///< long-dashed dotted, 0.25 mm: centre lines
    extreme,  ///< long-dashed double-dotted, 0.25 mm: extreme positions of moving parts
};

/// Width of a line of that kind [mm].
constexpr double line_width(LineKind kind) {
    switch (kind) {
        case LineKind::frame:
            return 0.7;
        case LineKind::wide:
            return 0.5;
        default:
            return 0.25;
    }
}

enum class Face { regular, bold };
enum class Align { left, centre, right };

/// Least height of capital letters on any paper [mm] (ISO 3098 series, smallest for A4).
inline constexpr double kLettering = 2.5;

/// A stroked line through points.
struct Line {
    Path points;
    LineKind kind = LineKind::narrow;
    bool closed = false;
};

/// A filled polygon; grey 0 is black, 1 is white paper.
struct Area {
    Path points;
    double grey = 0.0;
};

/// A stroked circle, or part of one from one angle to another, anticlockwise [deg, from the x axis].
struct Arc {
    Point centre;
    double radius = 0.0;
    LineKind kind = LineKind::narrow;
    double from = 0.0;
    double to = 360.0;
};

/// A filled circle.
struct Disc {
    Point centre;
    double radius = 0.0;
    double grey = 0.0;
};

/// One line of lettering. `at` lies on the base line; the words may hold sub- and superscripts (lettering.hpp).
struct Text {
    Point at;
    std::string words;
    double height = kLettering;  ///< of capital letters [mm]
    Align align = Align::left;
    Face face = Face::regular;
    double turn = 0.0;     ///< anticlockwise [deg]
    double squeeze = 1.0;  ///< width of the letters over their natural width
    bool masked = false;   ///< whether the paper behind the words is wiped white first
};

using Item = std::variant<Line, Area, Arc, Disc, Text>;

/// One page: what is drawn, in order; later items cover earlier ones.
class Drawing {
  public:
    Drawing(double width_mm, double height_mm) : width_(width_mm), height_(height_mm) {}

    double width() const { return width_; }
    double height() const { return height_; }
    const std::vector<Item>& items() const { return items_; }

    void add(Item item);
    void line(Point from, Point to, LineKind kind = LineKind::narrow) { add(Line{{from, to}, kind, false}); }
    void box(const Box& box, LineKind kind = LineKind::narrow);
    void fill(const Box& box, double grey);

  private:
    double width_;
    double height_;
    std::vector<Item> items_;
};

/// A4, long side across [mm].
inline Drawing a4_landscape() { return {297.0, 210.0}; }
/// A4, long side upright [mm].
inline Drawing a4_portrait() { return {210.0, 297.0}; }

}  // namespace seatload::sheet
