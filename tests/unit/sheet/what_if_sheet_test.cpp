// SPDX-License-Identifier: MIT
#include <seatload/sheet/what_if_sheet.hpp>

#include <limits>

#include <support/check.hpp>

#include "drawn_plot.hpp"
#include "layout_check.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

constexpr double kDrawnToWithin = 0.01;  ///< of the plot's height, read off a drawing with a rule

/// Invented rows of a bore of 8 to 9 mm, stated as 8.5 mm: nothing fits the smallest, and the last has no load limit.
std::vector<sizing::WhatIfRow> rows() {
    const sizing::BestSpring best{"", wire::Evidence::standard, {}, {}};
    std::vector<sizing::WhatIfRow> made{{8.0, false, 1000, 0, {}},
                                        {8.25, false, 1000, 20, best},
                                        {8.5, true, 1000, 45, best},
                                        {9.0, false, 1000, 100, best}};
    made[1].best->merit = {0.3, 0.15, 1.0};
    made[2].best->merit = {0.8, 0.04, 1.0};
    made[3].best->merit = {std::numeric_limits<double>::infinity(), 0.5, 1.0};
    return made;
}

demand::Requirement requirement() {
    demand::Requirement r;
    r.identity.engine = "Ottermere M14";
    r.identity.position = "ahead latch plunger";
    r.space.bore = demand::Fit{8.5 * mm, 8.55 * mm, 8.5 * mm};
    r.space.seated_height = 15.0 * mm;
    r.space.full_travel_height = 9.0 * mm;
    return r;
}

std::vector<sheet::Drawing> pages_of(const demand::Requirement& r, sheet::PaperSize size = sheet::PaperSize::a4) {
    const auto question = sizing::read_what_if("bore=8 mm..9 mm", r);
    REQUIRE(question.has_value());
    const auto made = rows();
    const auto pages = sheet::what_if_sheet({r, *question, made, paper().words, size});
    REQUIRE(pages.has_value());
    return *pages;
}

void check_discs(const sheet::Drawing& page, std::size_t plot_index, const std::vector<sheet::Point>& expected) {
    const DrawnPlot plot = drawn_plots(page).at(plot_index);
    const auto discs = discs_in(page, plot);
    INFO("plot " << plot_index);
    REQUIRE(discs.size() == expected.size());
    const double height = plot.vertical(plot.top) - plot.vertical(plot.bottom);
    for (std::size_t i = 0; i < discs.size(); ++i) {
        CHECK_THAT(plot.value(discs[i]).x, Catch::Matchers::WithinAbs(expected[i].x, kDrawnToWithin));
        CHECK_THAT(plot.value(discs[i]).y, Catch::Matchers::WithinAbs(expected[i].y, kDrawnToWithin * height));
    }
}

}  // namespace

TEST_CASE("a what-if sheet has a disc for each value where it stands in its three plots") {
    const auto pages = pages_of(requirement());
    REQUIRE(pages.size() == 1);
    REQUIRE(drawn_plots(pages[0]).size() == 3);
    check_discs(pages[0], 0, {{8.0, 0.0}, {8.25, 20.0}, {8.5, 45.0}, {9.0, 100.0}});
    check_discs(pages[0], 1, {{8.25, 0.3}, {8.5, 0.8}});
    check_discs(pages[0], 2, {{8.25, 85.0}, {8.5, 96.0}, {9.0, 50.0}});
}

TEST_CASE("a what-if sheet marks the stated value by a dashed upright line in every plot") {
    const auto pages = pages_of(requirement());
    for (const DrawnPlot& plot : drawn_plots(pages.at(0))) {
        const auto dashed = lines_in(pages[0], plot, sheet::LineKind::hidden);
        REQUIRE(dashed.size() == 1);
        CHECK_THAT(plot.horizontal(dashed[0].front().x), Catch::Matchers::WithinAbs(8.5, kDrawnToWithin));
        CHECK_THAT(plot.horizontal(dashed[0].back().x), Catch::Matchers::WithinAbs(8.5, kDrawnToWithin));
    }
    const std::string words = words_on(pages);
    CHECK(words.find("8.5 mm") != std::string::npos);
    CHECK(words.find("from memory") != std::string::npos);
}

TEST_CASE("a what-if sheet is one page without a fault of layout on either paper") {
    for (const auto size : {sheet::PaperSize::a4, sheet::PaperSize::letter}) {
        const auto pages = pages_of(requirement(), size);
        REQUIRE(pages.size() == 1);
        CHECK(layout_faults(pages[0]) == std::vector<std::string>{});
    }
}

TEST_CASE("a what-if sheet refuses a title that is not UTF-8") {
    demand::Requirement r = requirement();
    const auto question = sizing::read_what_if("bore=8 mm..9 mm", r);
    REQUIRE(question.has_value());
    r.identity.engine = "M\xb0";
    const auto made = rows();
    CHECK(!sheet::what_if_sheet({r, *question, made, paper().words}).has_value());
    CHECK(!sheet::what_if_sheet_pdf({r, *question, made, paper().words}).has_value());
}

}  // namespace seatload::test
