// SPDX-License-Identifier: MIT
#include <seatload/record/quotation.hpp>

#include <seatload/record/chosen_spec.hpp>
#include <seatload/record/quotation_words.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sizing/spread.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;
using namespace seatload::record;

namespace {

Money whole_money(std::int64_t whole) { return Money{whole * 10'000}; }

EnquiredSpring enquired_latch() {
    demand::Requirement r;
    r.identity = {"Ottermere M14", "ahead latch plunger", "OM14-LAT-AHD", "A",
                  "2026-11-25",    "Ottermere Rebuilds",  "Workshop",     "M. Brook"};
    r.limits = demand::school_defaults(spring::School::en_13906);
    r.space.bore = demand::Fit{9.0 * mm, 9.05 * mm, 9.0 * mm};
    r.space.seated_height = 15.0 * mm;
    r.space.full_travel_height = 9.0 * mm;
    r.space.seats = demand::Seats::slides;
    r.seated_load = {4.8 * newton, 6.5 * newton};
    r.full_travel_load = {std::nullopt, 13.5 * newton};
    r.quantities = {20, 50, 100};
    r.wire.grades = {"EN10270-2-FDSiCr"};
    r.wire.diameters = {0.7 * mm};
    const sizing::Space space = sizing::search_space(r, test::wires());
    const auto best = sizing::spread(space, sizing::search(space, test::tolerances()), 1);
    return {specify(r, space, best.at(0), "A"), *test::wires().find("EN10270-2-FDSiCr")};
}

/// A reply in euros whose charges are all stated as nothing, valid through 2026.
NamedReply reply(const std::string& name, std::int64_t each_of_50) {
    NamedReply out{name, {}};
    out.reply.maker.firm = name;
    out.reply.maker.currency = "EUR";
    out.reply.maker.date = "2026-12-01";
    out.reply.maker.valid_until = "2026-12-31";
    out.reply.charges = {whole_money(0), whole_money(0), whole_money(0), {}, Share{0.0}, Share{0.0}};
    Offer offer;
    offer.alternative = "A";
    offer.tooling = whole_money(0);
    offer.prices = {{50, whole_money(each_of_50), whole_money(0), LeadTime{2, LeadUnit::weeks}}};
    out.reply.offers = {offer};
    return out;
}

Comparison compared(std::vector<NamedReply> replies, const std::string& date = "2026-12-15") {
    static const EnquiredSpring spring = enquired_latch();
    Enquired asked;
    asked.alternatives = {"A"};
    asked.correspondence.reply_by = "2026-12-11";
    ComparisonTerms terms{50, date, {"EUR", {}}, false};
    terms.exchange.rates = {{"GBP", "1.25", Exact(5) / 4}};
    auto all = compare(asked, {spring}, std::move(replies), terms, {test::wires(), test::tolerances()});
    REQUIRE(all.has_value());
    return std::move(all).value();
}

std::vector<std::string> order(const Comparison& all) {
    std::vector<std::string> names;
    for (const JudgedOffer& offer : all.offers)
        names.push_back(std::to_string(offer.rank) + ' ' + all.reply_of(offer).name + ": " +
                        std::string(word(offer.standing)));
    return names;
}

bool has_reason(const JudgedOffer& offer, std::string_view words) {
    for (const std::string& reason : offer.reasons)
        if (reason.find(words) != std::string::npos) return true;
    return false;
}

}  // namespace

TEST_CASE(
    "Offers that fit come by their cost, then open costs, expired ones, and what cannot be ordered without rank") {
    auto dear = reply("dear", 3);
    auto cheap = reply("cheap", 2);
    auto open = reply("open", 1);
    open.reply.charges.carriage.reset();
    auto expired = reply("expired", 1);
    expired.reply.maker.valid_until = "2026-12-14";
    auto fails = reply("fails", 1);
    fails.reply.offers[0].changes.free_length = 60.0 * mm;
    auto unknown = reply("unknown", 1);
    unknown.reply.offers[0].wire.grade = "whatever lies about";
    auto silent = reply("silent", 1);
    silent.reply.offers[0].prices[0].unit_price.reset();
    const Comparison all = compared({silent, unknown, fails, expired, open, dear, cheap});
    CHECK(order(all) == std::vector<std::string>{"1 cheap: in force", "2 dear: in force", "3 open: cost open",
                                                 "4 expired: expired", "0 unknown: cannot be judged", "0 fails: fails",
                                                 "0 silent: not quoted"});
    // 50 x 3 = 150, 50 x 2 = 100: 50 more, half as much again.
    CHECK(has_reason(all.offers[0], "the cheapest that fits"));
    CHECK(has_reason(all.offers[1], "50.00 EUR (50.0 %) dearer than the first"));
    CHECK(has_reason(all.offers[2], "carriage not stated"));
    CHECK(has_reason(all.offers[3], "expired on 2026-12-14"));
}

TEST_CASE("An offer holds on its last day, and without a date none is called expired") {
    auto last_day = reply("last day", 1);
    last_day.reply.maker.valid_until = "2026-12-15";
    CHECK(compared({last_day}).offers[0].standing == Standing::in_force);
    last_day.reply.maker.valid_until = "2020-01-01";
    CHECK(compared({last_day}, "").offers[0].standing == Standing::in_force);
}

TEST_CASE("An answer after the day asked for is marked, and one on that day is not") {
    auto late = reply("late", 1);
    late.reply.maker.date = "2026-12-12";
    auto in_time = reply("in time", 1);
    in_time.reply.maker.date = "2026-12-11";
    const Comparison all = compared({late, in_time});
    CHECK(all.offers[0].is_late);
    CHECK(has_reason(all.offers[0], "answered late, on 2026-12-12"));
    CHECK_FALSE(all.offers[1].is_late);
}

TEST_CASE("Amounts in another currency are compared at the stated rate") {
    // 50 x 2 GBP x 1.25 = 125 EUR, between 100 and 150.
    auto pounds = reply("pounds", 2);
    pounds.reply.maker.currency = "GBP";
    const Comparison all = compared({reply("dear", 3), pounds, reply("cheap", 2)});
    CHECK(order(all)[1] == "2 pounds: in force");
    CHECK(lot_text(all.offers[1].purchase->total) == "125.00");
    CHECK(exchange_words(all) == "1 GBP = 1.25 EUR");
}

TEST_CASE("The day springs can be here counts the lead time from the date given") {
    CHECK(compared({reply("x", 1)}).offers[0].here_by == "2026-12-29");  // 15th and two weeks
    CHECK(compared({reply("x", 1)}, "").offers[0].here_by.empty());
    CHECK(days_after("2028-02-28", 1) == "2028-02-29");  // a leap year of the Gregorian calendar
    CHECK(days_after("2026-12-31", 1) == "2027-01-01");
    CHECK(days_after("2026-02-30", 1).empty());
    CHECK(days_after("soon", 1).empty());
}

TEST_CASE("What a maker left open is named by what it is called on the form") {
    auto bare = reply("bare", 1);
    bare.reply.charges = {};
    bare.reply.offers[0].prices[0].lead_time.reset();
    bare.reply.offers[0].prices[0].lot_charge.reset();
    bare.reply.offers[0].tooling.reset();
    const auto open = compared({bare}).offers[0].not_stated;
    for (const char* name : {"packing", "carriage", "certificate", "duty", "tax", "lot charge", "tooling", "lead time",
                             "quotation number"})
        CHECK(std::find(open.begin(), open.end(), name) != open.end());
    CHECK(std::find(open.begin(), open.end(), "validity") == open.end());
}

TEST_CASE("Tax, set-up or tooling left open keeps an offer behind those priced in full, and marks its cost") {
    auto full = reply("full", 3);
    auto no_tax = reply("no tax", 2);
    no_tax.reply.charges.tax.reset();
    auto no_set_up = reply("no set-up", 2);
    no_set_up.reply.offers[0].prices[0].lot_charge.reset();
    no_set_up.reply.offers[0].tooling.reset();
    const Comparison all = compared({no_tax, no_set_up, full});
    CHECK(order(all) == std::vector<std::string>{"1 full: in force", "2 no tax: cost open", "3 no set-up: cost open"});
    CHECK(has_reason(all.offers[1], "costs at least this: tax not stated"));
    CHECK(has_reason(all.offers[2], "costs at least this: lot charge, tooling not stated"));
    CHECK(total_text(*all.offers[0].purchase) == "150.00");
    CHECK(total_text(*all.offers[1].purchase) == "100.00+");
    CHECK_FALSE(plus_words(all).empty());
    CHECK(plus_words(compared({full})).empty());
    CHECK(has_reason(compared({no_tax}).offers[0], "by what is stated alone"));
}

TEST_CASE("Duty left open marks an offer in another currency, and none at home") {
    auto home = reply("home", 3);
    auto abroad = reply("abroad", 1);
    abroad.reply.maker.currency = "GBP";
    home.reply.charges.duty.reset();
    abroad.reply.charges.duty.reset();
    CHECK(order(compared({abroad, home})) == std::vector<std::string>{"1 home: in force", "2 abroad: cost open"});
}

TEST_CASE("A load grade that the sheet asks for and the reply leaves open is a question to the maker") {
    EnquiredSpring spring = enquired_latch();
    spring.spec.seated.grade = 2;
    spring.spec.full_travel.grade = 2;
    const auto questions = [&](const NamedReply& from) {
        Enquired asked;
        asked.alternatives = {"A"};
        const auto all =
            compare(asked, {spring}, {from}, {50, "", {"EUR", {}}, false}, {test::wires(), test::tolerances()});
        REQUIRE(all.has_value());
        return all->offers[0].questions;
    };
    auto silent = reply("silent", 1);
    REQUIRE(questions(silent).size() == 1);
    CHECK(questions(silent)[0] ==
          "does he hold the loads to EN 15800 grade 2, as the sheet asks? His reply leaves load_grade open");
    auto answered = reply("answered", 1);
    answered.reply.offers[0].changes.load_grade = 1;
    CHECK(questions(answered).empty());
    auto unquoted = reply("unquoted", 1);
    unquoted.reply.offers[0].prices[0].unit_price.reset();
    CHECK(questions(unquoted).empty());
    spring.spec.seated.grade = 1;
    CHECK(questions(silent)[0] ==
          "does he hold the loads to EN 15800 grade 1 seated and 2 at full travel, as the sheet "
          "asks? His reply leaves load_grade open");
    spring.spec.seated.grade.reset();
    spring.spec.full_travel.grade.reset();
    CHECK(questions(silent).empty());
}

TEST_CASE("What nobody quoted is gathered in a line, with who quoted nothing") {
    CHECK(unquoted_words(compared({reply("one", 1)})).empty());
    auto silent = reply("silent", 1);
    silent.reply.offers[0].prices[0].unit_price.reset();
    CHECK(unquoted_words(compared({reply("one", 1), silent})) == "No price from: silent.");
    CHECK(tellings(compared({silent}).offers[0]).empty());
    Comparison all = compared({reply("one", 1)});
    all.enquiry.alternatives = {"A", "B", "C"};
    all.enquiry.quantities = {20, 50, 200};
    CHECK(unquoted_words(all) == "Nobody quoted: alternatives B, C; 20, 200 pieces.");
}

TEST_CASE("More pieces than needed are told with what fewer would cost") {
    auto breaks = reply("breaks", 2);
    breaks.reply.offers[0].prices.push_back({100, Money{9'000}, whole_money(0), {}});
    // 50 x 2.00 = 100.00; 100 x 0.90 = 90.00.
    const Comparison all = compared({breaks});
    CHECK(all.offers[0].purchase->pieces == 100);
    CHECK(has_reason(all.offers[0], "100 pieces cost less than 50 (90.00 EUR, not 100.00)"));
}

TEST_CASE("The spec of an offer without changes is the one enquired for, with the quantity bought") {
    const Comparison all = compared({reply("Maker A", 1)});
    const auto spec = chosen_spec(all, all.offers[0]);
    REQUIRE(spec.has_value());
    CHECK(spec->identity.revision == "A");
    CHECK(spec->identity.approver == "M. Brook");
    CHECK(spec->quantities == std::vector<int>{50});
    CHECK(spec->why.find("Maker A, alternative A") != std::string::npos);
    CHECK(spec->why.find("50.00 EUR") != std::string::npos);
}

TEST_CASE("A spec tells by which offer it was chosen, and nothing when its reasons are other words") {
    for (const char* quotation : {"", "C-4417", "4417 of May, quotation 2"})
        for (const char* date : {"", "2026-12-02"}) {
            CAPTURE(quotation, date);
            auto quoted = reply("Winders of Ottermere", 1);
            quoted.reply.maker.quotation = quotation;
            quoted.reply.maker.date = date;
            const Comparison all = compared({quoted});
            const auto spec = chosen_spec(all, all.offers[0]);
            REQUIRE(spec.has_value());
            const auto offer = chosen_offer(*spec);
            REQUIRE(offer.has_value());
            CHECK(offer->alternative == "A");
            CHECK(offer->quotation == quotation);
        }
    Spec spec;
    for (const char* why :
         {"", "chosen: ", "chosen: Maker A; fits", "as the winder, alternative B, quotation 7; fits"}) {
        spec.why = why;
        CHECK_FALSE(chosen_offer(spec).has_value());
    }
}

TEST_CASE("The spec of a changed spring is the next revision, with its changes and without an approver") {
    auto other = reply("Maker A", 1);
    other.reply.offers[0].wire.diameter = 0.75 * mm;
    const Comparison all = compared({other});
    REQUIRE(all.offers[0].spring.can_be_ordered());
    const auto spec = chosen_spec(all, all.offers[0]);
    REQUIRE(spec.has_value());
    CHECK(spec->identity.revision == "B");
    CHECK(spec->identity.date == "2026-12-15");
    CHECK(spec->identity.approver.empty());
    REQUIRE(spec->revisions.size() == 2);
    CHECK(spec->revisions[0] == demand::Revision{"A", "2026-11-25", "first issue", "Workshop"});
    CHECK(spec->revisions[1].index == "B");
    CHECK(spec->revisions[1].change.starts_with("d"));
    CHECK(spec->why.find("wire diameter d 0.75 mm instead of 0.70 mm") != std::string::npos);
    CHECK_FALSE(chosen_spec(compared({other}, ""), compared({other}, "").offers[0]).has_value());
    const Comparison early = compared({other}, "2026-11-24");
    CHECK_FALSE(chosen_spec(early, early.offers[0]).has_value());
}

TEST_CASE("An offer whose spring fails is not to be chosen, and the refusal says why") {
    auto fails = reply("fails", 1);
    fails.reply.offers[0].changes.free_length = 60.0 * mm;
    const Comparison all = compared({fails});
    const auto spec = chosen_spec(all, all.offers[0]);
    REQUIRE_FALSE(spec.has_value());
    CHECK(spec.error()[0].message.find("its spring fails") != std::string::npos);
}

TEST_CASE("An offer whose spring may rub says so in words, in the terms of its end tips") {
    const Comparison all = compared({reply("Maker A", 1)});
    const JudgedOffer& offer = all.offers.at(0);
    REQUIRE(offer.spring.evaluation.has_value());
    REQUIRE(offer.spring.evaluation->tips.has_value());
    const check::Tips& tips = *offer.spring.evaluation->tips;
    CHECK(offer.spring.lean.may_rub == !tips.is_enough());
    const bool is_told = tips.is_closer() || !tips.is_enough();
    std::string told;
    for (const Telling& each : tellings(offer))
        if (each.heading == "lean") told = each.words;
    CHECK(told == (is_told ? check::tips_in_words(tips) : ""));
    CHECK(is_told);
    CHECK((told.find("and rub") != std::string::npos) == offer.spring.lean.may_rub);
}
