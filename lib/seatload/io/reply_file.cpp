// SPDX-License-Identifier: MIT
#include <seatload/io/reply_file.hpp>

#include <algorithm>
#include <array>

#include <seatload/core/text.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/reply_check.hpp>
#include <seatload/io/reply_fields.hpp>

namespace seatload::io {
namespace {

constexpr std::array<std::string_view, 18> kInstructions{
    "Your reply to an enquiry for compression springs, as a form to be filled in.",
    "",
    "Open it in any plain text editor, save it as plain text, and send it back. Write",
    "between the quotes that stand there: unit_price = \"2.40\". What follows a # is a",
    "remark; the program that reads the form passes it over.",
    "",
    "- Leave a line empty (\"\") where you have no answer. An alternative without a unit",
    "  price counts as not quoted; you need not quote all.",
    "- Amounts are digits with a decimal point, without the currency; the currency",
    "  stands once, under [maker]. Dates are written year-month-day.",
    "- Lengths have their unit, \"0.80 mm\" or \"0.031 in\", and so has strength.",
    "- Under [offer.wire] write the wire you hold and would wind from, if it is not",
    "  that of the sheet; under [offer.changes] what you would have otherwise than on",
    "  the sheet. What the sheet lets you adjust you need not ask for.",
    "- To offer another quantity, copy a block [[offer.price]] and change it.",
    "- Tooling is paid once, a lot charge with each lot; write \"0\" where none is due.",
    "- Leave the lines under [enquiry] as they are.",
    "",
};

void write_instructions(TomlWriter& writer) {
    for (const std::string_view line : kInstructions) writer.comment(line);
}

template <class Visitor>
void write_answers(TomlWriter& writer, const Visitor& visitor) {
    AnswerWriter fields(writer);
    visitor(fields);
}

void write_quantity(TomlWriter& writer, int quantity) {
    if (quantity != 0)
        writer.entry("quantity", Form<int>::write(quantity));
    else
        writer.entry("quantity", Form<Answer<int>>::write({}), "pieces the price is for: 50");
}

void write_offer(TomlWriter& writer, const record::Offer& offer) {
    writer.next_table("offer");
    writer.entry("alternative", quoted_text(offer.alternative));
    write_answers(writer, [&](auto& f) { visit_offer_head(f, offer); });
    for (const record::Price& price : offer.prices) {
        writer.next_table("offer.price");
        write_quantity(writer, price.quantity);
        write_answers(writer, [&](auto& f) { visit_price(f, price); });
    }
    writer.table("offer.wire");
    write_answers(writer, [&](auto& f) { visit_held_wire(f, offer.wire); });
    writer.table("offer.changes");
    write_answers(writer, [&](auto& f) { visit_changes(f, offer.changes); });
}

template <class Visitor>
void read_answers(std::optional<Reader> table, const Visitor& visitor) {
    if (!table) return;
    AnswerReader fields(*table);
    visitor(fields);
}

/// Complains of a value that was met before.
template <class T>
void expect_first(Reader& table, std::string_view key, const T& value, std::vector<std::pair<T, Position>>& met,
                  const std::string& words) {
    const auto before = std::find_if(met.begin(), met.end(), [&](const auto& each) { return each.first == value; });
    if (before == met.end()) {
        met.emplace_back(value, table.at(key));
        return;
    }
    table.document().contradiction(table.at(key), "given-twice"_id, words + " stands here a second time",
                                   "keep one of the two", before->second, "it stands here too");
}

record::Price read_price(Reader& table) {
    record::Price price;
    const auto quantity = table.find<Answer<int>>("quantity", kPieces);
    price.quantity = quantity.value_or(Answer<int>{}).value.value_or(0);
    if (!table.has("quantity")) table.missing("quantity", "50");
    AnswerReader fields(table);
    visit_price(fields, price);
    if (quantity && !quantity->value && price.unit_price)
        table.error("quantity", "empty"_id, "it is not said how many pieces the price is for",
                    "write for example quantity = 50");
    if (!price.unit_price && !fields.refused("unit_price") && (price.lot_charge || price.lead_time))
        table.document().warning(table.at(), "no-price"_id, "this quantity has no unit price and counts as not quoted");
    return price;
}

void expect_letter(Reader& table, const std::string& letter, const std::vector<std::string>& known) {
    if (letter.empty()) {
        table.error("alternative", "empty"_id, "the letter of the alternative is wanted",
                    "write for example alternative = \"A\"");
        return;
    }
    if (known.empty() || std::find(known.begin(), known.end(), letter) != known.end()) return;
    const std::string meant = did_you_mean(letter, known);
    table.error("alternative", "unknown-offer"_id, '"' + letter + "\" was not enquired for",
                (meant.empty() ? "" : meant + ' ') + "enquired for were: " + join(known, ", "));
}

record::Offer read_offer(Reader& table, const std::vector<std::string>& known,
                         std::vector<std::pair<std::string, Position>>& letters) {
    record::Offer offer;
    AnswerReader fields(table);
    fields.words("alternative", offer.alternative, "");
    expect_letter(table, offer.alternative, known);
    if (!offer.alternative.empty()) table.call("offer " + offer.alternative);
    if (!offer.alternative.empty())
        expect_first(table, "alternative", offer.alternative, letters, "alternative " + offer.alternative);
    visit_offer_head(fields, offer);
    std::vector<std::pair<int, Position>> quantities;
    for (Reader& price : table.tables("price")) {
        const record::Price read = read_price(price);
        if (read.quantity == 0 && !read.unit_price) continue;  // left blank
        offer.prices.push_back(read);
        if (read.quantity == 0) continue;  // complained of
        expect_first(price, "quantity", read.quantity, quantities, std::to_string(read.quantity) + " pieces");
    }
    read_answers(table.table("wire"), [&](auto& f) { visit_held_wire(f, offer.wire); });
    read_answers(table.table("changes"), [&](auto& f) { visit_changes(f, offer.changes); });
    return offer;
}

bool has_amount(const record::Reply& reply) {
    const record::Charges& c = reply.charges;
    const bool charged = c.packing || c.carriage || c.certificate || c.least_order;
    return charged || reply.is_quoted() || std::any_of(reply.offers.begin(), reply.offers.end(), [](const auto& offer) {
               return offer.tooling.has_value();
           });
}

/// What a reply must say of its maker once there are amounts in it.
void expect_maker(Document& document, const record::Reply& reply) {
    const bool currency_is_wrong = document.find("maker.currency") != nullptr &&
                                   !is_unanswered(*document.find("maker.currency")) && reply.maker.currency.empty();
    if (!has_amount(reply)) return;
    if (reply.maker.currency.empty() && !currency_is_wrong)
        document.error(document.at("maker.currency"), "no-currency"_id, "the amounts of this reply have no currency",
                       "write under [maker] for example: currency = \"EUR\"");
    if (reply.maker.firm.empty())
        document.error(document.at("maker.firm"), "empty"_id, "the reply does not say whose it is",
                       "write under [maker] for example: firm = \"Spring works\"");
}

void expect_dates_in_order(Document& document, const record::Maker& maker) {
    if (maker.date.empty() || maker.valid_until.empty() || maker.date <= maker.valid_until) return;
    document.contradiction(document.at("maker.valid_until"), "date-out-of-order"_id,
                           "the offer ends before it was made", "", document.at("maker.date"), "the date of the reply");
}

record::Reply read_reply_tables(Reader& root, const record::Enquired* asked) {
    record::Reply reply;
    if (!root.has("format")) root.missing("format", quoted_text(kReplyFormat));
    if (!read_format(root, {kReplyFormat})) return reply;
    if (auto table = root.table("enquiry")) {
        FieldReader fields(*table);
        visit_enquired(fields, reply.enquiry);
    }
    read_answers(root.table("maker"), [&](auto& f) { visit_maker(f, reply.maker); });
    read_answers(root.table("charges"), [&](auto& f) { visit_charges(f, reply.charges); });
    std::vector<std::pair<std::string, Position>> letters;
    const std::vector<std::string>& known = asked != nullptr ? asked->alternatives : reply.enquiry.alternatives;
    for (Reader& offer : root.tables("offer")) reply.offers.push_back(read_offer(offer, known, letters));
    if (asked != nullptr) expect_answer_to(root.document(), reply.enquiry, *asked);
    if (!root.has("offer"))
        root.document().error(root.at(), "no-offer"_id, "the reply holds no offer",
                              "add a line [[offer]] and below it alternative = \"A\"");
    return reply;
}

}  // namespace

std::string write_reply(const record::Reply& reply) {
    TomlWriter writer;
    write_instructions(writer);
    writer.entry("format", quoted_text(kReplyFormat));
    writer.table("enquiry");
    {
        FieldWriter fields(writer);
        visit_enquired(fields, reply.enquiry);
    }
    writer.table("maker");
    write_answers(writer, [&](auto& f) { visit_maker(f, reply.maker); });
    writer.table("charges");
    write_answers(writer, [&](auto& f) { visit_charges(f, reply.charges); });
    for (const record::Offer& offer : reply.offers) write_offer(writer, offer);
    return std::move(writer).text();
}

Result<record::Reply> read_reply(std::string_view text, const std::string& file_name, const record::Enquired* asked) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    record::Reply reply;
    {
        Reader root(document);
        reply = read_reply_tables(root, asked);
    }
    expect_maker(document, reply);
    expect_dates_in_order(document, reply.maker);
    if (document.has_error()) return document.diagnostics();
    return {std::move(reply), document.diagnostics()};
}

}  // namespace seatload::io
