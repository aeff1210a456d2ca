// SPDX-License-Identifier: MIT
#include <seatload/sheet/pressure_sheet.hpp>

#include <algorithm>
#include <set>

#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/pressure_plot.hpp>
#include <seatload/sheet/pressure_words.hpp>
#include <support/check.hpp>
#include <support/tool.hpp>

#include "drawn_plot.hpp"
#include "layout_check.hpp"
#include "plunger_specimens.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

using sheet::LineKind;

constexpr double kDrawnToWithin = 0.01;  ///< of what is read off a drawing with a rule
constexpr double kBarInMpa = 10.0;

std::vector<sheet::Drawing> pages_of(const PlungerSpecimen& s, sheet::PaperSize size = sheet::PaperSize::a4) {
    const auto pages = sheet::pressure_sheet({s.file, s.budget, paper().words, size});
    for (const Diagnostic& d : pages.error()) UNSCOPED_INFO(d.message);
    REQUIRE(pages.has_value());
    return *pages;
}

/// A spring of 12 N seated and 25 N at full travel on a plunger of 100 and 110 mm2 with 0.5 N of friction.
PlungerSpecimen modulating() {
    record::PlungerFile file = plain_plunger(100.0, 110.0, 0.3);
    file.spring = {demand::exactly(12.0 * newton), demand::exactly(25.0 * newton)};
    return plunger_specimen("modulating", file);
}

/// The ends of a curve of a kind, lift against pressure.
std::vector<std::pair<sheet::Point, sheet::Point>> curves(const sheet::Drawing& page, const DrawnPlot& plot,
                                                          LineKind kind) {
    std::vector<std::pair<sheet::Point, sheet::Point>> out;
    for (const sheet::Path& line : lines_in(page, plot, kind))
        if (line.size() > 10) out.emplace_back(plot.value(line.front()), plot.value(line.back()));
    return out;
}

TEST_CASE("no text of a pressure diagram overlaps another, leaves the frame or is crossed by a line", "[pressure]") {
    for (const PlungerSpecimen& specimen : plunger_specimens())
        for (const auto size : {sheet::PaperSize::a4, sheet::PaperSize::letter}) {
            const auto pages = pages_of(specimen, size);
            for (std::size_t i = 0; i < pages.size(); ++i) {
                INFO(specimen.name << (size == sheet::PaperSize::a4 ? ", A4" : ", Letter") << ", page " << i + 1);
                CHECK(join(layout_faults(pages[i]), "\n") == "");
            }
        }
}

TEST_CASE("the curves drawn are the statics of the plunger with the spring given", "[pressure]") {
    const auto page = pages_of(modulating()).front();
    const DrawnPlot plot = drawn_plots(page).at(0);
    // Worked by hand: (F + Ff)/A opening, (F - Ff)/A2 returning; 1 N/mm2 is 10 bar.
    const double crack = (12.0 + 0.5) / 100.0 * kBarInMpa;
    const auto opening = curves(page, plot, LineKind::wide);
    REQUIRE(opening.size() == 1);
    CHECK_THAT(opening[0].first.y, WithinRel((12.0 + 0.5) / 110.0 * kBarInMpa, kDrawnToWithin));
    CHECK_THAT(opening[0].second.y, WithinRel((25.0 + 0.5) / 110.0 * kBarInMpa, kDrawnToWithin));
    CHECK_THAT(opening[0].second.x, WithinRel(5.0, kDrawnToWithin));
    const auto closing = curves(page, plot, LineKind::hidden);
    REQUIRE(closing.size() == 1);
    CHECK_THAT(closing[0].first.y, WithinRel((12.0 - 0.5) / 110.0 * kBarInMpa, kDrawnToWithin));
    CHECK_THAT(closing[0].second.y, WithinRel((25.0 - 0.5) / 110.0 * kBarInMpa, kDrawnToWithin));
    // Both ends of a range are marked; here they are one.
    const auto cracks = discs_in(page, plot);
    REQUIRE(cracks.size() == 2);
    for (const sheet::Point& at : cracks) {
        CHECK_THAT(plot.vertical(at.y), WithinRel(crack, kDrawnToWithin));
        CHECK_THAT(plot.horizontal(at.x), WithinAbs(0.0, 1e-9));
    }
    for (const sheet::Point& at : rings_in(page, plot))
        CHECK_THAT(plot.vertical(at.y), WithinRel((12.0 - 0.5) / 110.0 * kBarInMpa, kDrawnToWithin));
    CHECK_THAT(words_on({page}), ContainsSubstring("opens as the pressure"));
}

TEST_CASE("the pressures a plunger is held to are level lines at their values", "[pressure]") {
    const auto page = pages_of(plunger_specimen("ahead", template_plunger("ahead_latch_plunger.toml"))).front();
    const DrawnPlot plot = drawn_plots(page).at(0);
    std::vector<double> levels;
    for (const sheet::Path& line : lines_in(page, plot, LineKind::narrow))
        if (line.size() == 2 && std::abs(line[0].x - plot.left) < 1e-9 && std::abs(line[1].x - plot.right) < 1e-9)
            levels.push_back(plot.vertical(line[0].y));
    std::sort(levels.begin(), levels.end());
    // As the file states them: residual, leak, hold open, release, mechanism.
    const std::vector<double> stated{0.1, 0.4, 1.3, 1.6, 2.5};
    REQUIRE(levels.size() == stated.size());
    for (std::size_t i = 0; i < stated.size(); ++i) CHECK_THAT(levels[i], WithinAbs(stated[i], 0.01));
    const std::string words = words_on({page});
    for (const char* phrase :
         {"pM 2.5 mechanism moves", "p 1.6 lowest release", "pH 1.3 lowest hold open", "pL 0.4 highest leak",
          "pR 0.1 highest residual", "opens, least loads", "returns, greatest loads", "how it moves", "snaps open"})
        CHECK_THAT(words, ContainsSubstring(phrase));
}

TEST_CASE("the columns of the loads end where the limits do", "[pressure]") {
    // With few limits, the columns stand on the page of the limits.
    const auto pages = pages_of(modulating());
    const auto is_column = [](const sheet::Item& item) {
        const auto* area = std::get_if<sheet::Area>(&item);
        return area != nullptr && area->grey == 0.75;
    };
    const auto page = std::find_if(pages.begin(), pages.end(), [&](const sheet::Drawing& each) {
        return std::any_of(each.items().begin(), each.items().end(), is_column);
    });
    REQUIRE(page != pages.end());
    const auto above = drawn_plots(*page);
    const double top = above.empty() ? page->height() : above.front().bottom - 20.0;
    // Each limit is a tick across its column, 0.8 mm longer on both sides; its load is read off the second plot's axis.
    const double seated_most = 0.3 * 100.0 - 0.5;
    const double full_most = 0.3 * 110.0 - 0.5;
    const double home = 0.01 * 110.0 + 0.5;
    std::vector<DrawnPlot::Tick> ticks;
    const auto& items = page->items();
    for (std::size_t i = 0; i + 1 < items.size(); ++i) {
        const auto* text = std::get_if<sheet::Text>(&items[i + 1]);
        const auto* line = std::get_if<sheet::Line>(&items[i]);
        if (text == nullptr || line == nullptr || text->align != sheet::Align::right || text->turn != 0.0) continue;
        const bool is_below = line->points.front().y < top;
        const bool is_tick = line->points.size() == 2 && line->points[0].y == line->points[1].y;
        const bool is_number = !text->words.empty() && std::isdigit(static_cast<unsigned char>(text->words[0])) != 0;
        if (is_below && is_tick && is_number && std::abs(line->points[0].x - line->points[1].x) < 1.3)
            ticks.push_back({line->points[0].y, std::stod(text->words)});
    }
    REQUIRE(ticks.size() > 2);
    const auto load = [&](double y) {
        const auto& a = ticks.front();
        const auto& b = ticks.back();
        return a.value + (y - a.at) / (b.at - a.at) * (b.value - a.value);
    };
    std::vector<std::pair<double, double>> columns;
    for (const sheet::Item& item : items) {
        if (!is_column(item)) continue;
        const auto* area = std::get_if<sheet::Area>(&item);
        columns.emplace_back(load(area->points[0].y), load(area->points[2].y));
    }
    REQUIRE(columns.size() == 2);
    CHECK_THAT(columns[0].first, WithinRel(home, kDrawnToWithin));
    CHECK_THAT(columns[0].second, WithinRel(seated_most, kDrawnToWithin));
    CHECK_THAT(columns[1].first, WithinRel(home, kDrawnToWithin));
    CHECK_THAT(columns[1].second, WithinRel(full_most, kDrawnToWithin));
}

TEST_CASE("every limit stands in the list and in the table, with formula, numbers, corner, source and trust",
          "[pressure]") {
    for (const PlungerSpecimen& specimen : plunger_specimens()) {
        INFO(specimen.name);
        std::string words = words_on(pages_of(specimen));
        std::replace(words.begin(), words.end(), '\n', ' ');
        for (const demand::BudgetLimit& limit : specimen.budget.limits) {
            CHECK_THAT(words, ContainsSubstring(std::string(limit.title)));
            CHECK_THAT(words, ContainsSubstring(limit.formula));
            CHECK_THAT(words, ContainsSubstring("= " + limit.numbers));
            CHECK_THAT(words, ContainsSubstring(sheet::pressure_number(in_newton(limit.value)) + " N"));
            CHECK_THAT(words, ContainsSubstring(std::string(limit.source)));
            for (const demand::CornerValue& corner : limit.corner)
                if (corner.is_range) CHECK_THAT(words, ContainsSubstring(corner.symbol + " " + corner.text));
        }
        for (const char* phrase : {"pressure diagram", "for our own use", "Caution", "Trust", "textbook"})
            CHECK_THAT(words, ContainsSubstring(phrase));
    }
}

TEST_CASE("bands that contradict themselves are drawn as they are, and said", "[pressure]") {
    std::size_t contradictory = 0;
    for (const PlungerSpecimen& specimen : plunger_specimens()) {
        INFO(specimen.name);
        std::string words = words_on(pages_of(specimen));
        std::replace(words.begin(), words.end(), '\n', ' ');
        const bool says_no = words.find("NO SPRING CAN DO IT") != std::string::npos;
        CHECK(says_no == !specimen.budget.is_possible());
        CHECK((words.find("opens, loads that hold") != std::string::npos) == says_no);
        for (const demand::Contradiction& c : specimen.budget.contradictions)
            CHECK_THAT(words, ContainsSubstring(c.ways_out));
        contradictory += says_no ? 1 : 0;
    }
    CHECK(contradictory == 4);
}

TEST_CASE("a spring given is judged by the limits it breaks", "[pressure]") {
    CHECK_THAT(words_on(pages_of(modulating())), ContainsSubstring("F1 12 N, F2 25 N: keeps every limit."));
    record::PlungerFile file = plain_plunger(100.0, 110.0, 0.3);
    // By hand: F1 at most 0.3*100 - 0.5 = 29.5 N, F2 at most 0.3*110 - 0.5 = 32.5 N and 33.5 N.
    file.spring = {demand::exactly(31.0 * newton), demand::exactly(33.0 * newton)};
    CHECK_THAT(words_on(pages_of(plunger_specimen("too strong", file))), ContainsSubstring("BREAKS limits 2, 5."));
}

TEST_CASE("symbols of the trade are set as letter and index, words are left alone", "[pressure]") {
    CHECK(sheet::with_symbols("F1 ≥ (1+mh)·pL·A1 − Ff") ==
          sheet::with_sub("F", "1") + " ≥ (1+" + sheet::with_sub("m", "h") + ")·" + sheet::with_sub("p", "L") + "·" +
              sheet::with_sub("A", "1") + " − " + sheet::with_sub("F", "f"));
    CHECK(sheet::with_symbols("atan μF") == "atan " + sheet::with_sub("μ", "F"));
    CHECK(sheet::with_symbols("the F12 pressure of pLs") == "the F12 pressure of pLs");
    CHECK(sheet::plain(sheet::with_symbols("A1 + η·(A2 − A1)")) == "A1 + η·(A2 − A1)");
}

TEST_CASE("what cannot be printed of a plunger is complained of, and text that is not UTF-8 is refused", "[pressure]") {
    record::PlungerFile file = plain_plunger(100.0, 110.0, 0.3);
    file.identity.position = "plunger 春";
    PlungerSpecimen specimen = plunger_specimen("odd", file);
    const auto warned = sheet::pressure_sheet({specimen.file, specimen.budget, paper().words});
    REQUIRE(warned.has_value());
    REQUIRE(warned.error().size() == 1);
    specimen.file.identity.owner = "\xFF";
    CHECK_FALSE(sheet::pressure_sheet({specimen.file, specimen.budget, paper().words}).has_value());
}

TEST_CASE("equal plungers give equal bytes, which qpdf and poppler find clean, with typefaces embedded", "[pressure]") {
    const ScratchFolder folder;
    const bool has_tools = has_pdf_tools({"qpdf", "pdffonts", "pdftotext", "pdfinfo"});
    for (const PlungerSpecimen& s : plunger_specimens()) {
        INFO(s.name);
        const auto bytes = sheet::pressure_sheet_pdf({s.file, s.budget, paper().words});
        REQUIRE(bytes.has_value());
        CHECK(*bytes == *sheet::pressure_sheet_pdf({s.file, s.budget, paper().words}));
        if (has_tools) check_clean_pdf(folder, *bytes);
    }
}

}  // namespace
}  // namespace seatload::test
