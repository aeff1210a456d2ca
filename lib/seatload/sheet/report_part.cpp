// SPDX-License-Identifier: MIT
#include <seatload/sheet/report_part.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/sheet/fatigue_diagram.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/load_diagram.hpp>
#include <seatload/sheet/report_limits.hpp>
#include <seatload/sheet/report_outlook.hpp>
#include <seatload/sheet/report_simulation.hpp>
#include <seatload/sheet/report_steps.hpp>
#include <seatload/spring/fatigue.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <seatload/units/format.hpp>

namespace seatload::sheet {
namespace {

constexpr double kDiagramHeight = 86.0;
constexpr double kFatigueHeight = 84.0;
constexpr double kHistogramHeight = 56.0;
constexpr double kLeastHistogramHeight = 36.0;  ///< where that keeps all four off a page of their own
constexpr double kHistogramKey = 6.0;
constexpr double kHistogramHeading = 10.0;

/// "R = G d4/(8 D3 n)", the same with numbers, and the value.
std::string reckoning(const Step& step) {
    std::string value = step.value + (step.unit.empty() ? "" : "\u00a0" + step.unit);
    if (step.symbol.empty()) return value;
    if (step.formula.empty()) return step.symbol + " = " + value;
    const bool plain_copy = step.numbers == step.value;
    return step.symbol + " = " + step.formula + "\n= " + (plain_copy ? "" : step.numbers + " = ") + value;
}

std::string trust_words(const Step& step) {
    const std::string formula(word(step.formula_trust));
    return step.formula_trust == step.value_trust ? formula : formula + " /\n" + std::string(word(step.value_trust));
}

bool is_looked_up(const StepGroup& group) {
    return std::all_of(group.steps.begin(), group.steps.end(), [](const Step& s) { return s.formula.empty(); });
}

RuledTable steps_table(const StepGroup& group) {
    const bool looked_up = is_looked_up(group);
    RuledTable table;
    table.widths = looked_up ? std::vector{48.0, 42.0, 66.0, kReportWidth - 156.0}
                             : std::vector{38.0, 82.0, 36.0, kReportWidth - 156.0};
    table.rows.push_back({"quantity", looked_up ? "value" : "formula, numbers put in, value", "source", "trust"});
    for (const Step& step : group.steps)
        table.rows.push_back({step.name, reckoning(step), step.source, trust_words(step)});
    return table;
}

void add_limits(PageFlow& flow, const ReportSubject& s) {
    flow.headed_rows("Limits", limits_table(s, kReportWidth));
    flow.paragraph(limits_in_words(s));
    if (const std::string lean = lean_as_made(s); !lean.empty()) flow.paragraph(lean);
    if (const std::string idle = limits_not_in_play(s); !idle.empty()) flow.paragraph(idle);
}

/// The load at the length at which the static stress is judged [N].
double judged_load_n(const ReportSubject& s) {
    switch (s.demand.limits.stress_length) {
        case demand::StressLength::solid:
            return in_newton(s.values.at_solid.load);
        case demand::StressLength::smallest_permissible:
            return in_newton(s.values.at_smallest_length.load);
        case demand::StressLength::full_travel:
            return in_newton(s.full_travel().load);
    }
    return 0.0;
}

std::string marked_length(std::string_view index, double value) { return with_sub("L", index) + " " + fixed(value, 2); }
std::string marked_force(std::string_view index, double value) { return with_sub("F", index) + " " + fixed(value, 2); }

DiagramLoad diagram_load(const ReportSubject& s, const record::LoadAtLength& load, std::string_view index) {
    DiagramLoad out;
    out.length = in_mm(load.length);
    out.nominal = in_newton(load.nominal);
    out.plus = in_newton(load.plus);
    out.minus = in_newton(load.minus);
    if (load.grade)
        out.grade_tolerance = tolerance::load_tolerance_n(s.wire.d_mm, in_mm(s.spec.spring.mean_diameter),
                                                          s.values.active_coils, out.nominal, *load.grade);
    out.length_words = marked_length(index, out.length);
    out.load_words = marked_force(index, out.nominal);
    return out;
}

/// Where the spring buckles, and the load at which the stress that is judged reaches its limit.
void add_limit_lines(LoadDiagram& d, const ReportSubject& s) {
    if (s.values.buckling_deflection && !s.demand.guided) {
        d.buckling_length = d.free_length - in_mm(*s.values.buckling_deflection);
        d.buckling_words = marked_length("K", *d.buckling_length);
        d.words.buckling = "buckling";
    }
    const check::Verdict* stress = s.verdict("stress");
    if (stress == nullptr || !(stress->measure.value > 0.0)) return;
    // The judged stress grows with the load, so that the load may grow as the stress may.
    const double judged = judged_load_n(s);
    d.permissible_force = judged * stress->measure.limit / stress->measure.value;
    d.permissible_words = marked_force("τ", *d.permissible_force);
    d.permissible_above_words = d.permissible_words + " above";
    d.words.permissible = with_sub("F", "τ") + " stress limit";
}

LoadDiagram load_diagram(const ReportSubject& s) {
    LoadDiagram d;
    d.free_length = in_mm(s.spec.spring.free_length);
    d.rate = in_newton_per_mm(s.values.rate);
    d.seated = diagram_load(s, s.spec.seated, "1");
    d.full_travel = diagram_load(s, s.spec.full_travel, "2");
    d.smallest_length = s.smallest_length_mm();
    d.solid_length = in_mm(s.values.solid_length);
    d.free_words = marked_length("0", d.free_length);
    d.smallest_words = marked_length("n", d.smallest_length);
    d.smallest_load_words = marked_force("n", d.rate * (d.free_length - d.smallest_length));
    d.solid_words = marked_length("c", d.solid_length);
    d.solid_load_words = marked_force("c", d.rate * (d.free_length - d.solid_length));
    d.words.force_axis = "F [N]";
    d.words.length_axis = "L [mm]";
    d.words.ordered = "as ordered";
    d.words.grade = "EN 15800 grade";
    add_limit_lines(d, s);
    return d;
}

std::string band_words(const demand::LoadBand& band) {
    std::vector<std::string> words;
    if (band.at_least) words.push_back("at least " + units::shown(*band.at_least, 2) + " hot and after load loss");
    if (band.at_most) words.push_back("at most " + units::shown(*band.at_most, 2) + " cold and new");
    return words.empty() ? "nothing stated" : join(words, ", ");
}

void add_diagram(PageFlow& flow, const ReportSubject& s) {
    auto room = flow.headed_room("Load and length", kDiagramHeight);
    draw_load_diagram(room.drawing, room.box, load_diagram(s));
    flow.paragraph("Needed by the mechanism: seated, " + band_words(s.spec.seated_demand) + "; at full travel, " +
                   band_words(s.spec.full_travel_demand) + ". The line is that of the cold and new spring.");
}

void add_histograms(PageFlow& flow, const ReportSubject& s, const ReportSimulation& simulation) {
    const double left_for_each = 0.5 * (flow.height_left() - kHistogramHeading - kHistogramKey);
    const double each =
        left_for_each < kLeastHistogramHeight ? kHistogramHeight : std::min(left_for_each, kHistogramHeight);
    auto room = flow.headed_room("How the simulated loads fall", 2.0 * each + kHistogramKey);
    draw_histogram_key(room.drawing, {room.box.left, room.box.top - 4.0});
    const auto histograms = simulation_histograms(s, simulation);
    const double half = 0.5 * room.box.width();
    for (std::size_t k = 0; k < 4; ++k) {
        const double left = room.box.left + (k % 2 == 0 ? 0.0 : half + 2.0);
        const double top = room.box.top - kHistogramKey - (k < 2 ? 0.0 : each);
        draw_histogram(room.drawing, {left, top - each + 2.0, left + half - 2.0, top}, histograms[k]);
    }
}

void add_simulation(PageFlow& flow, const ReportSubject& s, bool with_assumptions) {
    const ReportSimulation simulation = simulated(s);
    flow.headed_table("Loads of springs made to the drawing, simulated",
                      simulation_model_table(s, simulation, kReportWidth));
    if (with_assumptions)
        for (const std::string& words : simulation_assumptions(simulation)) flow.point(words);
    flow.headed_table("What share is good", simulation_result_table(simulation, kReportWidth));
    add_histograms(flow, s, simulation);
}

void add_fatigue(PageFlow& flow, const ReportSubject& s) {
    const check::Verdict* verdict = s.verdict("fatigue");
    if (verdict == nullptr || !s.has_fatigue()) return;
    const double low = in_mpa(s.seated().corrected_stress);
    const double high = in_mpa(s.full_travel().corrected_stress);
    FatigueDiagram d;
    d.line = s.demand.limits.fatigue_line;
    d.endurance = s.demand.endurance_mpa;
    d.shear_strength = spring::kShearStrengthShare * s.wire.tensile_strength_mpa;
    d.amplitude = 0.5 * (high - low);
    d.mean = 0.5 * (high + low);
    d.factor = verdict->measure.value;
    d.factor_asked = verdict->measure.limit;
    auto room = flow.headed_room("Fatigue", kFatigueHeight);
    draw_fatigue_diagram(room.drawing, room.box, d);
    flow.paragraph("Margin " + fixed(100.0 * verdict->margin, 1) +
                   " % over the factor asked for. Zimmerli's points hold for steel wire under 10 mm and for life "
                   "without limit (Shigley Eq. 10-28 and 10-29; the conditions from memory). EN 13906-1 gives curves "
                   "instead, which were not seen; where the wire or the spring maker has a diagram of his own, it goes "
                   "before this one.");
}

}  // namespace

void add_steps(PageFlow& flow, const StepGroup& group) { flow.headed_rows(group.heading, steps_table(group)); }

void add_report_part(PageFlow& flow, const ReportSubject& s, const std::string& name, const ToldBefore& before) {
    flow.heading(name);
    const std::string why = s.spec.why.empty() ? "" : "; why it is here: " + s.spec.why;
    flow.paragraph("Wire " + s.grade.id + ", d " + units::shown_wire(s.spec.spring.wire_diameter) + why + ".");
    const auto groups = report_steps(s);
    for (std::size_t i = before.demand ? 1 : 0; i < groups.size(); ++i)
        if (!before.methods || !groups[i].stands_in_tables) add_steps(flow, groups[i]);
    if (before.methods)
        flow.paragraph(
            "What moves the loads, and their worst case, is reckoned as for the first spring of this report; what "
            "comes of it stands in the tables below. `seatload report` with this spring's spec alone prints each "
            "line.");
    add_limits(flow, s);
    add_diagram(flow, s);
    add_fatigue(flow, s);
    add_outlook(flow, s, !before.methods);
    add_simulation(flow, s, !before.methods);
}

}  // namespace seatload::sheet
