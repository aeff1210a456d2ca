// SPDX-License-Identifier: MIT
#include <algorithm>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/record/quotation_words.hpp>

#include <cli/quotes_view.hpp>
#include <cli/text_table.hpp>
#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

using enum TextTable::Align;
using record::Comparison;
using record::JudgedOffer;

constexpr int kWide = 100;  ///< from here on there is room for more columns
constexpr std::size_t kHeading = 15;

std::string or_dash(const std::string& text) { return text.empty() ? "-" : text; }

std::string shortened(const std::string& name, int width) {
    const std::size_t most = width >= kWide ? 30 : 16;
    const auto letters = code_points(name);
    if (letters.size() <= most) return name;
    std::string out;
    for (std::size_t i = 0; i + 1 < most; ++i) out += letters[i];
    return out + "…";
}

std::string head(const Comparison& all, int width) {
    const record::Enquired& asked = all.enquiry;
    std::string words = asked.title.empty() ? std::string("the enquiry") : asked.title;
    if (!asked.number.empty()) words += ", " + asked.number;
    if (!asked.revision.empty()) words += " revision " + asked.revision;
    words += ": " + std::to_string(all.terms.need) + " pieces needed";
    if (!all.terms.date.empty()) words += ", on " + all.terms.date;
    words += ", in " + all.terms.exchange.home;
    if (const std::string rates = record::exchange_words(all); !rates.empty()) words += " (" + rates + ")";
    return wrapped("Quotations for ", words + '.', width, 2);
}

/// Whether some offer has a day to show in a column.
template <class Day>
bool has_any(const Comparison& all, const Day& day) {
    return std::any_of(all.offers.begin(), all.offers.end(),
                       [&](const JudgedOffer& o) { return o.offer.is_quoted() && !day(o).empty(); });
}

std::string ranking(const Comparison& all, int width) {
    const auto here_by = [](const JudgedOffer& o) { return o.here_by; };
    const auto valid_until = [&](const JudgedOffer& o) { return all.reply_of(o).reply.maker.valid_until; };
    const bool has_here_by = has_any(all, here_by);
    const bool has_valid_until = width >= kWide && has_any(all, valid_until);
    TextTable table({left, left, left, left, right, right, right, left, left});
    table.add({"", "maker", "alt", "spring", "buy", "a piece", "the lot", has_here_by ? "here by" : "",
               has_valid_until ? "valid until" : ""});
    for (const JudgedOffer& offer : all.offers) {
        if (!offer.offer.is_quoted()) continue;
        std::vector<std::string> row{offer.rank == 0 ? "-" : std::to_string(offer.rank),
                                     shortened(all.reply_of(offer).name, width), offer.offer.alternative,
                                     std::string(record::short_word(offer))};
        if (offer.purchase)
            row.insert(row.end(), {std::to_string(offer.purchase->pieces), record::each_text(*offer.purchase),
                                   record::total_text(*offer.purchase)});
        else
            row.insert(row.end(), {"-", "-", "-"});
        row.push_back(has_here_by ? or_dash(here_by(offer)) : "");
        row.push_back(has_valid_until ? or_dash(valid_until(offer)) : "");
        table.add(row);
    }
    return table.text(0);
}

std::string costs(const Comparison& all, int width) {
    TextTable table({left, left, right, right, right, right, left});
    table.add({"maker", "alt", "pieces", "a piece", "the lot", "the next", ""});
    for (const JudgedOffer& offer : all.offers)
        for (const record::QuantityCost& each : offer.quantities)
            table.add(
                {shortened(all.reply_of(offer).name, width), offer.offer.alternative, std::to_string(each.cost.pieces),
                 record::each_text(each.cost), record::total_text(each.cost), record::again_text(each.cost),
                 record::minimum_words(each.missed, all.reply_of(offer).reply.maker.currency).empty() ? "" : "*"});
    return table.text(0);
}

/// What the stars of the costs stand for, each maker's minimum once.
std::string minimums(const Comparison& all, int width) {
    std::vector<std::string> lines;
    for (const JudgedOffer& offer : all.offers)
        for (const record::QuantityCost& each : offer.quantities) {
            const std::string words = record::minimum_words(each.missed, all.reply_of(offer).reply.maker.currency);
            if (words.empty()) continue;
            const std::string line =
                cut_name(all.reply_of(offer).name, width) + ", " + offer.offer.alternative + ": " + words;
            if (std::find(lines.begin(), lines.end(), line) == lines.end()) lines.push_back(line);
        }
    return lines.empty() ? "" : wrapped("* Not to be ordered alone: ", join(lines, "; ") + '.', width, 2);
}

std::string stories(const Comparison& all, int width) {
    std::string out;
    for (const JudgedOffer& offer : all.offers) {
        const auto tellings = record::tellings(offer);
        if (tellings.empty()) continue;
        const std::string& quotation = all.reply_of(offer).reply.maker.quotation;
        out += wrapped("",
                       cut_name(all.reply_of(offer).name, width) + ", alternative " + offer.offer.alternative +
                           (quotation.empty() ? "" : ", quotation " + quotation),
                       width, 2);
        for (const record::Telling& each : tellings)
            out += wrapped("  " + padded(each.heading, kHeading - 4) + "  ", each.words, width, kHeading);
    }
    return out;
}

}  // namespace

std::string quotes_text(const Comparison& all, int width) {
    const bool is_any_quoted =
        std::any_of(all.offers.begin(), all.offers.end(), [](const JudgedOffer& o) { return o.offer.is_quoted(); });
    std::string unquoted = record::unquoted_words(all);
    if (!unquoted.empty()) unquoted = wrapped("", unquoted, width, 2);
    if (!is_any_quoted) return head(all, width) + '\n' + unquoted + stories(all, width);
    std::string text = head(all, width) + '\n' + ranking(all, width);
    if (const std::string words = record::plus_words(all); !words.empty()) text += wrapped("+ ", words, width, 2);
    text += "\nLanded cost of what is quoted; the next: a later lot, without tooling\n" + costs(all, width) +
            minimums(all, width) + unquoted;
    return text + '\n' + stories(all, width) + '\n' + wrapped("", record::counting_words(all), width, 2);
}

}  // namespace seatload::cli
