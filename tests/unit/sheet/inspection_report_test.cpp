// SPDX-License-Identifier: MIT
#include <seatload/sheet/inspection_report.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/inspection_limits.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "drawn_plot.hpp"
#include "layout_check.hpp"
#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

using inspection::Kind;
using inspection::Role;

constexpr double kDrawnToWithin = 0.01;  ///< of the plot's height, read off a drawing with a rule

sheet::Facts facts_of(const record::Spec& spec) {
    auto facts = sheet::facts(spec, grade_of(spec), tolerances(), paper());
    REQUIRE(facts.has_value());
    return std::move(facts).value();
}

/// An invented lot: the loads of a spec, off by so much from piece to piece, the last piece far off when `is_bad`.
inspection::LotInspection lot_of(const record::Spec& spec, int pieces, bool is_bad) {
    const sheet::Facts facts = facts_of(spec);
    inspection::Samples s;
    s.name = "first delivery";
    s.date = "2026-12-14";
    s.maker = "Maker A";
    s.lot_size = pieces;
    s.treatment = "heat";
    s.conditions = "24 h at 120 °C";
    const auto characteristics = sheet::inspected(facts);
    for (int i = 0; i < pieces; ++i) {
        inspection::Piece piece{std::to_string(i + 1), {}, {}, {}};
        for (const inspection::Characteristic& c : characteristics) {
            const double room = c.limits.least && c.limits.most ? *c.limits.most - *c.limits.least : 0.1;
            const double sway = 0.01 * ((i * 7) % 11 - 5);
            // wire that the maker chose lies in its range, whose end may be the drawn one
            const bool is_wire = c.kind == Kind::wire_diameter && c.limits.least && c.limits.most;
            const double about = is_wire ? 0.5 * (*c.limits.least + *c.limits.most) : c.nominal;
            piece.values[c.kind] = std::abs(about + sway * room);
            s.expanded[c.kind] = 0.05 * room;
        }
        if (is_bad && i + 1 == pieces) piece.values[Kind::seated_load] *= 1.5;
        if (i < 3) piece.after[Kind::seated_load] = 0.98 * piece.values[Kind::seated_load];
        s.pieces.push_back(piece);
    }
    return inspection::inspect(s, characteristics, {true, pieces, 0, 1, std::nullopt, {}});
}

std::vector<sheet::Drawing> pages_of(const record::Spec& spec, const inspection::LotInspection& lot,
                                     sheet::PaperSize size = sheet::PaperSize::a4) {
    inspection::Forecast forecast;
    forecast.loads = {inspection::LoadForecast{in_newton(spec.seated.nominal), 0.05, 0.3},
                      inspection::LoadForecast{in_newton(spec.full_travel.nominal), 0.06, 0.4}};
    forecast.share_good = 0.99;
    forecast.load_loss = 0.06;
    const auto pages = sheet::inspection_report({lot, spec, std::string(64, 'a'), forecast, paper().words, size});
    for (const Diagnostic& d : pages.error()) UNSCOPED_INFO(d.message);
    REQUIRE(pages.has_value());
    return *pages;
}

TEST_CASE("a lot is held to the numbers that its sheet prints", "[inspection]") {
    for (const Specimen& one : specimens()) {
        INFO(one.name);
        const std::string words = sheet_words(one.spec);
        for (const inspection::Characteristic& c : sheet::inspected(facts_of(one.spec))) {
            if (c.role != Role::load) continue;
            const record::LoadAtLength& load = c.kind == Kind::seated_load ? one.spec.seated : one.spec.full_travel;
            INFO(key(c.kind));
            // inwards of what was ordered, by less than the last digit printed
            const double least = in_newton(load.nominal - load.minus), most = in_newton(load.nominal + load.plus);
            CHECK(*c.limits.least >= least - 1e-6);
            CHECK(*c.limits.most <= most + 1e-6);
            CHECK(*c.limits.least - least < 0.0011);
            CHECK(most - *c.limits.most < 0.0011);
            CHECK_THAT(words, ContainsSubstring(shortest(*c.limits.least)));
            CHECK_THAT(words, ContainsSubstring(shortest(*c.limits.most)));
        }
    }
}

TEST_CASE("what the maker may alter is held to its bound alone, what he may not to its tolerance", "[inspection]") {
    const auto find = [](const record::Spec& spec, Kind kind) {
        for (const inspection::Characteristic& c : sheet::inspected(facts_of(spec)))
            if (c.kind == kind) return c;
        FAIL("not inspected");
        return inspection::Characteristic{};
    };
    record::Spec spec = specimen(latch());
    const auto kept = find(spec, Kind::outside_diameter);
    CHECK(kept.role == Role::dimension);
    // De 8.2 mm; grade 2, D 7.4 mm, w 9.25: 0.30 mm (DIN 2095 table, seen)
    CHECK_THAT(*kept.limits.least, WithinAbs(7.9, 1e-9));
    CHECK_THAT(*kept.limits.most, WithinAbs(8.5, 1e-9));
    spec.adjustable = {record::Adjustable::free_length, record::Adjustable::coils_and_diameter};
    const auto bound = find(spec, Kind::outside_diameter);
    CHECK_FALSE(bound.limits.least.has_value());
    CHECK_THAT(*bound.limits.most, WithinAbs(8.5, 1e-9));
    // 9.5 coils, two of them closed: 7.5 active, half a turn over; its sheet orders the tips 180 deg +-20 deg apart, as
    // "on a sliding seat the tips stand half a turn apart" holds it to.
    const auto coils = find(spec, Kind::total_coils);
    CHECK(coils.whole_turns_free);
    CHECK_THAT(*coils.limits.least, WithinAbs(9.5 - 20.0 / 360.0, 1e-6));
    CHECK_THAT(*coils.limits.most, WithinAbs(9.5 + 20.0 / 360.0, 1e-6));
    // 0.05 of L0 = 19.3 mm is 0.965 mm, printed to hundredths inwards
    CHECK_THAT(*find(spec, Kind::squareness).limits.most, WithinAbs(0.96, 1e-9));
}

TEST_CASE("a free length that only closer tips allow is a further bound beside the nearer one", "[inspection]") {
    record::Spec spec = specimen(latch());
    for (record::LoadAtLength* load : {&spec.seated, &spec.full_travel}) load->plus = load->minus = 2.0 * newton;
    const sheet::Facts facts = facts_of(spec);
    REQUIRE(facts.closer_tips.has_value());
    for (const inspection::Characteristic& c : sheet::inspected(facts)) {
        if (c.kind != Kind::free_length) continue;
        CHECK(c.role == Role::condition);
        CHECK(c.limits.most == in_mm(*facts.longest_free_length));
        REQUIRE(c.further_by_tips.has_value());
        CHECK(c.further_by_tips->most == in_mm(facts.closer_tips->longest_free_length));
        CHECK_THAT(c.further_by_tips->degrees, WithinAbs(360.0 * facts.closer_tips->turns, 1e-9));
        return;
    }
    FAIL("no free length");
}

TEST_CASE("small lots are measured in full, larger ones as their sheet offers", "[inspection]") {
    record::Spec spec = specimen(latch());
    CHECK(sheet::usual_plan(spec, 1000).every_piece);  // its sheet says so, for its quantities
    spec.quantities = {1000};
    CHECK(sheet::usual_plan(spec, 150).every_piece);
    CHECK_FALSE(sheet::usual_plan(spec, 151).every_piece);
    CHECK(sheet::usual_plan(spec, 151).aql == 1.0);
}

TEST_CASE("no text of an inspection report overlaps another, leaves the frame or is crossed by a line",
          "[inspection]") {
    for (const bool is_bad : {false, true})
        for (const auto size : {sheet::PaperSize::a4, sheet::PaperSize::letter})
            for (const int pieces : {1, 2, 20, 150}) {
                const record::Spec spec = specimen(latch());
                const auto pages = pages_of(spec, lot_of(spec, pieces, is_bad), size);
                for (std::size_t i = 0; i < pages.size(); ++i) {
                    INFO((is_bad ? "bad, " : "good, ") << pieces << " pieces, page " << i + 1);
                    CHECK(join(layout_faults(pages[i]), "\n") == "");
                }
            }
}

TEST_CASE("the run chart shows each value where it was measured, and the limits where they are", "[inspection]") {
    const record::Spec spec = specimen(latch());
    const inspection::LotInspection lot = lot_of(spec, 20, false);
    const auto pages = pages_of(spec, lot);
    const inspection::Judged& seated = lot.characteristics.front();
    const auto with_plots =
        std::find_if(pages.begin(), pages.end(), [](const sheet::Drawing& p) { return !drawn_plots(p).empty(); });
    REQUIRE(with_plots != pages.end());
    const sheet::Drawing& page = *with_plots;
    const DrawnPlot plot = drawn_plots(page).at(0);
    const auto discs = discs_in(page, plot);
    REQUIRE(discs.size() == seated.values.size());
    const double height = plot.vertical(plot.top) - plot.vertical(plot.bottom);
    for (std::size_t i = 0; i < discs.size(); ++i) {
        CHECK_THAT(plot.value(discs[i]).x, WithinAbs(static_cast<double>(i + 1), 0.1));
        CHECK_THAT(plot.value(discs[i]).y, WithinAbs(seated.values[i], kDrawnToWithin * height));
    }
    std::vector<double> limits;
    for (const sheet::Path& line : lines_in(page, plot, sheet::LineKind::wide))
        limits.push_back(plot.vertical(line.front().y));
    const inspection::Limits& expected = seated.characteristic.limits;
    for (const double limit : {*expected.least, *expected.most})
        CHECK(std::any_of(limits.begin(), limits.end(),
                          [&](double drawn) { return std::abs(drawn - limit) <= kDrawnToWithin * height; }));
}

TEST_CASE("the report tells the verdict with its reason, and every piece", "[inspection]") {
    const record::Spec spec = specimen(latch());
    const std::string good = words_on(pages_of(spec, lot_of(spec, 20, false)));
    CHECK_THAT(good, ContainsSubstring("The lot is accepted\n"));
    inspection::LotInspection untold = lot_of(spec, 20, false);
    for (inspection::Piece& piece : untold.samples.pieces) {
        piece.values.erase(Kind::total_coils);
        piece.values.erase(Kind::free_length);
    }
    untold = inspection::inspect(untold.samples, sheet::inspected(facts_of(spec)), untold.plan);
    const std::string conditional = words_on(pages_of(spec, untold));
    CHECK_THAT(conditional, ContainsSubstring("The lot is accepted on condition that its "));
    CHECK_THAT(conditional, ContainsSubstring("end tips stand within 180° ±"));
    const std::string bad = words_on(pages_of(spec, lot_of(spec, 20, true)));
    CHECK_THAT(bad, ContainsSubstring("The lot is rejected"));
    CHECK_THAT(bad, ContainsSubstring("1 piece outside"));
    for (const char* words :
         {"A spring stores energy", "All pieces", "to the maker, and agree", "seated load F1", "had lost 2"})
        CHECK_THAT(bad, ContainsSubstring(words));
}

TEST_CASE("the report speaks of end tips and of the spec as the sheet does, and leaves room to sign", "[inspection]") {
    record::Spec spec = specimen(latch());
    spec.identity.approver = "M. Brook of the drawing office";
    const std::string words = words_on(pages_of(spec, lot_of(spec, 20, false)));
    // What the sheet orders of a half-turn spring on a sliding seat: see "what the maker may alter is held ...".
    CHECK_THAT(joined(sheet_words(spec)), ContainsSubstring("180° ± 20°"));
    CHECK_THAT(words, ContainsSubstring("end tips apart\n180° ± 20°\n"));
    CHECK(words.find("9.44") == std::string::npos);  // 9.5 turns less 20/360
    CHECK_THAT(joined(words), ContainsSubstring("“Spec attached, SHA-256”: " + std::string(20, 'a')));
    CHECK(words.find("M. Brook") == std::string::npos);
}

}  // namespace
}  // namespace seatload::test
