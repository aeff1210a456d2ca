// SPDX-License-Identifier: MIT
#include <seatload/record/quotation.hpp>

#include <algorithm>
#include <charconv>
#include <chrono>

#include <seatload/core/text.hpp>

namespace seatload::record {
namespace {

std::optional<std::chrono::year_month_day> day_of(const std::string& iso) {
    int number[3] = {};
    std::size_t at = 0;
    for (const std::string_view part : split(iso, '-')) {
        if (at == 3) return std::nullopt;
        const auto [end, wrong] = std::from_chars(part.data(), part.data() + part.size(), number[at++]);
        if (wrong != std::errc{} || end != part.data() + part.size()) return std::nullopt;
    }
    const std::chrono::year_month_day day{std::chrono::year(number[0]),
                                          std::chrono::month(static_cast<unsigned>(number[1])),
                                          std::chrono::day(static_cast<unsigned>(number[2]))};
    return at == 3 && day.ok() ? std::optional(day) : std::nullopt;
}

std::string padded(int number, std::size_t digits) {
    const std::string text = std::to_string(number);
    return std::string(text.size() < digits ? digits - text.size() : 0, '0') + text;
}

void note_open(std::vector<std::string>& open, bool is_stated, const char* name) {
    if (!is_stated && std::find(open.begin(), open.end(), name) == open.end()) open.emplace_back(name);
}

/// What a maker left open, by the names of the form.
std::vector<std::string> not_stated(const Reply& reply, const LandedCost& purchase) {
    std::vector<std::string> open = purchase.open;
    note_open(open, reply.charges.duty.has_value(), "duty");
    note_open(open, reply.charges.tax.has_value(), "tax");
    note_open(open, purchase.lead_time.has_value(), "lead time");
    note_open(open, !reply.maker.valid_until.empty(), "validity");
    note_open(open, !reply.maker.quotation.empty(), "quotation number");
    note_open(open, !reply.maker.certificates.empty(), "which certificates");
    note_open(open, !reply.maker.delivery_terms.empty(), "delivery terms");
    return open;
}

/// "2", or "2 seated and 3 at full travel": the grades of EN 15800 by which a spec orders its loads; empty when by
/// none.
std::string load_grades(const Spec& spec) {
    const std::optional<int>& seated = spec.seated.grade;
    const std::optional<int>& full_travel = spec.full_travel.grade;
    if (seated && seated == full_travel) return std::to_string(*seated);
    std::string words;
    if (seated) words = std::to_string(*seated) + " seated";
    if (full_travel) words += (words.empty() ? "" : " and ") + std::to_string(*full_travel) + " at full travel";
    return words;
}

/// What the maker is to be asked before a spring of his is ordered.
std::vector<std::string> questions_on(const JudgedOffer& offer) {
    if (!offer.spring.can_be_ordered() || offer.offer.changes.load_grade) return {};
    const std::string grades = load_grades(offer.spring.spec);
    if (grades.empty()) return {};
    return {"does he hold the loads to EN 15800 grade " + grades + ", as " +
            (offer.spring.is_altered ? "this spring needs" : "the sheet asks") + "? His reply leaves load_grade open"};
}

/// How the lots of a reply are paid for. One in another currency is taken to come from abroad (common practice, no
/// source).
Terms payment(const Reply& reply, const ComparisonTerms& terms) {
    const auto worth = terms.exchange.worth(reply.maker.currency);
    SEATLOAD_ASSERT(worth.has_value());
    return {*worth, terms.reclaims_tax, reply.maker.currency != terms.exchange.home};
}

bool is_expired(const Maker& maker, const std::string& date) {
    return !date.empty() && !maker.valid_until.empty() && maker.valid_until < date;
}

Standing standing_of(const JudgedOffer& offer, const Reply& reply, const ComparisonTerms& terms) {
    if (!offer.purchase) return Standing::not_quoted;
    if (offer.spring.fit == Fit::unknown) return Standing::unknown;
    if (offer.spring.fit == Fit::fails) return Standing::fails;
    if (is_expired(reply.maker, terms.date)) return Standing::expired;
    return offer.purchase->open.empty() ? Standing::in_force : Standing::open_cost;
}

const EnquiredSpring& spring_of(const std::vector<EnquiredSpring>& springs, const std::string& letter) {
    const auto found = std::find_if(springs.begin(), springs.end(),
                                    [&](const EnquiredSpring& s) { return s.spec.alternative == letter; });
    SEATLOAD_ASSERT(found != springs.end());
    return *found;
}

void price(JudgedOffer& out, const Reply& reply, const ComparisonTerms& terms) {
    if (!out.offer.is_quoted()) return;
    const Terms how = payment(reply, terms);
    for (const Price& each : out.offer.prices)
        if (each.unit_price)
            out.quantities.push_back({landed_cost(reply.charges, out.offer, each, each.quantity, how),
                                      minimum_missed(reply.charges, out.offer, each, each.quantity)});
    std::sort(out.quantities.begin(), out.quantities.end(),
              [](const QuantityCost& a, const QuantityCost& b) { return a.cost.pieces < b.cost.pieces; });
    out.purchase = cheapest(purchases(reply.charges, out.offer, terms.need, how));
    if (out.purchase && out.purchase->lead_time)
        out.here_by = days_after(terms.date, calendar_days(*out.purchase->lead_time));
}

Result<JudgedOffer> judged(const Comparison& all, std::size_t reply_index, const Offer& offer,
                           const JudgingBasis& basis) {
    const Reply& reply = all.replies[reply_index].reply;
    const EnquiredSpring& spring = spring_of(all.springs, offer.alternative);
    auto counter = judge_offer(spring.spec, spring.grade, offer, basis);
    if (!counter) return Diagnostics(counter.error());
    JudgedOffer out;
    out.reply = reply_index;
    out.offer = offer;
    out.spring = std::move(counter).value();
    price(out, reply, all.terms);
    out.standing = standing_of(out, reply, all.terms);
    const std::string& by = all.enquiry.correspondence.reply_by;
    out.is_late = !by.empty() && !reply.maker.date.empty() && by < reply.maker.date;
    if (out.purchase) out.not_stated = not_stated(reply, *out.purchase);
    if (out.purchase) out.questions = questions_on(out);
    return out;
}

bool has_rank(Standing standing) { return standing <= Standing::expired; }

bool stands_before(const JudgedOffer& a, const JudgedOffer& b) {
    if (a.standing != b.standing) return a.standing < b.standing;
    if (!has_rank(a.standing)) return false;
    if (a.purchase->total != b.purchase->total) return a.purchase->total < b.purchase->total;
    return sizing::room_in_tenths(a.spring.merit.tolerance_room) >
           sizing::room_in_tenths(b.spring.merit.tolerance_room);
}

// ---- reasons -------------------------------------------------------------------------------------------------------

/// Why more pieces are bought than needed.
void tell_quantity(JudgedOffer& offer, const Reply& reply, const ComparisonTerms& terms) {
    const LandedCost& bought = *offer.purchase;
    const std::string& home = terms.exchange.home;
    const Terms how = payment(reply, terms);
    const auto ways = purchases(reply.charges, offer.offer, terms.need, how);
    if (ways.front().pieces < bought.pieces)
        offer.reasons.push_back(std::to_string(bought.pieces) + " pieces cost less than " +
                                std::to_string(ways.front().pieces) + " (" + lot_text(bought.total) + " " + home +
                                ", not " + lot_text(ways.front().total) + ")");
    else if (bought.pieces > std::max(terms.need, bought.priced_as))
        offer.reasons.push_back("no fewer than " + std::to_string(bought.pieces) + " reach the maker's minimum");
    else if (bought.pieces > terms.need)
        offer.reasons.push_back("no fewer than " + std::to_string(bought.pieces) + " are quoted");
    if (bought.priced_as != bought.pieces)
        offer.reasons.push_back("counted at the price for " + std::to_string(bought.priced_as) + ", to be confirmed");
}

/// How much dearer an offer is than the first of all.
std::string dearer(const JudgedOffer& offer, const JudgedOffer& first, const std::string& home) {
    const Exact more = offer.purchase->total - first.purchase->total;
    if (more == 0) return "costs as much as the first";
    const bool is_more = more > 0;
    std::string words = lot_text(is_more ? more : Exact(-more)) + " " + home;
    if (first.purchase->total > 0) {
        const Exact share = (is_more ? more : Exact(-more)) * 100 / first.purchase->total;
        words += " (" + rounded_text(share, 1) + " %)";
    }
    return words + (is_more ? " dearer than the first" : " cheaper than the first");
}

void tell_standing(JudgedOffer& offer, const Reply& reply) {
    if (!offer.purchase->open.empty())
        offer.reasons.push_back("costs at least this: " + join(offer.purchase->open, ", ") + " not stated");
    if (offer.standing == Standing::expired)
        offer.reasons.push_back("expired on " + reply.maker.valid_until + ": ask whether it still holds");
    if (offer.is_late) offer.reasons.push_back("answered late, on " + reply.maker.date);
}

void give_reasons(Comparison& all) {
    int rank = 0;
    const JudgedOffer* const first = &all.offers.front();
    for (JudgedOffer& offer : all.offers) {
        if (!has_rank(offer.standing)) continue;
        const Reply& reply = all.replies[offer.reply].reply;
        offer.rank = ++rank;
        if (rank > 1)
            offer.reasons.push_back(dearer(offer, *first, all.terms.exchange.home));
        else if (offer.standing == Standing::in_force)
            offer.reasons.emplace_back("the cheapest that fits");
        else if (offer.standing == Standing::open_cost)
            offer.reasons.emplace_back("the cheapest that fits, by what is stated alone");
        tell_standing(offer, reply);
        tell_quantity(offer, reply, all.terms);
    }
}

}  // namespace

Result<Comparison> compare(const Enquired& enquiry, std::vector<EnquiredSpring> springs,
                           std::vector<NamedReply> replies, const ComparisonTerms& terms, const JudgingBasis& basis) {
    Comparison all{terms, enquiry, std::move(springs), std::move(replies), {}};
    for (std::size_t i = 0; i < all.replies.size(); ++i)
        for (const Offer& offer : all.replies[i].reply.offers) {
            auto one = judged(all, i, offer, basis);
            if (!one) return Diagnostics(one.error());
            all.offers.push_back(std::move(one).value());
        }
    std::stable_sort(all.offers.begin(), all.offers.end(), stands_before);
    if (!all.offers.empty()) give_reasons(all);
    return all;
}

std::string days_after(const std::string& date, int days) {
    const auto day = day_of(date);
    if (!day) return {};
    const std::chrono::year_month_day then{std::chrono::sys_days(*day) + std::chrono::days(days)};
    return padded(static_cast<int>(then.year()), 4) + '-' +
           padded(static_cast<int>(static_cast<unsigned>(then.month())), 2) + '-' +
           padded(static_cast<int>(static_cast<unsigned>(then.day())), 2);
}

std::string_view word(Standing standing) {
    switch (standing) {
        case Standing::in_force:
            return "in force";
        case Standing::open_cost:
            return "cost open";
        case Standing::expired:
            return "expired";
        case Standing::unknown:
            return "cannot be judged";
        case Standing::fails:
            return "fails";
        case Standing::not_quoted:
            return "not quoted";
    }
    return "";
}

std::string_view word(Fit fit) {
    switch (fit) {
        case Fit::as_enquired:
            return "as enquired";
        case Fit::fits:
            return "fits";
        case Fit::less_room:
            return "fits with less room";
        case Fit::fails:
            return "fails";
        case Fit::unknown:
            return "cannot be judged";
    }
    return "";
}

}  // namespace seatload::record
