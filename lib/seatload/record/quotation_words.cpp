// SPDX-License-Identifier: MIT
#include <seatload/record/quotation_words.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/text.hpp>

namespace seatload::record {
namespace {

/// Tolerance room in the tenths it is compared in.
std::string room_text(double room) {
    return std::isinf(room) ? std::string("no load is limited") : fixed(sizing::room_in_tenths(room) / 10.0, 1);
}

std::string listed(const std::vector<Difference>& differences) {
    std::vector<std::string> words;
    for (const Difference& each : differences) words.push_back(each.words());
    return join(words, "; ");
}

std::string spring_words(const CounterOffer& spring) {
    std::string words(word(spring.fit));
    if (spring.fit == Fit::as_enquired) return words + ": tolerance room " + room_text(spring.merit.tolerance_room);
    if (spring.can_be_ordered())
        words += ": tolerance room " + room_text(spring.merit.tolerance_room) + ", as enquired " +
                 room_text(spring.enquired.tolerance_room);
    if (!spring.adjusted.empty())
        words += "; with " + listed(spring.adjusted) + ", which the sheet lets the maker adjust";
    return words;
}

void add(std::vector<Telling>& out, const std::string& heading, const std::string& words) {
    if (!words.empty()) out.push_back({heading, words});
}

bool has_price_for(const Offer& offer, int pieces) {
    return std::any_of(offer.prices.begin(), offer.prices.end(),
                       [&](const Price& price) { return price.quantity == pieces && price.unit_price; });
}

/// Letters enquired for that no reply has a price for.
std::vector<std::string> letters_nobody_quoted(const Comparison& all) {
    std::vector<std::string> letters;
    for (const std::string& letter : all.enquiry.alternatives)
        if (std::none_of(all.offers.begin(), all.offers.end(),
                         [&](const JudgedOffer& o) { return o.offer.alternative == letter && o.offer.is_quoted(); }))
            letters.push_back(letter);
    return letters;
}

/// Quantities enquired for that no reply has a price for.
std::vector<std::string> quantities_nobody_quoted(const Comparison& all) {
    std::vector<std::string> quantities;
    for (const int pieces : all.enquiry.quantities)
        if (std::none_of(all.offers.begin(), all.offers.end(),
                         [&](const JudgedOffer& o) { return has_price_for(o.offer, pieces); }))
            quantities.push_back(std::to_string(pieces));
    return quantities;
}

const char* plus(const std::vector<std::string>& open) { return open.empty() ? "" : "+"; }

}  // namespace

std::vector<Telling> tellings(const JudgedOffer& offer) {
    const CounterOffer& spring = offer.spring;
    std::vector<Telling> out;
    if (!offer.offer.is_quoted()) {
        for (const std::string& each : spring.remarks) add(out, "remark", each);
        return out;
    }
    add(out, "place", join(offer.reasons, "; "));
    add(out, "asks for", listed(spring.asked));
    if (spring.fit != Fit::unknown && (spring.fit != Fit::fails || !spring.adjusted.empty()))
        add(out, "spring", spring_words(spring));
    for (const Failure& each : spring.failures) add(out, "FAILS", each.name + ": " + each.reason);
    if (spring.can_be_ordered()) add(out, "lean", spring.lean.words);
    for (const std::string& each : spring.missing) add(out, "missing", each);
    for (const std::string& each : spring.remarks) add(out, "remark", each);
    add(out, "not stated", join(offer.not_stated, ", "));
    for (const std::string& each : offer.questions) add(out, "to ask", each);
    return out;
}

std::string_view short_word(const JudgedOffer& offer) {
    if (offer.standing == Standing::not_quoted) return "-";
    if (offer.standing == Standing::expired) return "expired";
    if (offer.spring.can_be_ordered() && offer.spring.lean.may_rub) return "may rub";
    switch (offer.spring.fit) {
        case Fit::as_enquired:
            return "as sent";
        case Fit::fits:
            return "fits";
        case Fit::less_room:
            return "less room";
        case Fit::fails:
            return "FAILS";
        case Fit::unknown:
            return "unknown";
    }
    return "";
}

std::string total_text(const LandedCost& cost) { return lot_text(cost.total) + plus(cost.open); }

std::string each_text(const LandedCost& cost) { return piece_text(cost.each()) + plus(cost.open); }

std::string again_text(const LandedCost& cost) { return lot_text(cost.again) + plus(cost.open_again); }

std::string plus_words(const Comparison& all) {
    const bool is_any_open = std::any_of(all.offers.begin(), all.offers.end(), [](const JudgedOffer& offer) {
        return std::any_of(offer.quantities.begin(), offer.quantities.end(),
                           [](const QuantityCost& each) { return !each.cost.open.empty(); });
    });
    return is_any_open ? "At least so much: what is not stated may raise it. Such an offer stands behind those priced "
                         "in full, in its place by what is stated alone; ask before you choose."
                       : "";
}

std::string unquoted_words(const Comparison& all) {
    const auto letters = letters_nobody_quoted(all);
    const auto quantities = quantities_nobody_quoted(all);
    std::vector<std::string> parts;
    if (!letters.empty())
        parts.push_back((letters.size() == 1 ? "alternative " : "alternatives ") + join(letters, ", "));
    if (!quantities.empty()) parts.push_back(join(quantities, ", ") + " pieces");
    std::vector<std::string> silent;
    for (const NamedReply& each : all.replies)
        if (!each.reply.is_quoted()) silent.push_back(each.name);
    std::string words = parts.empty() ? "" : "Nobody quoted: " + join(parts, "; ") + '.';
    if (!silent.empty())
        words += (words.empty() ? "" : " ") + std::string("No price from: ") + join(silent, ", ") + '.';
    return words;
}

std::string minimum_words(const Minimum& missed, const std::string& currency) {
    std::vector<std::string> words;
    if (missed.pieces) words.push_back("at least " + std::to_string(*missed.pieces) + " pieces");
    if (missed.order) words.push_back("least order " + money_text(*missed.order) + ' ' + currency);
    return join(words, ", ");
}

std::string exchange_words(const Comparison& all) {
    std::vector<std::string> words;
    for (const ExchangeRate& rate : all.terms.exchange.rates)
        if (std::any_of(all.replies.begin(), all.replies.end(),
                        [&](const NamedReply& r) { return r.reply.maker.currency == rate.currency; }))
            words.push_back("1 " + rate.currency + " = " + rate.text + ' ' + all.terms.exchange.home);
    return join(words, ", ");
}

std::string counting_words(const Comparison& all) {
    std::string words =
        "Landed: price, set-up, tooling, certificate, packing and carriage, duty on all of them, " +
        std::string(all.terms.reclaims_tax ? "tax left out as it is got back" : "tax on all with the duty") +
        "; what is not stated counts as nothing. Reckoned exactly; halves are rounded up only where an amount is "
        "shown. "
        "A price is taken to hold up to the next quantity quoted (common practice).";
    if (all.terms.date.empty()) words += " No date was given, so that validity is not judged.";
    return words;
}

}  // namespace seatload::record
