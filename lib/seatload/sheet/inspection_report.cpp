// SPDX-License-Identifier: MIT
#include <seatload/sheet/inspection_report.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/inspection/sentences.hpp>
#include <seatload/record/lot.hpp>
#include <seatload/sheet/fact_lines.hpp>
#include <seatload/sheet/flow_facts.hpp>
#include <seatload/sheet/inspection_plot.hpp>
#include <seatload/sheet/inspection_tables.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/own_title.hpp>
#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/page_parts.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/printable.hpp>
#include <seatload/sheet/terms.hpp>
#include <seatload/sheet/true_minus.hpp>

namespace seatload::sheet {
namespace {

using inspection::Judged;
using inspection::LotInspection;

constexpr double kLotHeadingWidth = 27.0;  ///< of facts
constexpr double kLeastPlot = 56.0;
constexpr double kMostPlot = 76.0;
constexpr std::size_t kPlotsOnPage = 3;

/// The lot with every text a user wrote made readable().
LotInspection printable_lot(LotInspection lot, Diagnostics& diagnostics) {
    inspection::Samples& s = lot.samples;
    for (std::string* text : {&s.name, &s.date, &s.maker, &s.fixture, &s.treatment, &s.conditions})
        *text = readable(*text, "samples", diagnostics);
    for (inspection::Piece& piece : s.pieces) piece.name = readable(piece.name, "name of a piece", diagnostics);
    Diagnostics ignored;  // names of pieces were complained of before
    for (auto* list : {&lot.reasons, &lot.remarks})
        for (std::string& text : *list) text = readable(text, "remark", ignored);
    return lot;
}

std::string verdict_heading(const LotInspection& lot) {
    switch (lot.verdict) {
        case inspection::Verdict::accept:
            return lot.conditions.empty()
                       ? "The lot is accepted"
                       : "The lot is accepted on condition that its " + join(lot.conditions, " and ");
        case inspection::Verdict::reject:
            return "The lot is rejected";
        case inspection::Verdict::not_proven:
            break;
    }
    return "The lot is not proven good, nor bad";
}

std::string joined(const std::vector<std::string>& sentences) {
    std::string text;
    for (const std::string& sentence : sentences) text += (text.empty() ? "" : " ") + sentence;
    return with_true_minus(text);
}

std::string lot_words(const LotInspection& lot) {
    const inspection::Samples& s = lot.samples;
    std::string words = "“" + s.name + "”";
    if (!s.maker.empty()) words += " of " + s.maker;
    if (!s.date.empty()) words += ", inspected " + s.date;
    return words + ": " + std::to_string(s.pieces.size()) + " of " + std::to_string(s.lot_size) +
           " pieces measured. Plan for loads: " + record::plan_words(lot.plan) + ".";
}

std::string uncertainty_words(const LotInspection& lot) {
    std::string words = lot.samples.fixture.empty() ? "" : lot.samples.fixture + ". ";
    const auto told = inspection::basis_sentences(lot.samples);
    return words + (told.empty() ? "U as stated with the samples." : join(told, " ") + " Others as stated.");
}

std::vector<Fact> facts_of(const InspectionReportInput& in, const LotInspection& lot) {
    std::vector<Fact> facts;
    const auto add = [&](const char* heading, const std::string& words) {
        if (!words.empty()) facts.push_back({heading, words});
    };
    add("Why", lot.reasons.empty() ? "" : join(lot.reasons, "; ") + ".");
    add("Next", inspection::next_sentence(lot));
    add("Lot", lot_words(lot));
    add("Rule", inspection::rule_sentence() + inspection::tips_sentence(lot));
    add("Protection", joined(inspection::protection_sentences(lot)));
    add("Remarks", joined(lot.remarks));
    if (in.forecast) add("Foretold", joined(inspection::forecast_sentences(lot, *in.forecast)));
    add("Set", joined(inspection::set_sentences(lot, in.forecast ? &*in.forecast : nullptr)));
    add("Statistics", inspection::statistics_sentence());
    add("Measured with", uncertainty_words(lot));
    add("By eye", inspection::eye_sentence(lot));
    add("Spec", drawing_number(in.spec) + " revision " + in.spec.identity.revision +
                    ", on whose sheet stands “Spec attached, SHA-256”: " + in.sheet_mark);
    add("Caution",
        "A spring stores energy and may hold an engine together: a competent person must check it before use. Local "
        "codes and licensed practice govern.");
    return facts;
}

void add_plots(PageFlow& flow, const LotInspection& lot) {
    std::vector<const Judged*> shown;
    for (const Judged& j : lot.characteristics)
        if (j.measured() > 1) shown.push_back(&j);
    if (shown.empty()) return;
    for (std::size_t i = 0; i < shown.size(); ++i) {
        if (i % kPlotsOnPage == 0) {
            flow.new_page();
            flow.heading("Values in the order measured, and how often each came");
            const auto key = flow.room(kInspectionKeyHeight);
            draw_inspection_key(key.drawing, {key.box.left, key.box.bottom + 1.5});
        }
        const double left = static_cast<double>(kPlotsOnPage - i % kPlotsOnPage);
        const double each = std::clamp(flow.height_left() / left - kFlowGap, kLeastPlot, kMostPlot);
        const auto room = flow.room(each);
        draw_inspection_plot(room.drawing, room.box, *shown[i]);
    }
}

}  // namespace

Result<std::vector<Drawing>> inspection_report(const InspectionReportInput& input) {
    Diagnostics diagnostics;
    const LotInspection lot = printable_lot(input.lot, diagnostics);
    InspectionReportInput in{lot, input.spec, input.sheet_mark, input.forecast, input.words, input.size};
    const record::Spec spec = printable(input.spec, diagnostics);
    if (has_error(diagnostics)) return diagnostics;

    PageFlow flow(input.size);
    flow.heading(verdict_heading(lot));
    flow.table(inspection_verdict_table(lot, flow.width()));
    flow.table(inspection_statistics_table(lot, flow.width()));
    add_facts(flow, facts_of(in, lot), kLotHeadingWidth);
    add_plots(flow, lot);
    flow.headed_rows("All pieces: ? not proven, × fails", inspection_pieces_table(lot, flow.width()));
    std::vector<Drawing> pages = std::move(flow.pages());
    TitleBlock block = own_title_block(spec, "inspection report", "for us and the maker");
    block.approver.clear();  // he who approved the spec has not approved this: room for a hand
    if (!lot.samples.date.empty()) block.date_of_issue = lot.samples.date;
    draw_title_blocks(pages, {{pages.size(), "Lot “" + lot.samples.name + "”"}}, block, input.words);
    return {std::move(pages), diagnostics};
}

Result<std::string> inspection_report_pdf(const InspectionReportInput& input) {
    const auto pages = inspection_report(input);
    if (!pages) return pages.error();
    Diagnostics ignored;  // the same texts were complained of by inspection_report()
    auto bytes = write_pdf(*pages, {"Inspection: " + readable(input.lot.samples.name, "name", ignored),
                                    readable(input.spec.identity.owner, "owner", ignored), "Inspection of a lot"});
    if (!bytes) return bytes.error();
    return {std::move(bytes).value(), pages.error()};
}

}  // namespace seatload::sheet
