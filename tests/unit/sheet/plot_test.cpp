// SPDX-License-Identifier: MIT
#include <seatload/sheet/plot_area.hpp>

#include <cmath>

#include <seatload/sheet/fact_lines.hpp>
#include <seatload/sheet/height_labels.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/plot_key.hpp>
#include <seatload/sheet/share_bars.hpp>
#include <seatload/sheet/side_labels.hpp>
#include <support/check.hpp>

#include "layout_check.hpp"

namespace seatload::test {
namespace {

using namespace sheet;

constexpr Plot kPlot{{50.0, 50.0, 150.0, 100.0}, 20.0, 10.0, 0.0, 5.0};

std::vector<Line> lines_on(const Drawing& page) {
    std::vector<Line> out;
    for (const Item& item : page.items())
        if (const Line* line = std::get_if<Line>(&item)) out.push_back(*line);
    return out;
}

double length_of(const std::vector<Line>& lines) {
    double sum = 0.0;
    for (const Line& line : lines) {
        const Point way = line.points[1] - line.points[0];
        sum += std::hypot(way.x, way.y);
    }
    return sum;
}

TEST_CASE("an axis may run backwards, and its ticks stand at their numbers", "[plot]") {
    CHECK(kPlot.x(20.0) == 50.0);
    CHECK(kPlot.x(10.0) == 150.0);
    CHECK(kPlot.spans(15.0));
    CHECK_FALSE(kPlot.spans(21.0));
    Drawing page = a4_portrait();
    draw_level_axis(page, kPlot, "", 5);
    std::size_t numbers = 0;
    for (const Item& item : page.items())
        if (const Text* text = std::get_if<Text>(&item)) {
            ++numbers;
            CHECK_THAT(text->at.x, WithinAbs(kPlot.x(std::stod(text->words)), 1e-9));
        }
    CHECK(numbers >= 4);
}

TEST_CASE("curves are cut off at the box of their plot, and keep their slope", "[plot]") {
    Drawing page = a4_portrait();
    draw_curve(page, kPlot, {{25.0, -2.5}, {5.0, 7.5}}, LineKind::wide);  // y = 10 - x/2
    const auto lines = lines_on(page);
    REQUIRE(lines.size() == 1);
    CHECK_THAT(lines[0].points.front().x, WithinAbs(50.0, 1e-9));
    CHECK_THAT(lines[0].points.front().y, WithinAbs(50.0, 1e-9));
    CHECK_THAT(lines[0].points.back().x, WithinAbs(150.0, 1e-9));
    CHECK_THAT(lines[0].points.back().y, WithinAbs(100.0, 1e-9));
}

TEST_CASE("hatching fills any polygon with lines as far apart as asked", "[plot]") {
    const Path ell{{40.0, 40.0}, {100.0, 40.0}, {100.0, 60.0}, {60.0, 60.0}, {60.0, 120.0}, {40.0, 120.0}};
    const double area = 60.0 * 20.0 + 20.0 * 60.0;
    for (const double degrees : {0.0, 30.0, 45.0, 135.0}) {
        Drawing page = a4_portrait();
        hatch(page, ell, {1.0, degrees});
        // The lines' length times their distance is the area, as for any sum of strips.
        CHECK_THAT(length_of(lines_on(page)), WithinRel(area, 0.03));
        for (const Line& line : lines_on(page)) {
            const Point way = line.points[1] - line.points[0];
            CHECK_THAT(way.y * std::cos(radians(degrees)) - way.x * std::sin(radians(degrees)), WithinAbs(0.0, 1e-9));
        }
    }
    Drawing page = a4_portrait();
    hatch(page, {{40.0, 40.0}, {50.0, 50.0}}, {1.0, 45.0});
    CHECK(page.items().empty());
}

TEST_CASE("a limit line is hatched on its forbidden side only", "[plot]") {
    for (const Side side : {Side::below, Side::above}) {
        Drawing page = a4_portrait();
        draw_limit_line(page, kPlot, 2.5, side, 18.0, 12.0);
        const auto lines = lines_on(page);
        REQUIRE(lines.size() > 10);
        for (const Line& line : lines)
            for (const Point& p : line.points) {
                if (side == Side::above) CHECK(p.y >= kPlot.y(2.5) - 1e-9);
                if (side == Side::below) CHECK(p.y <= kPlot.y(2.5) + 1e-9);
            }
    }
}

TEST_CASE("bars of shares are as long as the shares they stand for", "[plot]") {
    Drawing page = a4_portrait();
    const ShareBars bars{"U of the rate", {{"half", 0.5}, {"a third of it", 0.3}, {"rest", 0.2}}};
    draw(page, {30.0, 100.0, 90.0, 120.0}, bars);
    std::vector<double> lengths;
    for (const Item& item : page.items())
        if (const sheet::Area* area = std::get_if<sheet::Area>(&item))
            lengths.push_back(area->points[1].x - area->points[0].x);
    REQUIRE(lengths.size() == 3);
    CHECK_THAT(lengths[1] / lengths[0], WithinRel(0.6, 1e-9));
    CHECK_THAT(lengths[2] / lengths[0], WithinRel(0.4, 1e-9));
    CHECK(layout_faults(page).empty());
}

TEST_CASE("labels at the sides, over plots and in keys keep apart however close their places are", "[plot]") {
    Drawing page = a4_portrait();
    AxisLabels labels;
    for (int i = 0; i < 9; ++i)
        labels.push_back({200.0 + 0.3 * i, "a label with many words that is cut when too long"});
    draw_labels_at_right(page, labels, {100.0, 150.0, 150.0, 250.0});
    HeightLabels heights;
    for (int i = 0; i < 6; ++i) heights.push_back({60.0 + 0.5 * i, "half way, where the ball climbs out", "12.00"});
    draw_height_labels(page, heights, {40.0, 60.0, 190.0, 120.0});
    PlotKey key;
    for (int i = 0; i < 4; ++i)
        key.push_back({Mark::disc, "Sixty characters of a note that must go on to another line."});
    draw_plot_key(page, {30.0, 20.0, 80.0, 50.0 + key_height(key, 50.0)}, key);
    std::vector<std::string> faults = layout_faults(page);
    std::string all;
    for (const std::string& fault : faults) all += fault + "\n";
    CHECK(all == "");
}

}  // namespace
}  // namespace seatload::test
