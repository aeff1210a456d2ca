// SPDX-License-Identifier: MIT
#include <seatload/sheet/spring_sheet.hpp>

#include <algorithm>

#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/caution_panel.hpp>
#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/frame.hpp>
#include <seatload/sheet/legend.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/load_diagram.hpp>
#include <seatload/sheet/page.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/printable.hpp>
#include <seatload/sheet/revision_table.hpp>
#include <seatload/sheet/sheet_diagram.hpp>
#include <seatload/sheet/sheet_entries.hpp>
#include <seatload/sheet/sheet_figure.hpp>
#include <seatload/sheet/sheet_plan.hpp>
#include <seatload/sheet/spec_attachment.hpp>
#include <seatload/sheet/spring_figure.hpp>
#include <seatload/sheet/tamper_mark.hpp>
#include <seatload/sheet/terms.hpp>
#include <seatload/sheet/title_block.hpp>

namespace seatload::sheet {
namespace {

constexpr double kHeadingRoom = 6.0;  ///< above the diagram
constexpr double kHeadingDrop = 4.6;  ///< of a heading's base line under its part's top
constexpr double kSheetPad = 2.0;
constexpr std::size_t kUsualRevisions = 6;
constexpr std::size_t kFewerRevisions = 3;   ///< when the sheet is full
constexpr std::size_t kFewestRevisions = 1;  ///< when it has no room otherwise

void draw_figure_part(Drawing& drawing, const Facts& facts, const SpringFigure& figure, const SheetPlan& plan) {
    const Box& box = plan.where.figure;
    drawing.line({box.left, box.bottom}, {box.right, box.bottom});
    draw_figure(drawing, figure, figure_box(plan.where), plan.scale);
    Text heading{.at = {box.left + kSheetPad, box.top - kHeadingDrop},
                 .words = figure_heading(facts, plan.scale),
                 .face = Face::bold};
    // Narrowed where a leader of the figure stands beside it.
    double right = box.right - kSheetPad;
    for (const Item& item : drawing.items())
        if (const auto* text = std::get_if<Text>(&item); text && text_box(*text).overlaps(text_box(heading)))
            right = std::min(right, text_box(*text).left - 1.0);
    constexpr double kNarrowestHeading = 0.6;
    const double width = right - heading.at.x;
    if (text_width(heading.words, heading.height, heading.face) * kNarrowestHeading > width)
        heading.words = short_figure_heading(facts);
    drawing.add(fitted(heading, width, kNarrowestHeading));
}

void draw_diagram_part(Drawing& drawing, const Facts& facts, const Box& box) {
    const double head = box.top - kHeadingDrop;
    drawing.line({box.left, box.bottom}, {box.left, box.top});
    drawing.line({box.left, box.bottom}, {box.right, box.bottom});
    const std::string rate = "R " + reference(with_unit(facts.figures().rate(facts.values.rate)));
    drawing.add(Text{{box.right - kSheetPad, head}, rate, kLettering, Align::right});
    const Text heading{.at = {box.left + kSheetPad, head}, .words = facts.say("diagram.heading"), .face = Face::bold};
    drawing.add(fitted(heading, box.width() - 3.0 * kSheetPad - text_width(rate, kLettering)));
    draw_load_diagram(drawing,
                      {box.left + kSheetPad, box.bottom + 0.5, box.right - kSheetPad, box.top - kHeadingRoom + 0.5},
                      sheet_diagram(facts));
}

TitleBlock title_block(const Facts& facts, const SheetInput& input, Scale scale) {
    TitleBlock block = title_block_of(facts.spec.identity);
    block.title = title(facts.spec, facts.paper.words);
    block.supplementary_title = supplementary_title(facts.spec, facts.paper.words);
    block.identification_number = drawing_number(facts.spec);
    block.document_type = facts.say("document.sheet");
    // One of several to choose from is not yet the one to be made.
    if (!facts.spec.alternative.empty()) block.document_status = facts.say("document.for_quotation");
    block.sheet = input.page;
    block.sheets = input.pages;
    block.scale = scale.text();
    return block;
}

/// Everything that goes on a sheet, but for the scale.
struct SheetParts {
    const Facts& facts;
    const SheetInput& input;
    Drawing page;
    Box space;
    SpringFigure figure;
    Entries entries;
    Entries evened;
    Legend legend;
    CautionPanel panel;
};

SheetParts parts(const Facts& facts, const SheetInput& input, bool is_tight) {
    const Paper& paper = facts.paper;
    Drawing page = empty_page(paper.size, paper.upright);
    const Box space = drawing_space(page.width(), page.height());
    const Entries entries = sheet_entries(facts);
    const std::string mark = input.spec_text.empty() ? "" : tamper_mark(input.spec_text);
    return {facts,
            input,
            std::move(page),
            space,
            sheet_figure(facts),
            entries,
            evened(entries),
            Legend(paper.words, facts.figures().has_inches(), space.width()),
            CautionPanel(paper.words, mark, panel_width(space, paper.upright), is_tight)};
}

/// A plan with the revisions it was made for.
struct Planned {
    RevisionTable revisions;
    SheetPlan plan;
};

std::optional<Planned> planned(const SheetParts& parts, std::size_t most_revisions) {
    const Paper& paper = parts.facts.paper;
    RevisionTable revisions(parts.facts.spec, paper.words, most_revisions, revisions_width(parts.space, paper.upright));
    auto plan = plan_sheet({parts.space,
                            paper.upright,
                            parts.figure,
                            parts.entries,
                            parts.evened,
                            parts.legend.height(),
                            {parts.panel.height(), revisions.height()}});
    if (!plan) return std::nullopt;
    return Planned{std::move(revisions), std::move(*plan)};
}

/// Earlier revisions make way for the rest, and for a larger figure.
std::optional<Planned> best_plan(const SheetParts& parts) {
    auto all = planned(parts, kUsualRevisions);
    if (parts.facts.spec.revisions.size() <= kFewerRevisions) return all;
    auto fewer = planned(parts, kFewerRevisions);
    if (!all || (fewer && fewer->plan.scale.factor() > all->plan.scale.factor())) all = std::move(fewer);
    return all ? std::move(all) : planned(parts, kFewestRevisions);
}

Drawing drawn(SheetParts parts, const Planned& planned) {
    const auto& [revisions, plan] = planned;
    Drawing& page = parts.page;
    const Point corner{parts.space.right, parts.space.bottom};
    plan.text.draw(page, plan.where.columns, plan.pitch, plan.keeping);
    draw_frame(page);
    draw_figure_part(page, parts.facts, parts.figure, plan);
    draw_diagram_part(page, parts.facts, plan.where.diagram);
    parts.legend.draw(page, plan.where.legend);
    parts.panel.draw(page, plan.where.panel);
    revisions.draw(page, corner + Point{0.0, kTitleBlockHeight});
    draw_title_block(page, corner, title_block(parts.facts, parts.input, plan.scale), parts.facts.paper.words);
    return std::move(page);
}

}  // namespace

Result<Drawing> spring_sheet(const SheetInput& input) {
    const auto known = facts(input.spec, input.grade, input.tolerances, input.paper);
    if (!known) return known.error();
    for (const bool is_tight : {false, true}) {
        SheetParts all = parts(*known, input, is_tight);
        if (const auto best = best_plan(all)) return {drawn(std::move(all), *best), known.error()};
    }
    return error("no-room"_id, "the sheet has no room for all it must say",
                 "shorten the notes, or choose the other way up, A4 paper or metric units");
}

Result<std::string> spring_sheet_pdf(const SheetInput& input) {
    const auto drawing = spring_sheet(input);
    if (!drawing) return drawing.error();
    Diagnostics ignored;  // the same texts were complained of by spring_sheet()
    const record::Spec spec = printable(input.spec, ignored);
    const Wording& words = input.paper.words;
    std::vector<Attachment> attached;
    if (!input.spec_text.empty()) attached.push_back(spec_attachment(input.spec, input.spec_text, words));
    auto bytes = write_pdf(
        {&*drawing, 1},
        {title(spec, words), spec.identity.owner, words.say("document.sheet_subject"), marks_of(attached)}, attached);
    if (!bytes) return bytes.error();
    return {std::move(bytes).value(), drawing.error()};
}

}  // namespace seatload::sheet
