// SPDX-License-Identifier: MIT
#include <seatload/sheet/quotes_sheet.hpp>

#include <seatload/sizing/spread.hpp>
#include <support/check.hpp>

#include "drawn_plot.hpp"
#include "layout_check.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

using record::Money;

record::Offer offer_of(int lots) {
    record::Offer offer;
    offer.alternative = "A";
    offer.tooling = Money{0};
    offer.prices = {{50, Money{20'000}, Money{0}, record::LeadTime{2, record::LeadUnit::weeks}}};
    if (lots > 1) offer.prices.push_back({100, Money{15'000}, Money{0}, {}});
    return offer;
}

record::NamedReply reply(const std::string& firm) {
    record::NamedReply named{firm, {}};
    named.reply.maker.firm = firm;
    named.reply.maker.currency = "EUR";
    named.reply.maker.quotation = "Q-1";
    named.reply.charges = {Money{0}, Money{100'000}, Money{0}, {}, {}, Share{0.0}};
    named.reply.offers = {offer_of(2)};
    return named;
}

/// The best spring of one wire for an invented latch.
const record::Spec& fitting_spec() {
    static const record::Spec spec = [] {
        demand::Requirement r;
        r.identity = {"Ottermere M14", "ahead latch plunger",  "OT-14-0312", "A",
                      "2024-05-02",    "Harbour Engine Works", "J. Hale",    ""};
        r.limits = demand::school_defaults(spring::School::en_13906);
        r.space.bore = demand::Fit{9.0 * mm, 9.05 * mm, 9.0 * mm};
        r.space.seated_height = 15.0 * mm;
        r.space.full_travel_height = 9.0 * mm;
        r.seated_load = {4.8 * newton, 6.5 * newton};
        r.full_travel_load = {std::nullopt, 13.5 * newton};
        r.wire.grades = {"EN10270-2-FDSiCr"};
        r.wire.diameters = {0.7 * mm};
        const sizing::Space space = sizing::search_space(r, wires());
        return record::specify(r, space, sizing::spread(space, sizing::search(space, tolerances()), 1).at(0), "A");
    }();
    return spec;
}

/// Invented offers for it.
record::Comparison compared(std::vector<record::NamedReply> replies) {
    const record::Spec& spec = fitting_spec();
    record::Enquired asked;
    asked.title = spec.title;
    asked.alternatives = {"A"};
    const record::ComparisonTerms terms{50, "2026-12-15", {"EUR", {}}, false};
    auto all = record::compare(asked, {{spec, grade_of(spec)}}, std::move(replies), terms, {wires(), tolerances()});
    REQUIRE(all.has_value());
    return std::move(all).value();
}

std::vector<sheet::Drawing> pages_of(const record::Comparison& all, sheet::PaperSize size = sheet::PaperSize::a4) {
    const auto pages = sheet::quotes_sheet({all, paper().words, size});
    REQUIRE(pages.has_value());
    return *pages;
}

}  // namespace

TEST_CASE("the report on quotations has a mark where a piece of each lot costs what it costs") {
    const record::Comparison all = compared({reply("Maker A")});
    REQUIRE(all.offers.at(0).rank == 1);
    const auto pages = pages_of(all);
    const auto plots = drawn_plots(pages.at(0));
    REQUIRE(plots.size() == 1);
    const auto discs = discs_in(pages[0], plots[0]);
    REQUIRE(discs.size() == 2);
    // (50 x 2.00 + 10.00) / 50 = 2.20; (100 x 1.50 + 10.00) / 100 = 1.60; read off with a rule.
    CHECK_THAT(plots[0].value(discs[0]).x, Catch::Matchers::WithinAbs(50.0, 0.5));
    CHECK_THAT(plots[0].value(discs[0]).y, Catch::Matchers::WithinAbs(2.2, 0.02));
    CHECK_THAT(plots[0].value(discs[1]).x, Catch::Matchers::WithinAbs(100.0, 0.5));
    CHECK_THAT(plots[0].value(discs[1]).y, Catch::Matchers::WithinAbs(1.6, 0.02));
    const auto dashed = lines_in(pages[0], plots[0], sheet::LineKind::hidden);
    REQUIRE(dashed.size() == 1);
    CHECK_THAT(plots[0].horizontal(dashed[0].front().x), Catch::Matchers::WithinAbs(50.0, 0.5));
}

TEST_CASE("the report on quotations says what each offer costs, asks for and fails by, and whose judgement is wanted") {
    auto longer = reply("Maker B");
    longer.reply.offers[0].changes.free_length = 90.0 * mm;
    longer.reply.offers[0].changes.note = "we wind it longer";
    auto open = reply("Maker C");
    open.reply.charges.packing.reset();
    const std::string words = words_on(pages_of(compared({reply("Maker A"), longer, open})));
    for (const char* said : {"First choice: Maker A, alternative A", "Buy 50 for 110.00 EUR", "1 Maker A, A", "110.00",
                             "2 Maker C, A", "110.00+", "Maker B, A", "FAILS", "free length L0 90 mm",
                             "we wind it longer", "packing", "Local codes", "from memory"}) {
        CAPTURE(said);
        CHECK(words.find(said) != std::string::npos);
    }
}

TEST_CASE("the report on quotations is without a fault of layout, of few offers and of many, on either paper") {
    std::vector<record::NamedReply> many;
    for (int i = 0; i < 14; ++i) {
        many.push_back(reply("Spring works of Ottermere and Sons, branch " + std::to_string(i)));
        record::Maker& maker = many.back().reply.maker;
        maker.certificates = "EN 10204 3.1 of the wire, test report of the loads";
        maker.delivery_terms = "free to the goods door, unloaded by you";
        many.back().reply.offers[0].prices[0].unit_price = Money{1'234'567};
        many.back().reply.offers[0].changes.note = std::string(300, 'w') + ' ' + std::string(40, 'm');
    }
    for (const auto size : {sheet::PaperSize::a4, sheet::PaperSize::letter})
        for (const auto& replies : {std::vector{reply("Maker A")}, many})
            for (const sheet::Drawing& page : pages_of(compared(replies), size))
                CHECK(layout_faults(page) == std::vector<std::string>{});
}

TEST_CASE("the report on quotations refuses a firm that is not UTF-8, and one without a spring") {
    const record::Comparison wrong = compared({reply("M\xb0")});
    CHECK(!sheet::quotes_sheet({wrong, paper().words}).has_value());
    CHECK(!sheet::quotes_sheet_pdf({wrong, paper().words}).has_value());
    CHECK(!sheet::quotes_sheet({record::Comparison{}, paper().words}).has_value());
}

}  // namespace seatload::test
