// SPDX-License-Identifier: MIT
#include <seatload/sheet/bench_sheet.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/sheet/bench_figures.hpp>
#include <seatload/sheet/bench_plot.hpp>
#include <support/check.hpp>
#include <support/tool.hpp>

#include "bench_specimens.hpp"
#include "drawn_plot.hpp"
#include "layout_check.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

using sheet::LineKind;

constexpr double kDrawnToWithin = 0.01;  ///< of what is read off a drawing with a rule

std::vector<sheet::Drawing> pages_of(const sheet::BenchSheetInput& input) {
    const auto pages = sheet::bench_sheet(input);
    for (const Diagnostic& d : pages.error()) UNSCOPED_INFO(d.message);
    REQUIRE(pages.has_value());
    return *pages;
}

std::vector<sheet::Drawing> pages_of(const BenchSpecimen& specimen) { return pages_of(specimen.input(paper().words)); }

BenchSpecimen alone(const TrueSpring& spring) { return {"alone", bench_session(), {spring}}; }

bool is_slanted(const sheet::Path& line) {
    return std::abs(line.front().x - line.back().x) > 1.0 && std::abs(line.front().y - line.back().y) > 1.0;
}

/// The line through the points: the longest that is neither level nor upright.
sheet::Path fitted_line(const sheet::Drawing& page, const DrawnPlot& plot) {
    sheet::Path longest;
    for (const sheet::Path& line : lines_in(page, plot, LineKind::wide))
        if (is_slanted(line) &&
            (longest.empty() || line.back().x - line.front().x > longest.back().x - longest.front().x))
            longest = line;
    REQUIRE(longest.size() == 2);
    return longest;
}

std::size_t count(const bench::MeasuredSpring& spring, bench::Use use) {
    return static_cast<std::size_t>(
        std::count_if(spring.points.begin(), spring.points.end(), [&](const bench::Point& p) { return p.use == use; }));
}

TEST_CASE("no text of a bench sheet overlaps another, leaves the frame or is crossed by a line", "[bench]") {
    for (const BenchSpecimen& specimen : bench_specimens())
        for (const auto size : {sheet::PaperSize::a4, sheet::PaperSize::letter}) {
            sheet::BenchSheetInput input = specimen.input(paper().words);
            input.size = size;
            const auto pages = pages_of(input);
            for (std::size_t i = 0; i < pages.size(); ++i) {
                INFO(specimen.name << (size == sheet::PaperSize::a4 ? ", A4" : ", Letter") << ", page " << i + 1);
                CHECK(join(layout_faults(pages[i]), "\n") == "");
            }
        }
}

TEST_CASE("a spring has one page, and several have a page before theirs that compares them", "[bench]") {
    for (const BenchSpecimen& specimen : bench_specimens()) {
        INFO(specimen.name);
        const std::size_t springs = specimen.measured.size();
        const auto pages = pages_of(specimen);
        if (springs == 1) CHECK(pages.size() == 1);
        if (springs == 2) CHECK(pages.size() == 3);
        if (springs > 2) CHECK(pages.size() <= springs + 2);
        const std::string words = words_on(pages);
        for (std::size_t i = 0; i < pages.size(); ++i)
            CHECK_THAT(words, ContainsSubstring(std::to_string(i + 1) + " / " + std::to_string(pages.size())));
        CHECK((words.find("The springs beside one another") != std::string::npos) == (springs > 1));
        for (const sheet::Drawing& page : pages)
            if (springs < 3) CHECK_THAT(words_on({page}), ContainsSubstring("A spring stores energy"));
    }
}

TEST_CASE("the line drawn has the rate and the free length that were put into the readings", "[bench]") {
    for (const TrueSpring& spring : {good_spring(), weak_spring()}) {
        const auto page = pages_of(alone(spring)).front();
        const auto plots = drawn_plots(page);
        REQUIRE(plots.size() == 2);
        const sheet::Path line = fitted_line(page, plots[0]);
        const sheet::Point a = plots[0].value(line.front());
        const sheet::Point b = plots[0].value(line.back());
        const double rate = (b.y - a.y) / (a.x - b.x);
        CHECK_THAT(rate, WithinRel(spring.rate_n_mm, kDrawnToWithin));
        CHECK_THAT(a.x + a.y / rate, WithinRel(spring.free_length_mm, kDrawnToWithin));
    }
}

TEST_CASE("every reading used is a disc at its height and force, others have other signs", "[bench]") {
    const BenchSpecimen specimen = alone(weak_spring());
    const bench::MeasuredSpring& spring = specimen.measured.front();
    const auto page = pages_of(specimen).front();
    const DrawnPlot plot = drawn_plots(page).at(0);
    const auto discs = discs_in(page, plot);
    REQUIRE(count(spring, bench::Use::line) > 5);
    REQUIRE(count(spring, bench::Use::before_contact) > 0);
    REQUIRE(count(spring, bench::Use::coils_closing) > 0);
    CHECK(discs.size() == count(spring, bench::Use::line));
    CHECK(rings_in(page, plot).size() == count(spring, bench::Use::before_contact));
    std::size_t next = 0;
    for (const bench::Point& p : spring.points) {
        if (p.use != bench::Use::line) continue;
        const sheet::Point read = plot.value(discs.at(next++));
        CHECK_THAT(read.x, WithinRel(in_mm(p.height), kDrawnToWithin));
        CHECK_THAT(read.y, WithinAbs(in_newton(p.force), kDrawnToWithin * in_newton(spring.points.back().force)));
    }
    const std::string words = words_on({page});
    for (const char* phrase : {"left out:", "coils close", "contact", "unloading", "heights asked for"})
        CHECK_THAT(words, ContainsSubstring(phrase));
}

TEST_CASE("heights asked for are upright lines through both plots", "[bench]") {
    const BenchSpecimen specimen = alone(good_spring());
    const auto page = pages_of(specimen).front();
    for (const DrawnPlot& plot : drawn_plots(page)) {
        std::vector<double> heights;
        for (const sheet::Path& line : lines_in(page, plot, LineKind::axis))
            heights.push_back(plot.horizontal(line.front().x));
        REQUIRE(heights.size() == 2);
        CHECK_THAT(heights[0], WithinRel(9.6, kDrawnToWithin));
        CHECK_THAT(heights[1], WithinRel(15.0, kDrawnToWithin));
    }
}

TEST_CASE("residuals are drawn in expanded uncertainties of their readings", "[bench]") {
    const BenchSpecimen specimen = alone(good_spring());
    const bench::MeasuredSpring& spring = specimen.measured.front();
    const auto page = pages_of(specimen).front();
    const DrawnPlot plot = drawn_plots(page).at(1);
    const auto discs = discs_in(page, plot);
    REQUIRE(discs.size() == count(spring, bench::Use::line));
    std::size_t next = 0;
    for (const bench::Point& p : spring.points)
        if (p.use == bench::Use::line)
            CHECK_THAT(plot.vertical(discs.at(next++).y), WithinAbs(p.sigmas / spring.coverage_factor, 0.02));
}

TEST_CASE("error bars too short to be seen are drawn a round number of times as long, and the key says so", "[bench]") {
    const BenchSpecimen specimen = alone(good_spring());
    const bench::MeasuredSpring& spring = specimen.measured.front();
    const auto page = pages_of(specimen).front();
    const DrawnPlot plot = drawn_plots(page).at(0);
    const double mm_per_newton =
        (plot.upright.back().at - plot.upright.front().at) / (plot.upright.back().value - plot.upright.front().value);
    const double times = sheet::magnification(spring, mm_per_newton);
    CHECK(times > 1.0);
    const bench::Point& p = *std::find_if(spring.points.begin(), spring.points.end(), [](const bench::Point& each) {
        return each.use == bench::Use::line && each.force > 5.0 * newton;
    });
    const double rate = in_newton_per_mm(spring.rate.value);
    // GUM 5.1.2: independent doubts of force and height add by squares, the height's times the slope.
    const double doubt = 2.0 * std::sqrt(std::pow(in_newton(p.u_force), 2) + std::pow(rate * in_mm(p.u_height), 2));
    bool found = false;
    for (const sheet::Path& line : lines_in(page, plot, LineKind::narrow)) {
        if (std::abs(line[0].x - line[1].x) > 1e-9) continue;
        if (std::abs(plot.horizontal(line[0].x) - in_mm(p.height)) > 1e-6) continue;
        found = true;
        CHECK_THAT(std::abs(line[1].y - line[0].y) / mm_per_newton, WithinRel(2.0 * times * doubt, kDrawnToWithin));
    }
    CHECK(found);
    std::string words = words_on({page});
    std::replace(words.begin(), words.end(), '\n', ' ');
    CHECK_THAT(words, ContainsSubstring("drawn " + fixed(times, 0) + " times as long"));
    CHECK(sheet::magnification(spring, 1e6) == 1.0);
}

TEST_CASE("a bench sheet tells results with their doubt, what they rest on, and how the run was made", "[bench]") {
    const BenchSpecimen specimen = alone(weak_spring());
    std::string words = words_on(pages_of(specimen));
    for (const bench::LoadAtHeight& load : specimen.measured.front().loads) {
        const sheet::ValueWithDoubt shown = sheet::with_doubt(load.force);
        CHECK_THAT(words, ContainsSubstring(shown.value + "\n± " + shown.doubt));
    }
    std::replace(words.begin(), words.end(), '\n', ' ');
    for (const char* phrase : {"bench run",
                               "for our own use",
                               "Ahead latch springs, M14",
                               "2026-11-20",
                               "Straightness",
                               "chi-square",
                               "Hysteresis loading less unloading",
                               "step 1 g",
                               "span ± 0.1 %",
                               "latitude 54°",
                               "shows 152 g without a spring",
                               "gives way 1 mm for 160",
                               "3 times to solid",
                               "20 ± 5 °C",
                               "U of the rate",
                               "GUM",
                               "memory",
                               "estimate",
                               "mill quill over a counter scale",
                               "G = 8 D3 n R/d4"})
        CHECK_THAT(words, ContainsSubstring(phrase));
}

TEST_CASE("springs compared show both lines, and which differences are larger than their doubt", "[bench]") {
    const BenchSpecimen specimen{"two", bench_session(), {good_spring(), weak_spring()}};
    const auto page = pages_of(specimen).front();
    const DrawnPlot plot = drawn_plots(page).at(0);
    const auto slope = [&](LineKind kind) {
        for (const sheet::Path& line : lines_in(page, plot, kind)) {
            const sheet::Point a = plot.value(line.front());
            const sheet::Point b = plot.value(line.back());
            if (is_slanted(line)) return (b.y - a.y) / (a.x - b.x);
        }
        return 0.0;
    };
    CHECK_THAT(slope(LineKind::wide), WithinRel(good_spring().rate_n_mm, kDrawnToWithin));
    CHECK_THAT(slope(LineKind::hidden), WithinRel(weak_spring().rate_n_mm, kDrawnToWithin));
    const std::string words = words_on({page});
    const bench::Comparison& c = specimen.comparisons.front();
    REQUIRE(c.rate.significant);
    CHECK_THAT(words, ContainsSubstring(sheet::with_doubt(c.rate.estimate).value));
    const double doubt = in_newton(c.loads[0].load.estimate.expanded);
    const auto as_its_doubt = [&](Force part) { return sheet::with_doubt(in_newton(part), doubt).value; };
    CHECK_THAT(words, ContainsSubstring("by rate " + as_its_doubt(c.loads[0].rate_part)));
    CHECK_THAT(words, ContainsSubstring("by length " + as_its_doubt(c.loads[0].free_length_part)));
    CHECK_THAT(words, ContainsSubstring("*"));
}

TEST_CASE("values are printed to two digits of their doubt", "[bench]") {
    // GUM 7.2.6 and the examples of 7.2.2: m_S = 100.021 47 g with U = 0.000 79 g.
    const auto printed = [](double value, double doubt) {
        const sheet::ValueWithDoubt v = sheet::with_doubt(value, doubt);
        return v.value + " " + v.doubt;
    };
    CHECK(printed(100.02147, 0.00079) == "100.02147 0.00079");
    CHECK(printed(10.057622, 0.0273) == "10.058 0.027");  // GUM 7.2.6: 10.057 62 ohm with 27 milliohm is 10.058 ohm
    CHECK(printed(1.2345, 0.0996) == "1.23 0.10");
    CHECK(printed(-4321.0, 250.0) == "−4321 250");
    CHECK(printed(2.5, 0.0) == "2.5 0");
}

TEST_CASE("what cannot be printed in a bench run is complained of once, and text that is not UTF-8 is refused",
          "[bench]") {
    BenchSpecimen specimen = alone(good_spring());
    specimen.measured.front().name = "pružina 春";
    const auto warned = sheet::bench_sheet(specimen.input(paper().words));
    REQUIRE(warned.has_value());
    REQUIRE(warned.error().size() == 1);
    CHECK_THAT(warned.error().front().message, ContainsSubstring("U+6625"));
    CHECK(sheet::bench_sheet_pdf(specimen.input(paper().words)).has_value());
    specimen.session.fixture = "\xFF";
    CHECK_FALSE(sheet::bench_sheet(specimen.input(paper().words)).has_value());
    CHECK_FALSE(sheet::bench_sheet({{}, {}, paper().words}).has_value());
}

TEST_CASE("equal bench runs give equal bytes, which qpdf and poppler find clean, with typefaces embedded", "[bench]") {
    const ScratchFolder folder;
    const bool has_tools = has_pdf_tools({"qpdf", "pdffonts", "pdftotext", "pdfinfo"});
    for (const BenchSpecimen& specimen : bench_specimens()) {
        INFO(specimen.name);
        const auto bytes = sheet::bench_sheet_pdf(specimen.input(paper().words));
        REQUIRE(bytes.has_value());
        CHECK(*bytes == *sheet::bench_sheet_pdf(specimen.input(paper().words)));
        if (has_tools) check_clean_pdf(folder, *bytes);
    }
}

}  // namespace
}  // namespace seatload::test
