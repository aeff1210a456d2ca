// SPDX-License-Identifier: MIT
#include <seatload/sheet/quotes_tables.hpp>

#include <algorithm>
#include <utility>

#include <seatload/core/text.hpp>
#include <seatload/record/quotation_words.hpp>

namespace seatload::sheet {
namespace {

using record::JudgedOffer;
using record::lot_text;

std::string or_dash(const std::string& text) { return text.empty() ? "–" : text; }

/// Columns so wide, the first one taking what is left of the whole.
std::vector<double> widths(double whole, std::vector<double> others) {
    double first = whole;
    for (const double w : others) first -= w;
    others.insert(others.begin(), first);
    return others;
}

/// "1  Maker C, A"; a dash for an offer without a rank.
std::string offer_name(const record::Comparison& all, const JudgedOffer& offer) {
    return (offer.rank == 0 ? "–" : std::to_string(offer.rank)) + "  " + all.reply_of(offer).name + ", " +
           offer.offer.alternative;
}

std::string room(const JudgedOffer& offer) {
    const double in_tenths = sizing::room_in_tenths(offer.spring.merit.tolerance_room);
    return offer.spring.can_be_ordered() ? fixed(in_tenths / 10.0, 1) : "–";
}

/// Charges that come with every lot together.
record::Exact charges(const record::LandedCost& c) { return c.certificate + c.packing + c.carriage; }

/// The table without the columns, the first one aside, in which no row says anything; their width goes to the first.
RuledTable without_blanks(RuledTable table) {
    for (std::size_t column = table.widths.size(); column-- > 1;) {
        if (std::any_of(table.rows.begin() + 1, table.rows.end(), [&](const auto& row) { return row[column] != "–"; }))
            continue;
        table.widths[0] += table.widths[column];
        table.widths.erase(table.widths.begin() + static_cast<long>(column));
        for (auto& row : table.rows) row.erase(row.begin() + static_cast<long>(column));
    }
    return table;
}

}  // namespace

RuledTable quotes_ranking_table(const record::Comparison& all, double width) {
    RuledTable table{widths(width, {20.0, 12.0, 14.0, 21.0, 23.0, 22.0, 22.0}), {}};
    const std::string& home = all.terms.exchange.home;
    table.rows.push_back({"maker, alternative", "spring", "room", "to buy", home + " a piece", home + " the lot",
                          "here by", "valid until"});
    for (const JudgedOffer& offer : all.offers) {
        if (!offer.offer.is_quoted()) continue;
        const bool is_priced = offer.purchase.has_value();
        table.rows.push_back({offer_name(all, offer), std::string(record::short_word(offer)), room(offer),
                              is_priced ? std::to_string(offer.purchase->pieces) : "–",
                              is_priced ? record::each_text(*offer.purchase) : "–",
                              is_priced ? record::total_text(*offer.purchase) : "–", or_dash(offer.here_by),
                              or_dash(all.reply_of(offer).reply.maker.valid_until)});
    }
    return without_blanks(std::move(table));
}

RuledTable quotes_costs_table(const record::Comparison& all, double width) {
    RuledTable table{widths(width, {14.0, 18.0, 16.0, 16.0, 18.0, 14.0, 16.0, 19.0, 18.0}), {}};
    table.rows.push_back(
        {"maker, alternative", "pieces", "price", "set-up", "tooling", "charges", "duty", "tax", "the lot", "a piece"});
    for (const JudgedOffer& offer : all.offers)
        for (const record::QuantityCost& each : offer.quantities) {
            const record::LandedCost& c = each.cost;
            table.rows.push_back({offer_name(all, offer),
                                  std::to_string(c.pieces) + (each.missed.is_stated() ? " *" : ""), lot_text(c.price),
                                  lot_text(c.set_up), lot_text(c.tooling), lot_text(charges(c)), lot_text(c.duty),
                                  lot_text(c.tax), record::total_text(c), record::each_text(c)});
        }
    return table;
}

RuledTable quotes_terms_table(const record::Comparison& all, double width) {
    RuledTable table{widths(width, {26.0, 22.0, 22.0, 14.0, 34.0, 30.0}), {}};
    table.rows.push_back({"maker", "quotation", "of", "valid until", "in", "certificates", "delivery"});
    for (const record::NamedReply& each : all.replies) {
        const record::Maker& maker = each.reply.maker;
        table.rows.push_back({each.name, or_dash(maker.quotation), or_dash(maker.date), or_dash(maker.valid_until),
                              or_dash(maker.currency), or_dash(maker.certificates), or_dash(maker.delivery_terms)});
    }
    return without_blanks(std::move(table));
}

}  // namespace seatload::sheet
