// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

namespace seatload::sheet {

/// A point on the paper [mm], from the lower left corner of the sheet.
struct Point {
    double x = 0.0;
    double y = 0.0;

    friend constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr Point operator*(double factor, Point p) { return {factor * p.x, factor * p.y}; }
    bool operator==(const Point&) const = default;
};

using Path = std::vector<Point>;

/// An upright rectangle on the paper [mm].
struct Box {
    double left = 0.0;
    double bottom = 0.0;
    double right = 0.0;
    double top = 0.0;

    constexpr double width() const { return right - left; }
    constexpr double height() const { return top - bottom; }
    constexpr Point centre() const { return {0.5 * (left + right), 0.5 * (bottom + top)}; }
    constexpr Box shrunk(double by) const { return {left + by, bottom + by, right - by, top - by}; }
    constexpr bool overlaps(const Box& other) const {
        return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
    }
    constexpr bool contains(const Box& other) const {
        return left <= other.left && other.right <= right && bottom <= other.bottom && other.top <= top;
    }
    bool operator==(const Box&) const = default;
};

/// A box that holds nothing, to be grown with include().
constexpr Box empty_box() {
    constexpr double far = std::numeric_limits<double>::max();
    return {far, far, -far, -far};
}

constexpr Box include(const Box& box, Point p) {
    return {std::min(box.left, p.x), std::min(box.bottom, p.y), std::max(box.right, p.x), std::max(box.top, p.y)};
}

constexpr double radians(double degrees) { return degrees * std::numbers::pi / 180.0; }

/// The point turned about the origin, anticlockwise [deg].
inline Point turned(Point p, double degrees) {
    const double c = std::cos(radians(degrees));
    const double s = std::sin(radians(degrees));
    return {c * p.x - s * p.y, s * p.x + c * p.y};
}

}  // namespace seatload::sheet
