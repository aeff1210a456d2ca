// SPDX-License-Identifier: MIT
#include <algorithm>

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

std::string ranking(const Comparison& all, int width) {
    const bool is_wide = width >= kWide;
    TextTable table({left, left, left, left, right, right, right, left, left});
    std::vector<std::string> heads{"", "maker", "alt", "spring", "buy", "a piece", "the lot", "here by"};
    if (is_wide) heads.emplace_back("valid until");
    if (!is_wide) heads.emplace_back("");
    table.add(heads);
    for (const JudgedOffer& offer : all.offers) {
        std::vector<std::string> row{offer.rank == 0 ? "-" : std::to_string(offer.rank),
                                     shortened(all.reply_of(offer).name, width), offer.offer.alternative,
                                     std::string(record::short_word(offer))};
        if (offer.purchase)
            row.insert(row.end(), {std::to_string(offer.purchase->pieces), record::each_text(*offer.purchase),
                                   record::total_text(*offer.purchase)});
        else
            row.insert(row.end(), {"-", "-", "-"});
        row.push_back(or_dash(offer.here_by));
        row.push_back(is_wide ? or_dash(all.reply_of(offer).reply.maker.valid_until) : "");
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
    std::string text = head(all, width) + '\n' + ranking(all, width);
    if (const std::string words = record::plus_words(all); !words.empty()) text += wrapped("+ ", words, width, 2);
    text += "\nLanded cost of what is quoted; the next: a later lot, without tooling\n" + costs(all, width) +
            minimums(all, width);
    return text + '\n' + stories(all, width) + '\n' + wrapped("", record::counting_words(all), width, 2);
}

}  // namespace seatload::cli
