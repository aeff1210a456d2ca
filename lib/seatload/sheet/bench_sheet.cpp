// SPDX-License-Identifier: MIT
#include <seatload/sheet/bench_sheet.hpp>

#include <algorithm>

#include <seatload/sheet/bench_facts.hpp>
#include <seatload/sheet/bench_plot.hpp>
#include <seatload/sheet/bench_printable.hpp>
#include <seatload/sheet/bench_tables.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/page_parts.hpp>
#include <seatload/sheet/pdf_writer.hpp>

namespace seatload::sheet {
namespace {

constexpr double kLeastPlots = 80.0;     ///< both together [mm]
constexpr double kTightestPlots = 64.0;  ///< where that brings all on one page
constexpr double kMostPlots = 150.0;
constexpr double kLeastOverlay = 70.0;
constexpr double kMostOverlay = 130.0;
constexpr double kPanelGap = 4.0;
constexpr double kHeadingWidth = 21.0;  ///< of facts
constexpr std::size_t kBudgetParts = 4;

std::string title_of(const bench::Readings& session) { return session.title.empty() ? "Bench run" : session.title; }

std::string words_of(const PrintedSpring& s) {
    return "Spring “" + s.measured.name + "”, " + std::string(word(s.measured.role));
}

FactLines facts_of(std::vector<Fact> facts, double width) { return {std::move(facts), width, kHeadingWidth}; }

/// As many as go on the page together, the rest on the next.
void add_facts(PageFlow& flow, FactLines facts) {
    while (!facts.facts.empty()) {
        FactLines here = facts;
        while (here.facts.size() > 1 && height(here) > flow.height_left()) here.facts.pop_back();
        const auto room = flow.room(height(here));
        draw(room.drawing, {room.box.left, room.box.top}, here);
        facts.facts.erase(facts.facts.begin(), facts.facts.begin() + std::ssize(here.facts));
    }
}

double budgets_height(const std::vector<ShareBars>& budgets) {
    double most = 0.0;
    for (const ShareBars& bars : budgets) most = std::max(most, height(bars));
    return most;
}

void add_budgets(PageFlow& flow, const std::vector<ShareBars>& budgets) {
    const auto room = flow.room(budgets_height(budgets));
    const auto count = static_cast<double>(budgets.size());
    const double width = (room.box.width() - kPanelGap * (count - 1.0)) / count;
    double left = room.box.left;
    for (const ShareBars& bars : budgets) {
        draw(room.drawing, {left, room.box.bottom, left + width, room.box.top}, bars);
        left += width + kPanelGap;
    }
}

std::vector<Fact> joined(std::vector<Fact> first, const std::vector<Fact>& second) {
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

/// What plots may take when all else of the page has its room.
double plots_height(const PageFlow& flow, double others, double least, double most) {
    return std::clamp(flow.height_left() - others, least, most);
}

/// What stands under the plots of one spring; of several springs of one session, the bench stands on the page before.
FactLines spring_facts(const PrintedSpring& s, bool with_bench, double width) {
    std::vector<Fact> facts = joined(bench_verdict_facts(s.measured), bench_wire_facts(s.wire, s.weakenings));
    if (with_bench) facts = joined(facts, bench_session_facts(s.session));
    facts.push_back(bench_preload_fact(s.session, s.run));
    if (with_bench) facts.push_back(bench_trust_fact());
    facts.push_back(bench_caution());
    return facts_of(std::move(facts), width);
}

void add_spring(PageFlow& flow, const PrintedSpring& s, bool with_bench) {
    flow.new_page();
    flow.heading(words_of(s));
    const RuledTable results = bench_results_table(s.measured, flow.width());
    const auto budgets = bench_budgets(s.measured, kBudgetParts);
    const FactLines facts = spring_facts(s, with_bench, flow.width());
    const double measured = height(results) + budgets_height(budgets) + 3.0 * kFlowGap;
    const double all = measured + height(facts) + kFlowGap;
    // What does not go on one page goes on two: the facts stay together, and the plots fill up the first.
    const bool is_one_page = flow.height_left() - all >= kTightestPlots;
    const double least = is_one_page ? kTightestPlots : kLeastPlots;
    const auto room = flow.room(plots_height(flow, is_one_page ? all : measured, least, kMostPlots));
    draw_spring_plots(room.drawing, room.box, s.measured);
    flow.table(results);
    add_budgets(flow, budgets);
    if (!is_one_page) flow.new_page();
    add_facts(flow, facts);
}

double heights(const std::vector<RuledTable>& tables) {
    double sum = 0.0;
    for (const RuledTable& table : tables) sum += height(table) + kFlowGap;
    return sum;
}

void add_comparison(PageFlow& flow, const std::vector<PrintedSpring>& springs,
                    const std::vector<bench::Comparison>& comparisons, bool with_bench) {
    flow.heading("The springs beside one another");
    std::vector<DrawnSpring> drawn;
    std::vector<const bench::MeasuredSpring*> measured;
    for (const PrintedSpring& s : springs) {
        drawn.push_back(drawn_as(s.measured, drawn.size()));
        measured.push_back(&s.measured);
    }
    const auto values = bench_springs_tables(measured, flow.width());
    const auto differences = bench_differences_tables(comparisons, flow.width());
    std::vector<Fact> facts{
        {"Signs",
         "Value ± U. * The difference is larger than its own U; errors of the bench that both springs share cancel in "
         "it. By rate, by length: the parts of a difference of loads due to rate and to free length."}};
    if (with_bench) facts = joined(facts, bench_session_facts(springs.front().session));
    const FactLines foot = facts_of(joined(facts, {bench_trust_fact(), bench_caution()}), flow.width());
    const double with_values = heights(values) + kFlowGap;
    double others = with_values + heights(differences) + height(foot) + kFlowGap;
    // What does not go on one page goes on two, and the plot fills up the first.
    if (flow.height_left() - others < kLeastOverlay) others = with_values;
    const auto room = flow.room(plots_height(flow, others, kLeastOverlay, kMostOverlay));
    draw_overlay_plot(room.drawing, room.box, drawn);
    for (const RuledTable& table : values) flow.table(table);
    for (const RuledTable& table : differences) flow.table(table);
    add_facts(flow, foot);
}

bool is_one_session(const std::vector<BenchSpring>& springs) {
    return std::all_of(springs.begin(), springs.end(),
                       [&](const BenchSpring& s) { return &s.session == &springs.front().session; });
}

TitleBlock title_block(const bench::Readings& session) {
    TitleBlock block;
    block.title = title_of(session);
    block.date_of_issue = session.date;
    block.document_type = "bench run";
    block.document_status = "for our own use";
    return block;
}

}  // namespace

Result<std::vector<Drawing>> bench_sheet(const BenchSheetInput& input) {
    if (input.springs.empty()) return error("bad-pdf"_id, "a bench sheet needs at least one measured spring");
    Diagnostics diagnostics;
    const std::vector<PrintedSpring> springs = printable(input.springs, diagnostics);
    if (has_error(diagnostics)) return diagnostics;
    PageFlow flow(input.size);
    std::vector<PagePart> parts;
    const bool is_shared = springs.size() > 1 && is_one_session(input.springs);
    if (springs.size() > 1) {
        add_comparison(flow, springs, printable(input.comparisons), is_shared);
        parts.push_back({flow.pages().size(), "Comparison of " + std::to_string(springs.size()) + " springs"});
    }
    for (const PrintedSpring& s : springs) {
        add_spring(flow, s, !is_shared);
        parts.push_back({flow.pages().size(), words_of(s)});
    }
    std::vector<Drawing> pages = std::move(flow.pages());
    draw_title_blocks(pages, parts, title_block(springs.front().session), input.words);
    return {std::move(pages), diagnostics};
}

Result<std::string> bench_sheet_pdf(const BenchSheetInput& input) {
    const auto pages = bench_sheet(input);
    if (!pages) return pages.error();
    Diagnostics ignored;  // the same texts were complained of by bench_sheet()
    const std::string title = readable(title_of(input.springs.front().session), "title", ignored);
    auto bytes = write_pdf(*pages, {title, "", "Springs measured on the bench"});
    if (!bytes) return bytes.error();
    return {std::move(bytes).value(), pages.error()};
}

}  // namespace seatload::sheet
