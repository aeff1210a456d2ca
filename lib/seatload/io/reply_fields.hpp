// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include <seatload/core/text.hpp>
#include <seatload/io/correspondence_fields.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/fields.hpp>
#include <seatload/io/reply_forms.hpp>
#include <seatload/io/spring_forms.hpp>
#include <seatload/io/tips_form.hpp>

namespace seatload::io {

inline constexpr Span kCoilCount{0.0, 10000.0, true, "more than 0 and at most 10000"};

// The field tables of a reply: each key once, for reading the form (AnswerReader, X) and writing it (AnswerWriter,
// const X). The remark behind a key is the question the maker reads.

/// Fills members from a form; an empty text is no answer.
class AnswerReader {
  public:
    explicit AnswerReader(Reader& reader) : reader_(reader) {}

    template <class T>
    void answer(std::string_view key, std::optional<T>& member, const Span& span, std::string_view) {
        if (auto found = reader_.find<Answer<T>>(key, span))
            member = std::move(found->value);
        else if (reader_.has(key))
            refused_.push_back(key);
    }
    void words(std::string_view key, std::string& member, std::string_view) {
        if (reader_.set(key, member)) member = std::string(trim(member));
    }
    /// Whether an answer stood there that could not be read and was complained of.
    bool refused(std::string_view key) const {
        return std::find(refused_.begin(), refused_.end(), key) != refused_.end();
    }

  private:
    Reader& reader_;
    std::vector<std::string_view> refused_;
};

/// Writes members as lines of a form, answered or not.
class AnswerWriter {
  public:
    explicit AnswerWriter(TomlWriter& writer) : writer_(writer) {}

    template <class T>
    void answer(std::string_view key, const std::optional<T>& member, const Span&, std::string_view question) {
        writer_.entry(key, Form<Answer<T>>::write({member}), question);
    }
    void words(std::string_view key, const std::string& member, std::string_view question) {
        writer_.entry(key, quoted_text(member), question);
    }

  private:
    TomlWriter& writer_;
};

template <class Fields, class Enquired>
void visit_enquired(Fields& f, Enquired& enquiry) {
    f.field("number", enquiry.number, kAny, "");
    f.field("revision", enquiry.revision, kAny, "");
    f.field("title", enquiry.title, kAny, "");
    f.field("alternatives", enquiry.alternatives, kAny, "");
    f.field("quantities", enquiry.quantities, kAtLeastOne, "pieces");
    visit_correspondence(f, enquiry.correspondence);
    f.field("mark", enquiry.mark, kAny, "of what was enquired for");
}

/// A text that is read and written by a form of its own.
template <class Worded, class Fields, class Text>
void answer_in_form(Fields& f, std::string_view key, Text& text, std::string Worded::*member,
                    std::string_view question) {
    std::optional<Worded> value;
    if (!text.empty()) {
        value.emplace();
        *value.*member = text;
    }
    f.answer(key, value, kAny, question);
    if constexpr (!std::is_const_v<Text>) text = value ? *value.*member : std::string{};
}

template <class Fields, class Maker>
void visit_maker(Fields& f, Maker& maker) {
    f.words("firm", maker.firm, "");
    f.words("person", maker.person, "who offers");
    f.words("quotation", maker.quotation, "your number of this offer");
    answer_in_form(f, "date", maker.date, &DateText::iso, "of this reply: 2026-11-25");
    answer_in_form(f, "valid_until", maker.valid_until, &DateText::iso, "2027-02-28");
    answer_in_form(f, "currency", maker.currency, &Currency::code, "of all amounts: EUR");
    f.words("delivery_terms", maker.delivery_terms, "");
    f.words("certificates", maker.certificates, "what comes with the lot");
}

template <class Fields, class Charges>
void visit_charges(Fields& f, Charges& charges) {
    f.answer("packing", charges.packing, kAny, "amount a lot; 0 when the prices hold it");
    f.answer("carriage", charges.carriage, kAny, "amount a lot; 0 when the prices hold it");
    f.answer("certificate", charges.certificate, kAny,
             "certificate of the wire, amount a lot; 0 when the prices hold it");
    f.answer("least_order", charges.least_order, kAny, "amount below which you take no order");
    f.answer("duty", charges.duty, kNotNegative, "share of the price: 3.5 %");
    f.answer("tax", charges.tax, kNotNegative, "share of the price: 20 %");
}

template <class Fields, class Offer>
void visit_offer_head(Fields& f, Offer& offer) {
    f.answer("tooling", offer.tooling, kAny, "paid once");
    f.answer("least_pieces", offer.least_pieces, kPieces, "the fewest you wind");
}

template <class Fields, class Wire>
void visit_held_wire(Fields& f, Wire& wire) {
    f.words("grade", wire.grade, "standard and grade");
    f.answer("diameter", wire.diameter, kSize, "0.80 mm");
    f.answer("tensile_strength", wire.tensile_strength, kPositive, "as on its certificate: 2100 MPa");
}

template <class Fields, class Changes>
void visit_changes(Fields& f, Changes& changes) {
    f.answer("outside_diameter", changes.outside_diameter, kSize, "8.40 mm");
    f.answer("total_coils", changes.total_coils, kCoilCount, "8.5");
    f.answer("free_length", changes.free_length, kSize, "21.0 mm");
    f.answer("ends", changes.ends, kAny, "closed and ground, closed, open, or open and ground");
    f.answer("load_grade", changes.load_grade, kGrade, "of EN 15800: 1, 2 or 3");
    f.answer("diameter_grade", changes.diameter_grade, kGrade, "of EN 15800, coil diameter: 1, 2 or 3");
    visit_tips(changes.tips_degrees, [&](auto& tips) {
        f.answer("tips", tips, kTipsApart, "end tips from half a turn apart, plus-minus: 20 deg");
    });
    f.words("note", changes.note, "anything else, in your words");
}

template <class Fields, class Price>
void visit_price(Fields& f, Price& price) {
    f.answer("unit_price", price.unit_price, kAny, "a piece: 2.40");
    f.answer("lot_charge", price.lot_charge, kAny, "for setting up, with each lot");
    f.answer("lead_time", price.lead_time, kAny, "4 weeks, or 20 days, or 15 working days");
}

}  // namespace seatload::io
