// SPDX-License-Identifier: MIT
#include <seatload/sheet/quotes_sheet.hpp>

#include <algorithm>
#include <array>

#include <seatload/core/diagnostic.hpp>
#include <seatload/core/text.hpp>
#include <seatload/record/quotation_words.hpp>
#include <seatload/sheet/fact_lines.hpp>
#include <seatload/sheet/flow_facts.hpp>
#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/page_parts.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/plot.hpp>
#include <seatload/sheet/plot_key.hpp>
#include <seatload/sheet/quotes_printable.hpp>
#include <seatload/sheet/quotes_tables.hpp>

namespace seatload::sheet {
namespace {

using record::JudgedOffer;

constexpr double kPlotHeight = 62.0;
constexpr double kQuotesKeyWidth = 48.0;
constexpr double kQuotesAxisName = 5.0;
constexpr double kQuotesHeadingWidth = 21.0;
constexpr int kQuotesTicks = 6;
constexpr std::array kMarks{Mark::disc,          Mark::ring,    Mark::square,       Mark::open_square, Mark::triangle,
                            Mark::open_triangle, Mark::diamond, Mark::open_diamond, Mark::cross};

std::string title_of(const record::Comparison& all) {
    return all.enquiry.title.empty() ? "Quotations compared" : "Quotations, " + all.enquiry.title;
}

/// The offers that can be drawn: those with a rank, as many as there are marks.
std::vector<const JudgedOffer*> drawn_offers(const record::Comparison& all) {
    std::vector<const JudgedOffer*> drawn;
    for (const JudgedOffer& offer : all.offers)
        if (offer.rank != 0 && drawn.size() < kMarks.size()) drawn.push_back(&offer);
    return drawn;
}

/// Pieces and cost of a piece; numbers for a drawing alone, so no longer exact.
Path points(const JudgedOffer& offer) {
    Path out;
    for (const record::QuantityCost& each : offer.quantities)
        out.push_back({static_cast<double>(each.cost.pieces), each.cost.each().convert_to<double>()});
    return out;
}

/// The maker and the letter, in one line of the key; the tables have the name in full.
std::string key_name(const record::Comparison& all, const JudgedOffer& offer) {
    constexpr std::size_t kMost = 14;
    const auto letters = code_points(all.reply_of(offer).name);
    std::string name;
    for (std::size_t i = 0; i < letters.size() && i < kMost; ++i) name += letters[i];
    if (letters.size() > kMost) name += "…";
    return name + ", " + offer.offer.alternative;
}

Plot plot_of(const std::vector<const JudgedOffer*>& offers, const Box& box) {
    double most_pieces = 0.0;
    double most_cost = 0.0;
    for (const JudgedOffer* offer : offers)
        for (const Point& point : points(*offer)) {
            most_pieces = std::max(most_pieces, point.x);
            most_cost = std::max(most_cost, point.y);
        }
    constexpr double kHeadroom = 1.06;
    const double top = most_cost > 0.0 ? kHeadroom * most_cost : 1.0;
    const double left = box.left + left_of_plot(0.0, top, kQuotesTicks);
    return {{left, box.bottom + kBelowPlot, box.right - kQuotesKeyWidth, box.top - kQuotesAxisName},
            0.0,
            kHeadroom * most_pieces,
            0.0,
            top};
}

void draw_costs(Drawing& drawing, const Box& box, const record::Comparison& all) {
    const auto offers = drawn_offers(all);
    const Plot plot = plot_of(offers, box);
    draw_level_axis(drawing, plot, "pieces", kQuotesTicks);
    draw_upright_axis(drawing, plot, "landed cost of a piece [" + all.terms.exchange.home + "]", kQuotesTicks);
    draw_upright_line(drawing, plot, all.terms.need, LineKind::hidden);
    PlotKey key;
    for (std::size_t i = 0; i < offers.size(); ++i) {
        const Path path = points(*offers[i]);
        if (path.size() > 1) draw_curve(drawing, plot, path, LineKind::narrow);
        for (const Point& point : path) draw_mark(drawing, plot.at(point.x, point.y), kMarks[i]);
        key.push_back({kMarks[i], key_name(all, *offers[i])});
    }
    key.push_back({LineKind::hidden, "pieces needed"});
    draw_plot_key(drawing, {box.right - kQuotesKeyWidth + 4.0, box.bottom, box.right, box.top - kQuotesAxisName}, key);
}

/// What is needed, when, in what currency.
std::string question(const record::Comparison& all) {
    std::string words =
        std::to_string(all.terms.need) + " pieces are needed; amounts are in " + all.terms.exchange.home;
    if (const std::string rates = record::exchange_words(all); !rates.empty()) words += " (" + rates + ")";
    if (!all.terms.date.empty()) words += "; offers are judged on " + all.terms.date;
    return words + ". First come offers whose spring keeps every limit, by what it costs to get that many.";
}

/// What to order of whom, and what to settle before.
std::string advice(const record::Comparison& all, const JudgedOffer& best) {
    std::string words;
    if (best.purchase)
        words += "Buy " + std::to_string(best.purchase->pieces) + " for " + record::total_text(*best.purchase) + " " +
                 all.terms.exchange.home + (best.here_by.empty() ? "" : ", here by " + best.here_by) + ". ";
    if (best.standing == record::Standing::expired) words += "The offer has expired: ask whether it still holds. ";
    if (!best.not_stated.empty()) words += "Ask first what is not stated: " + join(best.not_stated, ", ") + ". ";
    for (const std::string& question : best.questions) words += "Ask him: " + question + ". ";
    return words;
}

void add_ranking(PageFlow& flow, const record::Comparison& all) {
    const bool has_best = !all.offers.empty() && all.offers.front().rank != 0;
    if (has_best) {
        const JudgedOffer& best = all.offers.front();
        flow.heading("First choice: " + all.reply_of(best).name + ", alternative " + best.offer.alternative);
        flow.paragraph(advice(all, best) + "What else its maker asks for or remarks stands under its name.");
    } else {
        flow.heading("Nothing to order: no offer fits and is priced");
    }
    const RuledTable ranking = quotes_ranking_table(all, flow.width());
    if (ranking.rows.size() < 2) return;
    flow.heading("The offers, best first");
    flow.paragraph(question(all));
    flow.table(ranking);
    const std::string plus = record::plus_words(all);
    flow.paragraph(
        "Room: how many times what the maker's tolerances (EN 15800, from memory) do to the spring fits between it and "
        "the nearest limit they can break: of loads, bore, rod, solid length, free length, stress, buckling or lean. " +
        (plus.empty() ? "" : "+ " + plus + ' ') + "– Has no place: its spring fails or cannot be judged.");
}

void add_costs(PageFlow& flow, const record::Comparison& all) {
    if (!drawn_offers(all).empty()) {
        const auto room = flow.headed_room("What a piece costs, landed", kPlotHeight);
        draw_costs(room.drawing, room.box, all);
    }
    if (const RuledTable costs = quotes_costs_table(all, flow.width()); costs.rows.size() > 1) {
        flow.headed_rows("What is quoted, in " + all.terms.exchange.home, costs);
        flow.paragraph("Charges: certificate, packing, carriage. * Cannot be ordered alone, see the maker's minimum. " +
                       record::counting_words(all));
    }
    if (const std::string unquoted = record::unquoted_words(all); !unquoted.empty()) flow.paragraph(unquoted);
    flow.headed_rows("What the makers state", quotes_terms_table(all, flow.width()));
}

void add_judgements(PageFlow& flow, const record::Comparison& all) {
    for (const JudgedOffer& offer : all.offers) {
        std::vector<Fact> facts;
        for (const record::Telling& each : record::tellings(offer)) facts.push_back({each.heading, each.words});
        for (const record::QuantityCost& each : offer.quantities)
            if (const std::string words = record::minimum_words(each.missed, all.reply_of(offer).reply.maker.currency);
                !words.empty())
                facts.push_back({"minimum", std::to_string(each.cost.pieces) + " pieces: " + words});
        if (facts.empty()) continue;
        flow.heading(all.reply_of(offer).name + ", alternative " + offer.offer.alternative);
        add_facts(flow, std::move(facts), kQuotesHeadingWidth);
    }
}

void add_caution(PageFlow& flow) {
    flow.heading("Before ordering");
    flow.paragraph(
        "Each offer was built anew and held to the limits of its spec, with the same formulas and the same marks of "
        "trust as in its calculation report; several rest on memory or on estimates. What a maker wrote in words is "
        "repeated, not judged. Amounts are those stated; the law of contract, customs and tax is not looked at.");
    flow.paragraph(
        "A spring stores energy and may hold an engine together: a competent person must judge it before use. Local "
        "codes and licensed practice govern.");
}

TitleBlock title_block(const record::Comparison& all) {
    TitleBlock block = title_block_of(all.springs.front().spec.identity);
    block.title = title_of(all);
    block.date_of_issue = all.terms.date;
    block.document_type = "comparison of quotations";
    block.document_status = "for our own use";
    return block;
}

}  // namespace

Result<std::vector<Drawing>> quotes_sheet(const QuotesSheetInput& input) {
    if (input.all.springs.empty()) return error("bad-pdf"_id, "a comparison of quotations needs a spring enquired for");
    Diagnostics diagnostics;
    const record::Comparison all = printable(input.all, diagnostics);
    if (has_error(diagnostics)) return diagnostics;
    PageFlow flow(input.size);
    add_ranking(flow, all);
    add_costs(flow, all);
    add_judgements(flow, all);
    add_caution(flow);
    std::vector<Drawing> pages = std::move(flow.pages());
    const std::string engine = all.springs.front().spec.identity.engine;
    draw_title_blocks(pages, {{pages.size(), engine}}, title_block(all), input.words);
    return {std::move(pages), diagnostics};
}

Result<std::string> quotes_sheet_pdf(const QuotesSheetInput& input) {
    const auto pages = quotes_sheet(input);
    if (!pages) return pages.error();
    Diagnostics ignored;  // the same texts were complained of by quotes_sheet()
    const record::Comparison all = printable(input.all, ignored);
    auto bytes = write_pdf(*pages, {title_of(all), all.springs.front().spec.identity.owner, "Quotations compared"});
    if (!bytes) return bytes.error();
    return {std::move(bytes).value(), pages.error()};
}

}  // namespace seatload::sheet
