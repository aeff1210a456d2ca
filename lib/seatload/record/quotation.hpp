// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/record/counter_offer.hpp>
#include <seatload/record/exchange.hpp>
#include <seatload/record/landed_cost.hpp>

namespace seatload::record {

/// An alternative as it was enquired for: our spec, with the loads needed.
struct EnquiredSpring {
    Spec spec;
    wire::Grade grade;
};

/// A maker's reply and the name it goes by.
struct NamedReply {
    std::string name;  ///< the firm, or the file when it has none
    Reply reply;
};

/// What offers are compared for.
struct ComparisonTerms {
    int need = 0;      ///< pieces wanted
    std::string date;  ///< ISO 8601, given, never the clock; empty: validity is not judged
    Exchange exchange;
    bool reclaims_tax = false;
};

/// How an offer stands, the better the earlier.
enum class Standing {
    in_force,    ///< fits and is priced in full
    open_cost,   ///< fits; a charge is not stated, so that it costs at least so much
    expired,     ///< fits; its validity ended before the date
    unknown,     ///< cannot be judged: a value is missing
    fails,       ///< the spring breaks a limit
    not_quoted,  ///< no price
};

/// What a quoted quantity costs, and what keeps it from being ordered alone.
struct QuantityCost {
    LandedCost cost;
    Minimum missed;
};

/// A maker's offer for one alternative, judged and priced.
struct JudgedOffer {
    std::size_t reply = 0;  ///< index
    Offer offer;
    CounterOffer spring;
    std::vector<QuantityCost> quantities;  ///< as quoted, smallest first
    std::optional<LandedCost> purchase;    ///< the cheapest way to get what is needed
    Standing standing = Standing::not_quoted;
    bool is_late = false;                 ///< answered after the day asked for
    std::string here_by;                  ///< ISO 8601; empty when the date or the lead time is not known
    std::vector<std::string> not_stated;  ///< what the maker left open
    std::vector<std::string> questions;   ///< to the maker, before it is ordered
    int rank = 0;                         ///< from 1; 0: out of the question
    std::vector<std::string> reasons;     ///< for its place
};

/// All offers, best first.
struct Comparison {
    ComparisonTerms terms;
    Enquired enquiry;
    std::vector<EnquiredSpring> springs;
    std::vector<NamedReply> replies;
    std::vector<JudgedOffer> offers;

    const NamedReply& reply_of(const JudgedOffer& offer) const { return replies[offer.reply]; }
};

/// The offers of all replies, judged and ranked: those that fit and are priced in full by what it costs to get what is
/// needed, then those with an open cost, then the expired ones; after them, without a rank, what cannot be judged,
/// fails or is not quoted. Of equal costs the one with more tolerance room comes first, then the order of the replies.
/// Every reply must be in a currency the exchange knows, and each of its offers for one of the springs.
/// Errors: a spec enquired for cannot be evaluated.
Result<Comparison> compare(const Enquired& enquiry, std::vector<EnquiredSpring> springs,
                           std::vector<NamedReply> replies, const ComparisonTerms& terms, const JudgingBasis& basis);

/// The date so many days of the calendar after another, both ISO 8601; empty for one that is none.
std::string days_after(const std::string& date, int days);

/// The words for how an offer stands, or how its spring fits.
std::string_view word(Standing standing);
std::string_view word(Fit fit);

}  // namespace seatload::record
