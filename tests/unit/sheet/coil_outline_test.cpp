// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#include <seatload/sheet/coil_curve.hpp>
#include <seatload/sheet/coil_outline.hpp>

#include "drawn_figure.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

using namespace sheet;

std::vector<spring::Spring> springs() {
    std::vector<spring::Spring> out;
    for (const Specimen& specimen : specimens()) out.push_back(specimen.spec.spring);
    return out;
}

TEST_CASE("the drawn outline gives outside diameter and free length again", "[sheet]") {
    for (const spring::Spring& s : springs()) {
        const Box box = extent(side_view(s));
        CHECK_THAT(box.height(), WithinRel(in_mm(s.outside_diameter()), 0.01));
        CHECK_THAT(box.width(), WithinRel(in_mm(s.free_length), 0.01));
        CHECK_THAT(box.centre().y, WithinAbs(0.0, 0.01 * in_mm(s.outside_diameter())));
    }
}

TEST_CASE("the drawn outline gives the wire diameter again", "[sheet]") {
    for (const spring::Spring& s : springs()) {
        const auto middle = flattest_half_turn(side_view(s));
        REQUIRE(middle.size() == 2);
        CHECK_THAT(distance_across(middle), WithinRel(in_mm(s.wire_diameter), 0.01));
    }
}

TEST_CASE("the drawn outline passes the axis once for each half-turn", "[sheet]") {
    for (const spring::Spring& s : springs()) {
        // With the tip at the top the wire passes the axis at a quarter turn and every half-turn after it.
        const auto expected = static_cast<std::size_t>(std::floor((s.total_coils - 0.25) / 0.5 + 1e-9)) + 1;
        // Where the last turn ends on the axis, or grinding cuts a half-turn short, its outlines may just miss it.
        const std::size_t found = half_turns(side_view(s)).size();
        INFO(s.total_coils << " coils, " << word(s.ends));
        CHECK(found <= expected);
        CHECK(found + (s.total_coils - 0.25 == std::floor(2.0 * s.total_coils) / 2.0 ? 1 : 0) >= expected);
    }
}

TEST_CASE("wire in front falls to the right on a right-hand spring and rises on a left-hand one", "[sheet]") {
    // A right-hand screw thread seen from the side falls to the left at the back and to the right in front (ISO 2162-1
    // draws springs right-hand unless stated; the sense is that of a screw).
    for (const spring::Hand hand : {spring::Hand::right, spring::Hand::left}) {
        spring::Spring s = specimen(latch()).spring;
        s.hand = hand;
        CHECK(test::hand(side_view(s), 0.0) == (hand == spring::Hand::right ? 1 : -1));
    }
}

TEST_CASE("left and right hand are mirror images in the same box", "[sheet]") {
    spring::Spring s = specimen(latch()).spring;
    const Box right = extent(side_view(s));
    s.hand = spring::Hand::left;
    const Box left = extent(side_view(s));
    CHECK_THAT(left.width(), WithinAbs(right.width(), 1e-9));
    CHECK_THAT(left.height(), WithinAbs(right.height(), 1e-9));
}

TEST_CASE("closed ends touch the next coil at their tips", "[sheet]") {
    // Common practice, no source: a closed end lies against its neighbour.
    for (const spring::Ends ends : {spring::Ends::closed, spring::Ends::closed_ground}) {
        spring::Spring s = specimen(latch()).spring;
        s.ends = ends;
        const CoilCurve curve(s);
        CHECK_THAT(curve.x(1.0) - curve.x(0.0), WithinAbs(in_mm(s.wire_diameter), 1e-9));
        CHECK_THAT(curve.x(s.total_coils) - curve.x(s.total_coils - 1.0), WithinAbs(in_mm(s.wire_diameter), 1e-9));
    }
}

TEST_CASE("ground closed ends are flat over three quarters of a turn and a quarter of the wire thick at the tip",
          "[sheet]") {
    // Two makers' notes on end grinding: ground arc at least 3/4 turn; tip about d/4.
    const spring::Spring s = specimen(latch()).spring;
    const CoilCurve curve(s);
    const double d = in_mm(s.wire_diameter);
    CHECK_THAT(curve.x(0.0) + 0.5 * d, WithinAbs(0.25 * d, 1e-9));
    CHECK_THAT(curve.x(0.75), WithinAbs(0.5 * d, 1e-9));
    CHECK_THAT(curve.x_from_right(s.total_coils - 0.75), WithinAbs(0.5 * d, 1e-9));
}

TEST_CASE("the lead never falls below the wire diameter and is the slope of the curve", "[sheet]") {
    for (const spring::Spring& s : springs()) {
        const CoilCurve curve(s);
        for (double u = 0.01; u < s.total_coils - 0.01; u += 0.07) {
            CHECK(curve.lead(u) >= in_mm(s.wire_diameter) - 1e-9);
            CHECK_THAT((curve.x(u + 1e-5) - curve.x(u - 1e-5)) / 2e-5, WithinAbs(curve.lead(u), 1e-3 * curve.lead(u)));
        }
    }
}

TEST_CASE("an end face turned away from the viewer shows only where it stands out from behind the wire", "[sheet]") {
    // The wire covers all of the plane within d/2 of its centre line; an end face behind it may show at most half.
    spring::Spring s = specimen({"EN10270-1-SH", 8.0, 40.0, 4.0, 50.0, spring::Ends::closed, 47.0, 46.0}).spring;
    const CoilCurve curve(s);
    double shown = 0.0;
    for (const ViewPiece& piece : side_view(s)) {
        if (piece.fill.size() != 61) continue;  // a circle's points
        double length = 0.0;
        double deepest = 0.0;
        for (const Path& edge : piece.edges)
            for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
                length += std::hypot(edge[i + 1].x - edge[i].x, edge[i + 1].y - edge[i].y);
                for (double t = 0.01; t < 0.5; t += 0.01)
                    deepest = std::max(
                        deepest, curve.wire_radius() - std::hypot(edge[i].x - curve.x(t), edge[i].y - curve.y(t)));
            }
        if (piece.edges[0].size() == 61) continue;  // the other end's, which looks at the viewer
        shown += length;
        CHECK(deepest < 0.01 * in_mm(s.wire_diameter));
    }
    CHECK(shown > 0.2 * std::numbers::pi * in_mm(s.wire_diameter));
    CHECK(shown < 0.75 * std::numbers::pi * in_mm(s.wire_diameter));
}

TEST_CASE("the end view shows the two diameters and the tip at the top", "[sheet]") {
    for (const spring::Spring& s : springs()) {
        const auto pieces = end_view(s);
        REQUIRE(pieces.size() == 1);
        REQUIRE(pieces[0].edges.size() >= 3);
        const auto radius = [](const Path& ring) { return std::hypot(ring.front().x, ring.front().y); };
        CHECK_THAT(2.0 * radius(pieces[0].edges[0]), WithinRel(in_mm(s.outside_diameter()), 1e-9));
        CHECK_THAT(2.0 * radius(pieces[0].edges[1]), WithinRel(in_mm(s.inside_diameter()), 1e-9));
        for (const Point p : pieces[0].edges[2]) {
            CHECK_THAT(p.x, WithinAbs(0.0, 1e-9));
            CHECK(p.y > 0.0);
        }
    }
}

}  // namespace
}  // namespace seatload::test
