// SPDX-License-Identifier: MIT
#include <seatload/sheet/clip.hpp>

#include <numbers>

#include <support/check.hpp>

namespace seatload::test {
namespace {

using namespace sheet;

double length(const Path& path) {
    double sum = 0.0;
    for (std::size_t i = 0; i + 1 < path.size(); ++i)
        sum += std::hypot(path[i + 1].x - path[i].x, path[i + 1].y - path[i].y);
    return sum;
}

double area(const Path& polygon) {
    double twice = 0.0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point a = polygon[i];
        const Point b = polygon[(i + 1) % polygon.size()];
        twice += a.x * b.y - b.x * a.y;
    }
    return 0.5 * std::abs(twice);
}

TEST_CASE("a line keeps its chord inside a circle", "[sheet]") {
    // Chord of a circle of radius 5 at a distance of 3: 2 * 4.
    const auto chord = clip_line({{-20.0, 3.0}, {20.0, 3.0}}, {0.0, 0.0}, 5.0);
    REQUIRE(chord.size() == 1);
    CHECK_THAT(length(chord[0]), WithinAbs(8.0, 1e-12));
    CHECK(clip_line({{-20.0, 5.1}, {20.0, 5.1}}, {0.0, 0.0}, 5.0).empty());
    // A line that comes in twice gives two parts; one that stays inside comes through whole.
    const Path zigzag{{-20.0, 3.0}, {20.0, 3.0}, {20.0, -3.0}, {-20.0, -3.0}};
    CHECK(clip_line(zigzag, {0.0, 0.0}, 5.0).size() == 2);
    const Path inside{{1.0, 1.0}, {2.0, 1.0}, {2.0, 2.0}};
    const auto whole = clip_line(inside, {1.5, 1.5}, 5.0);
    REQUIRE(whole.size() == 1);
    CHECK(whole[0] == inside);
}

TEST_CASE("a polygon keeps what lies inside a circle", "[sheet]") {
    const Path square{{-10.0, -10.0}, {10.0, -10.0}, {10.0, 10.0}, {-10.0, 10.0}};
    CHECK_THAT(area(clip_polygon(square, {0.0, 0.0}, 5.0)), WithinRel(25.0 * std::numbers::pi, 1e-3));
    CHECK_THAT(area(clip_polygon(square, {10.0, 10.0}, 5.0)), WithinRel(25.0 * std::numbers::pi / 4.0, 1e-3));
    CHECK_THAT(area(clip_polygon(square, {0.0, 0.0}, 20.0)), WithinRel(400.0, 1e-12));
    CHECK(clip_polygon(square, {40.0, 0.0}, 5.0).empty());
}

}  // namespace
}  // namespace seatload::test
