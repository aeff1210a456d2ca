// SPDX-License-Identifier: MIT
#include <seatload/io/reply_file.hpp>

#include <seatload/core/text.hpp>
#include <seatload/io/reply_forms.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
using namespace seatload::io;

namespace {

record::Spec enquired_spec() {
    record::Spec spec;
    spec.identity = {"Ottermere M14", "ahead latch plunger",  "OT-14-0312", "B",
                     "2026-11-25",    "Harbour Engine Works", "J. Hale",    "M. Brook"};
    spec.title = "Compression spring, ahead latch plunger";
    spec.why = "softest that still holds";
    spec.quantities = {20, 50};
    return spec;
}

record::Reply blank() { return record::blank_reply(enquired_spec(), {"A", "B"}); }

/// A reply with every answer given, unlike in each place.
record::Reply full_reply() {
    record::Reply reply = blank();
    reply.enquiry.mark = "0f3c";
    reply.maker = {"Spring works \"Skala\"",
                   "Żaneta Øst",
                   "Q-26/118",
                   "2026-12-01",
                   "2027-02-28",
                   "EUR",
                   "ex works",
                   "EN 10204 3.1"};
    reply.charges = {record::Money{95000},  record::Money{0}, record::Money{350000},
                     record::Money{500000}, Share{0.035},     Share{0.2}};
    record::Offer& offer = reply.offers[0];
    offer.tooling = record::Money{1200000};
    offer.least_pieces = 25;
    offer.wire = {"EN 10270-1 SH", 0.75 * mm, 2150.0 * MPa};
    offer.changes = {8.45 * mm, 8.25, 21.3 * mm, spring::Ends::closed, 3, 1, 20.0, "unground ends\nsave a setting"};
    offer.prices[0] = {20, record::Money{24050}, record::Money{300000}, record::LeadTime{4, record::LeadUnit::weeks}};
    offer.prices[1] = {50, record::Money{3850}, record::Money{1}, record::LeadTime{1, record::LeadUnit::days}};
    reply.offers[1].prices.push_back(
        {200, record::Money{10000}, {}, record::LeadTime{15, record::LeadUnit::working_days}});
    return reply;
}

record::Reply read_reply_text(const std::string& text) {
    auto reply = read_reply(text, "x.toml");
    INFO(text);
    INFO(render(reply.error()));
    REQUIRE(reply.has_value());
    return std::move(reply).value();
}

/// The form with one line of it answered; the n-th (from 0) of that key.
std::string answered(std::string text, const std::string& key, const std::string& value, int n = 0) {
    std::size_t at = text.find('\n' + key + ' ');
    for (; n > 0; --n) at = text.find('\n' + key + ' ', at + 1);
    REQUIRE(at != std::string::npos);
    const std::size_t quotes = text.find("\"\"", at);
    REQUIRE(quotes < text.find('\n', at + 1));
    return text.replace(quotes, 2, value);
}

}  // namespace

TEST_CASE("A blank form reads back as nothing quoted yet, with the alternatives and quantities enquired for") {
    const record::Reply reply = read_reply_text(write_reply(blank()));
    CHECK_FALSE(reply.is_quoted());
    CHECK(reply.enquiry.number == "OT-14-0312");
    CHECK(reply.enquiry.revision == "B");
    CHECK(reply.enquiry.alternatives == std::vector<std::string>{"A", "B"});
    CHECK(reply.enquiry.quantities == std::vector<int>{20, 50});
    REQUIRE(reply.offers.size() == 2);
    for (const record::Offer& offer : reply.offers) {
        CHECK_FALSE(offer.wire.is_stated());
        CHECK_FALSE(offer.changes.is_stated());
        CHECK_FALSE(offer.tooling.has_value());
        REQUIRE(offer.prices.size() == 2);
        CHECK(offer.prices[1].quantity == 50);
        CHECK_FALSE(offer.prices[1].unit_price.has_value());
    }
    CHECK(read_reply(write_reply(blank()), "x.toml").error().empty());
}

TEST_CASE("Where no quantities are stated the form has a price for each alternative whose quantity is left open") {
    record::Spec spec = enquired_spec();
    spec.quantities.clear();
    const std::string form = write_reply(record::blank_reply(spec, {"A", "B"}));
    const auto blank_form = read_reply(form, "x.toml");
    REQUIRE(blank_form.has_value());
    CHECK(blank_form.error().empty());
    CHECK_FALSE(blank_form->is_quoted());
    std::string text = answered(form, "firm", "\"Maker A\"");
    text = answered(text, "currency", "\"EUR\"");
    text = answered(text, "unit_price", "\"2.40\"", 1);
    const auto unsaid = read_reply(text, "x.toml");
    REQUIRE(unsaid.error().size() == 1);
    CHECK(unsaid.error()[0].message ==
          "quantity of the first price of offer B: it is not said how many pieces the "
          "price is for");
    const record::Reply reply = read_reply_text(answered(text, "quantity", "\"50\"", 1));
    CHECK_FALSE(reply.offers[0].is_quoted());
    REQUIRE(reply.offers[1].prices.size() == 1);
    CHECK(reply.offers[1].prices[0].quantity == 50);
    CHECK(reply.offers[1].prices[0].unit_price == record::Money{24000});
}

TEST_CASE("A form tells a maker nothing but what is on the enquiry") {
    const std::string form = write_reply(blank());
    for (const char* ours : {"Ottermere", "softest", "J. Hale", "M. Brook", "Harbour"})
        CHECK(form.find(ours) == std::string::npos);
    for (const std::string_view line : split(form, '\n')) CHECK(length_in_code_points(line) <= 96);
}

TEST_CASE("A duty or tax of nothing needs no unit, as an amount needs none") {
    for (const char* nothing : {"\"0\"", "\" 0.00 \"", "\"0 %\"", "0"}) {
        const record::Reply reply = read_reply_text(answered(write_reply(blank()), "duty", nothing));
        REQUIRE(reply.charges.duty.has_value());
        CHECK(reply.charges.duty->value == 0.0);
    }
    CHECK_FALSE(read_reply(answered(write_reply(blank()), "duty", "\"5\""), "x.toml").has_value());
}

TEST_CASE("A reply with every answer given is read back as it was written") {
    const record::Reply given = full_reply();
    const std::string text = write_reply(given);
    const record::Reply reply = read_reply_text(text);
    CHECK(write_reply(reply) == text);
    CHECK(reply.enquiry.mark == "0f3c");
    CHECK(reply.maker.firm == given.maker.firm);
    CHECK(reply.maker.person == given.maker.person);
    CHECK(reply.maker.quotation == "Q-26/118");
    CHECK(reply.maker.date == "2026-12-01");
    CHECK(reply.maker.valid_until == "2027-02-28");
    CHECK(reply.maker.currency == "EUR");
    CHECK(reply.maker.delivery_terms == "ex works");
    CHECK(reply.maker.certificates == "EN 10204 3.1");
    CHECK(reply.charges.packing == record::Money{95000});
    CHECK(reply.charges.carriage == record::Money{0});
    CHECK(reply.charges.certificate == record::Money{350000});
    CHECK(reply.charges.least_order == record::Money{500000});
    CHECK(reply.charges.duty->value == 0.035);
    CHECK(reply.charges.tax->value == 0.2);
    const record::Offer& offer = reply.offers[0];
    CHECK(offer.tooling == record::Money{1200000});
    CHECK(offer.least_pieces == 25);
    CHECK(offer.wire.grade == "EN 10270-1 SH");
    CHECK(offer.wire.diameter == 0.75 * mm);
    CHECK(offer.wire.tensile_strength == 2150.0 * MPa);
    CHECK(offer.changes.outside_diameter == 8.45 * mm);
    CHECK(offer.changes.total_coils == 8.25);
    CHECK(offer.changes.free_length == 21.3 * mm);
    CHECK(offer.changes.ends == spring::Ends::closed);
    CHECK(offer.changes.load_grade == 3);
    CHECK(offer.changes.diameter_grade == 1);
    CHECK(offer.changes.tips_degrees == 20.0);
    CHECK(offer.changes.note == "unground ends\nsave a setting");
    CHECK(offer.prices[0].unit_price == record::Money{24050});
    CHECK(offer.prices[0].lot_charge == record::Money{300000});
    CHECK(offer.prices[0].lead_time == record::LeadTime{4, record::LeadUnit::weeks});
    CHECK(offer.prices[1].lead_time == record::LeadTime{1, record::LeadUnit::days});
    CHECK(reply.offers[1].is_quoted());
    CHECK(reply.offers[1].prices[2].lead_time == record::LeadTime{15, record::LeadUnit::working_days});
}

TEST_CASE("A form filled in by hand is read, whether a number stands in its quotes or without them") {
    std::string text = write_reply(blank());
    text = answered(text, "firm", "\"Maker A\"");
    text = answered(text, "currency", "\"eur\"");
    text = answered(text, "valid_until", "2027-02-28");
    text = answered(text, "unit_price", "\" 2.40 \"", 0);
    text = answered(text, "unit_price", "1.9", 1);
    text = answered(text, "total_coils", "\"8.5\"", 0);
    text = answered(text, "load_grade", "\"3\"", 0);
    text = answered(text, "total_coils", "9", 1);
    text = answered(text, "ends", "\"Closed\"", 1);
    text = answered(text, "tax", "\"20 %\"");
    const record::Reply reply = read_reply_text(text);
    CHECK(reply.maker.currency == "EUR");
    CHECK(reply.maker.valid_until == "2027-02-28");
    CHECK(reply.offers[0].prices[0].unit_price == record::Money{24000});
    CHECK(reply.offers[0].prices[1].unit_price == record::Money{19000});
    CHECK(reply.offers[0].changes.total_coils == 8.5);
    CHECK(reply.offers[0].changes.load_grade == 3);
    CHECK(reply.offers[1].changes.total_coils == 9.0);
    CHECK(reply.offers[1].changes.ends == spring::Ends::closed);
    CHECK(reply.charges.tax->value == 0.2);
    CHECK(reply.offers[0].is_quoted());
    CHECK_FALSE(reply.offers[1].is_quoted());
}

TEST_CASE("Lines and blocks that a maker deleted are answers he does not give") {
    const record::Reply reply = read_reply_text("format = \"seatload reply 1\"\n[[offer]]\nalternative = \"A\"\n");
    CHECK_FALSE(reply.is_quoted());
    REQUIRE(reply.offers.size() == 1);
    CHECK(reply.offers[0].prices.empty());
}

TEST_CASE("Amounts are exact, to the ten-thousandth") {
    using record::Money;
    const auto money = [](const Node& node) { return Form<Money>::read(node).value; };
    // 0.1 + 0.2 is 0.3 here, which it is not in binary fractions.
    CHECK(money({{}, std::string("0.1")})->ten_thousandths + money({{}, std::string("0.2")})->ten_thousandths ==
          money({{}, 0.3})->ten_thousandths);
    CHECK(money({{}, std::string("123456789.9999")}) == Money{1234567899999});
    CHECK(money({{}, std::int64_t{12}}) == Money{120000});
    for (const char* wrong :
         {"2,40", "-1", "1.00001", "1e3", ".5", "5.", "1 000", "2.40 EUR", "1234567890", "0x10", "€2"})
        CHECK_FALSE(money({{}, std::string(wrong)}).has_value());
    CHECK(record::money_text(Money{24000}) == "2.40");
    CHECK(record::money_text(Money{3850}) == "0.385");
    CHECK(record::money_text(Money{1}) == "0.0001");
    CHECK(record::money_text(Money{120000}) == "12.00");
}

TEST_CASE("A lead time in working days takes a week of the calendar for every five") {
    using record::LeadUnit;
    CHECK(record::calendar_days({4, LeadUnit::weeks}) == 28);
    CHECK(record::calendar_days({10, LeadUnit::days}) == 10);
    CHECK(record::calendar_days({15, LeadUnit::working_days}) == 21);
    CHECK(record::calendar_days({1, LeadUnit::working_days}) == 2);
}

TEST_CASE("A quantity with a lead time but no unit price is let pass with a warning") {
    const auto reply = read_reply(answered(write_reply(blank()), "lead_time", "\"4 weeks\""), "x.toml");
    REQUIRE(reply.has_value());
    REQUIRE(reply.error().size() == 1);
    CHECK_FALSE(has_error(reply.error()));
    CHECK_FALSE(reply->is_quoted());
}

TEST_CASE("A single changed letter of a filled form never crashes and never passes with an error") {
    const std::string sound = write_reply(full_reply());
    const std::size_t start = sound.find("format =");
    for (std::size_t at = start; at < sound.size(); ++at)
        for (const char letter : {'"', '[', '=', '\n', '#', '9', '-'}) {
            std::string changed = sound.substr(start);
            changed[at - start] = letter;
            const auto read = read_reply(changed, "x.toml");
            CHECK(read.has_value() != has_error(read.error()));
        }
}
