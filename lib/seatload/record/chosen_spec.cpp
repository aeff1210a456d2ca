// SPDX-License-Identifier: MIT
#include <seatload/record/chosen_spec.hpp>

#include <string_view>

#include <seatload/core/diagnostic.hpp>
#include <seatload/core/text.hpp>
#include <seatload/record/history.hpp>
#include <seatload/record/specify.hpp>

namespace seatload::record {
namespace {

constexpr std::string_view kChosen = "chosen: ";
constexpr std::string_view kAlternative = ", alternative ";
constexpr std::string_view kQuotation = ", quotation ";
constexpr std::string_view kOf = " of ";
constexpr std::string_view kEndOfName = "; ";

std::string name_of(const Comparison& all, const JudgedOffer& offer) {
    return all.reply_of(offer).name + std::string(kAlternative) + offer.offer.alternative;
}

/// What makes the spring another one, in full.
std::string changes_of(const CounterOffer& spring) {
    std::vector<std::string> words;
    for (const auto* differences : {&spring.asked, &spring.adjusted})
        for (const Difference& each : *differences) words.push_back(each.words());
    return join(words, "; ");
}

/// The same so short that it has room in the table of revisions of a sheet: "wire, d, L0, quotation A-4417".
std::string short_change(const CounterOffer& spring, const Maker& maker) {
    std::vector<std::string> words;
    for (const auto* differences : {&spring.asked, &spring.adjusted})
        for (const Difference& each : *differences) words.push_back(each.symbol);
    return join(words, ", ") + (maker.quotation.empty() ? " as offered" : ", quotation " + maker.quotation);
}

std::string reason(const Comparison& all, const JudgedOffer& offer) {
    const Maker& maker = all.reply_of(offer).reply.maker;
    const LandedCost& bought = *offer.purchase;
    std::string words = std::string(kChosen) + name_of(all, offer);
    if (!maker.quotation.empty()) words += std::string(kQuotation) + maker.quotation;
    if (!maker.date.empty()) words += std::string(kOf) + maker.date;
    words += std::string(kEndOfName) + std::string(word(offer.spring.fit)) + "; " + std::to_string(bought.pieces) +
             " pieces for " + (bought.open.empty() ? "" : "at least ") + lot_text(bought.total) + " " +
             all.terms.exchange.home + " landed";
    if (offer.spring.is_altered) words += "; " + changes_of(offer.spring);
    return words;
}

/// Without " of 2026-12-02" at its end, the day of the reply.
std::string_view without_date(std::string_view words) {
    constexpr std::string_view kDay = "0000-00-00";
    if (words.size() < kOf.size() + kDay.size()) return words;
    const std::string_view end = words.substr(words.size() - kOf.size() - kDay.size());
    bool is_date = end.starts_with(kOf);
    for (std::size_t i = 0; is_date && i < kDay.size(); ++i) {
        const char c = end[kOf.size() + i];
        is_date = kDay[i] == '-' ? c == '-' : c >= '0' && c <= '9';
    }
    return is_date ? words.substr(0, words.size() - end.size()) : words;
}

std::string refusal(const JudgedOffer& offer) {
    switch (offer.standing) {
        case Standing::fails:
            return "its spring fails: " + offer.spring.failures.front().reason;
        case Standing::unknown:
            return "it cannot be judged; missing is " + join(offer.spring.missing, "; ");
        case Standing::not_quoted:
            return "it has no price";
        default:
            return {};
    }
}

/// Makes the spec the next revision of its part; what stands in the way, or nothing.
Diagnostics revise(Spec& spec, const std::string& date, const std::string& change) {
    demand::Identity& identity = spec.identity;
    if (date.empty())
        return {error("not-said-when"_id, "the spring offered is another one: its new revision needs a date",
                      "give the date of the choice with --date")};
    const std::string& last = spec.revisions.empty() ? identity.date : spec.revisions.back().date;
    if (date < last)
        return {error("date-out-of-order"_id,
                      "the choice is dated " + date + ", before the spec it changes (" + last + ")",
                      "give the date of the choice with --date")};
    if (spec.revisions.empty() && !identity.revision.empty() && !identity.date.empty())
        spec.revisions.push_back(first_issue(identity, identity.date));
    const std::string next = next_index(identity.revision);
    if (next.empty())
        return {error("bad-index"_id, "there is no revision index after \"" + identity.revision + '"',
                      "revise the spec by hand")};
    identity.revision = next;
    identity.date = date;
    identity.approver.clear();
    spec.revisions.push_back({next, date, change, identity.creator});
    return {};
}

}  // namespace

Result<Spec> chosen_spec(const Comparison& all, const JudgedOffer& offer) {
    if (const std::string refused = refusal(offer); !refused.empty())
        return error("unfit-offer"_id, name_of(all, offer) + " cannot be chosen: " + refused,
                     "without --choose all offers are listed, those that serve first");
    Spec spec = offer.spring.spec;
    spec.why = reason(all, offer);
    spec.quantities = {offer.purchase->pieces};
    if (offer.spring.is_altered)
        if (Diagnostics wrong =
                revise(spec, all.terms.date, short_change(offer.spring, all.reply_of(offer).reply.maker));
            !wrong.empty())
            return wrong;
    return spec;
}

std::optional<ChosenOffer> chosen_offer(const Spec& spec) {
    const std::string_view why = spec.why;
    const std::size_t end = why.find(kEndOfName);
    if (!why.starts_with(kChosen) || end == std::string_view::npos) return std::nullopt;
    const std::string_view said = without_date(why.substr(0, end));
    const std::size_t at = said.find(kAlternative);
    if (at == std::string_view::npos) return std::nullopt;
    const std::string_view offer = said.substr(at + kAlternative.size());
    const std::size_t number = offer.find(kQuotation);
    if (number == std::string_view::npos) return ChosenOffer{std::string(offer), {}};
    return ChosenOffer{std::string(offer.substr(0, number)), std::string(offer.substr(number + kQuotation.size()))};
}

}  // namespace seatload::record
