// SPDX-License-Identifier: MIT
#include <seatload/sheet/pressure_sheet.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <seatload/core/text.hpp>
#include <seatload/demand/broken_limits.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/page_parts.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/pressure_loads.hpp>
#include <seatload/sheet/pressure_plot.hpp>
#include <seatload/sheet/pressure_tables.hpp>
#include <seatload/sheet/pressure_words.hpp>
#include <seatload/sheet/printable.hpp>
#include <seatload/sheet/true_minus.hpp>

namespace seatload::sheet {
namespace {

constexpr double kBudgetLeastPlot = 68.0;
constexpr double kBudgetMostPlot = 130.0;
constexpr double kBudgetMostAlone = 165.0;      ///< where the loads stand on the next page
constexpr double kBudgetHeadAndSources = 36.0;  ///< two headings, and the paragraph under the limits
constexpr double kLeastColumns = 52.0;
constexpr double kColumnsWidth = 68.0;
constexpr double kBudgetBetween = 4.0;
constexpr double kBudgetHeadingWidth = 24.0;  ///< of facts

std::string diagram_title(const demand::Identity& identity) {
    return identity.position.empty() ? "Pressure diagram of a plunger" : "Pressure diagram, " + identity.position;
}

std::string height_words(const std::string& words, const std::optional<demand::Space>& space, bool seated,
                         Length stroke) {
    if (space) return words + ", " + fixed(in_mm(seated ? space->seated_height : space->full_travel_height), 2) + " mm";
    return words + ", lift " + (seated ? "0" : fixed(in_mm(stroke), 2) + " mm");
}

std::string percent(Share share) { return significant(100.0 * share.value, 3) + " %"; }

std::string margin_words(const demand::BudgetMargins& m) {
    if (m.hold.value <= 0.0 && m.release.value <= 0.0) return {};
    return "in the loads, not in the diagram: " + percent(m.hold) + " more push off the seat, " + percent(m.release) +
           " less push of the oil.";
}

std::string flank_words(const demand::Interval<Angle>& angle) {
    // down to a tenth: a flank a little steeper does not hold
    const auto degrees = [](Angle a) { return std::floor(in_base_unit(a) * 1800.0 / std::numbers::pi + 1e-9) / 10.0; };
    return "holds by itself up to a half-angle of " + range_words(degrees(angle.low), degrees(angle.high)) +
           "°, by its friction.";
}

/// Which limits a spring with these loads breaks, by their numbers.
std::string spring_words(const record::PlungerFile& file, const demand::Budget& budget) {
    const demand::SpringLoads& spring = *file.spring;
    std::vector<std::string> broken;
    for (const std::size_t i : demand::broken_limits(file.plunger, budget, spring))
        broken.push_back(std::to_string(i + 1));
    const std::string loads = with_sub("F", "1") + " " + range_words(spring.seated) + " N, " + with_sub("F", "2") +
                              " " + range_words(spring.full_travel) + " N";
    if (broken.empty()) return loads + ": keeps every limit.";
    return loads + ": BREAKS " + (broken.size() == 1 ? "limit " : "limits ") + join(broken, ", ") + ".";
}

/// What stands under the figures: the bands or why there are none, margins, what it all rests on.
FactLines facts_of(const PressureSheetInput& in, double width) {
    const demand::Budget& b = in.budget;
    FactLines out{{}, width, kBudgetHeadingWidth};
    if (b.is_possible())
        out.facts.push_back({"Loads allowed", "seated " + with_sub("F", "1") + " " + band_words(b.seated_rounded) +
                                                  "; at full travel " + with_sub("F", "2") + " " +
                                                  band_words(b.full_travel_rounded) + ", rounded inwards."});
    for (const demand::Contradiction& c : b.contradictions)
        out.facts.push_back({"Contradiction", with_symbols(with_true_minus(c.words + " " + c.ways_out))});
    if (in.file.spring) out.facts.push_back({"Spring given", spring_words(in.file, b)});
    if (const std::string margins = margin_words(in.file.plunger.margins); !margins.empty())
        out.facts.push_back({"Margins", margins});
    if (b.leak_pressure && !in.file.plunger.pressures.leak)
        out.facts.push_back({"Leak", "worked out from supply and leakage: " + range_words(*b.leak_pressure) + " bar."});
    if (b.self_holding) out.facts.push_back({"Flank", flank_words(*b.self_holding)});
    wire::Evidence weakest = wire::Evidence::given;
    for (const demand::BudgetLimit& limit : b.limits) weakest = wire::weaker(weakest, limit.evidence);
    const std::string trust = demand::trust_words(weakest);
    out.facts.push_back({"Trust", "statics of the plunger (textbook), inertia left out" +
                                      (trust.empty() ? ", by numbers given." : "; " + trust + ".")});
    out.facts.push_back(
        {"Caution",
         "The plunger and its spring may hold an engine or gearbox together: no diagram replaces a trial, "
         "and a competent person must judge it before use. Local codes and licensed practice govern."});
    return out;
}

void add_loads(PageFlow& flow, const PressureSheetInput& in, const FactLines& list) {
    const auto room = flow.room(std::max(kLeastColumns, height(list)));
    const double right = room.box.left + kColumnsWidth;
    draw_load_columns(room.drawing, {room.box.left, room.box.bottom, right, room.box.top},
                      {in.budget, in.file.spring, height_words("seated", in.file.space, true, in.file.plunger.stroke),
                       height_words("full travel", in.file.space, false, in.file.plunger.stroke)});
    draw(room.drawing, {right + kBudgetBetween, room.box.top}, list);
}

/// Whether the loads go on the page of how each limit was found, which few limits would leave nearly empty.
bool are_loads_with_limits(const PressureSheetInput& in, const FactLines& list, double width, double page) {
    const double limits = height(budget_limits_table(in.budget, width)) + kBudgetHeadAndSources;
    return std::max(kLeastColumns, height(list)) + limits <= page;
}

void add_plot(PageFlow& flow, const PressureSheetInput& in, double others, double most) {
    const PressurePlot plot{in.file.plunger, in.budget, pressure_cases(in.budget, in.file.spring)};
    const auto room = flow.room(std::clamp(flow.height_left() - others, kBudgetLeastPlot, most));
    draw_pressure_plot(room.drawing, room.box, plot);
}

void add_figures(PageFlow& flow, const PressureSheetInput& in, double page) {
    const FactLines list = limit_list(in.budget, flow.width() - kColumnsWidth - kBudgetBetween);
    const RuledTable moves = behaviour_table(in.budget, flow.width());
    const FactLines facts = facts_of(in, flow.width());
    const bool has_moves = !in.budget.behaviours.empty();
    const bool on_next = are_loads_with_limits(in, list, flow.width(), page);
    const double loads = on_next ? 0.0 : std::max(kLeastColumns, height(list)) + kFlowGap;
    const double others = loads + height(facts) + 2.0 * kFlowGap + (has_moves ? height(moves) + kFlowGap : 0.0);
    add_plot(flow, in, others, on_next ? kBudgetMostAlone : kBudgetMostPlot);
    if (has_moves) flow.table(moves);
    if (!on_next) add_loads(flow, in, list);
    const auto foot = flow.room(height(facts));
    draw(foot.drawing, {foot.box.left, foot.box.top}, facts);
    if (!on_next) return;
    flow.new_page();
    flow.heading("The loads its limits allow");
    add_loads(flow, in, list);
}

}  // namespace

Result<std::vector<Drawing>> pressure_sheet(const PressureSheetInput& input) {
    Diagnostics diagnostics;
    const demand::Identity identity = printable(input.file.identity, diagnostics);
    if (has_error(diagnostics)) return diagnostics;
    PageFlow flow(input.size);
    const double page = flow.height_left();
    flow.heading(input.budget.is_possible() ? "Pressure against lift, and the loads its spring may have"
                                            : "Pressure against lift: NO SPRING CAN DO IT");
    add_figures(flow, input, page);
    flow.headed_rows("How each limit was found (* makes the end of its band)",
                     budget_limits_table(input.budget, flow.width()));
    flow.paragraph("Sources. " + budget_sources(input.budget));
    std::vector<Drawing> pages = std::move(flow.pages());
    draw_title_blocks(pages, {{pages.size(), identity.engine}},
                      title_block_of(identity, diagram_title(identity), "pressure diagram"), input.words);
    return {std::move(pages), diagnostics};
}

Result<std::string> pressure_sheet_pdf(const PressureSheetInput& input) {
    const auto pages = pressure_sheet(input);
    if (!pages) return pages.error();
    Diagnostics ignored;  // the same texts were complained of by pressure_sheet()
    const demand::Identity identity = printable(input.file.identity, ignored);
    auto bytes = write_pdf(*pages, {diagram_title(identity), identity.owner, "Pressures and loads of a plunger"});
    if (!bytes) return bytes.error();
    return {std::move(bytes).value(), pages.error()};
}

}  // namespace seatload::sheet
