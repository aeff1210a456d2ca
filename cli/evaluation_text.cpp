// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>
#include <seatload/wire/unknown_tolerance.hpp>

#include <cli/doubt_text.hpp>
#include <cli/evaluation_view.hpp>
#include <cli/lean_text.hpp>
#include <cli/measured_view.hpp>
#include <cli/outlook_view.hpp>
#include <cli/text_table.hpp>
#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

using units::shown;
using Align = TextTable::Align;

constexpr std::size_t kReason = 9;  // column where the words on a limit begin

std::string percent(double share) { return fixed(100.0 * share, 0) + " %"; }

std::string_view finding(Judge judge, bool fits) {
    switch (judge) {
        case Judge::usual_limits:
            return fits ? "within the usual limits" : "outside the usual limits";
        case Judge::own_spec:
            return fits ? "keeps the limits and loads of its spec" : "breaks the limits or loads of its spec";
        case Judge::requirement:
            return fits ? "meets the requirement" : "does not meet the requirement";
    }
    return "";
}

bool is_guessed(const EvaluationView& v) { return v.measured != nullptr && v.measured->wire_is_guessed; }

/// Whether a limit is one of the wire itself: another wire that is as stiff may keep it or not.
bool is_of_wire(const check::Rule& rule) {
    return rule.id == "stress" || rule.id == "fatigue" || rule.id == "service_temperature" || rule.id == "static_wire";
}

/// Whether the finding could be another one with another wire: no limit is broken that any wire would break.
bool hangs_on_guess(const EvaluationView& v) {
    const auto& verdicts = v.evaluation.verdicts;
    return is_guessed(v) &&
           std::all_of(verdicts.begin(), verdicts.end(),
                       [](const check::Verdict& each) { return each.passed || is_of_wire(*each.rule); }) &&
           std::all_of(v.measured_verdicts.begin(), v.measured_verdicts.end(),
                       [](const auto& each) { return each.proof == record::Proof::kept; });
}

/// What a verdict on the wire rests on, where that is less than a standard.
std::string basis_words(const EvaluationView& v, const check::Rule& rule) {
    if (!is_of_wire(rule)) return {};
    if (is_guessed(v)) return ", if the wire is as guessed";
    if (rule.id != "stress" && rule.id != "fatigue") return {};
    const wire::Evidence evidence = v.evaluation.strength.evidence;
    if (evidence == wire::Evidence::estimate) return ", by an Rm that is an estimate";
    return evidence == wire::Evidence::memory ? ", by an Rm from memory" : "";
}

std::string heading(const EvaluationView& v, int width) {
    std::string words = v.file + (v.name.empty() ? "" : " (" + cut_name(v.name, width) + ")") + ": ";
    words += std::string(finding(v.judge, v.fits())) + (hangs_on_guess(v) ? ", if its wire is as guessed" : "");
    if (!v.is_temperature_stated && v.fits()) words += ", cold; how hot it gets in service is not stated";
    return wrapped("", words, width, 2);
}

/// Beside the wire: what is reckoned with it does not hold a thicker or thinner one.
std::string unknown_tolerance(const EvaluationView& v) {
    return wire::unknown_tolerance_words(v.outlook != nullptr ? wire::Flattered::solid_length_and_shares
                                                              : wire::Flattered::solid_length);
}

std::string wire_lines(const EvaluationView& v, int width) {
    const auto& e = v.evaluation;
    std::string words = v.grade.id + ", " + v.grade.family_text + ", d " + units::shown_wire(e.spring.wire_diameter) +
                        ": Rm at least " + shown(e.strength.minimum, 0);
    if (e.strength.evidence != wire::Evidence::standard && e.strength.evidence != wire::Evidence::given)
        words += " (" + std::string(wire::word(e.strength.evidence)) + ")";
    words += ", G " + shown(e.moduli.shear, 0) + ", E " + shown(e.moduli.young, 0);
    if (!wire::diameter_tolerance_at(v.grade, e.spring.wire_diameter)) words += "; " + unknown_tolerance(v);
    std::string lines = wrapped("  ", words, width, 4);
    if (!is_guessed(v)) return lines;
    return lines + wrapped("  ",
                           "This wire is a guess by the spring's stiffness: its strength and its service temperature "
                           "may be those of another.",
                           width, 4);
}

void add_pair(TextTable& table, std::string a, std::string b, std::string c, std::string d) {
    table.add({std::move(a), std::move(b), std::move(c), std::move(d)});
}

std::string geometry(const EvaluationView& v) {
    const auto& e = v.evaluation;
    const auto& s = e.spring;
    const bool is_of_thickest = v.requirement.limits.solid_form == demand::SolidForm::en;
    const std::string solid = std::string("solid length Lc, ") + (is_of_thickest ? "largest" : "d as drawn");
    TextTable t({Align::left, Align::right, Align::left, Align::right});
    add_pair(t, "outside diameter De", shown(s.outside_diameter(), 2), "free length L0", shown(s.free_length, 2));
    add_pair(t, "mean diameter D", shown(s.mean_diameter, 2), solid, shown(e.solid_length, 2));
    add_pair(t, "inside diameter Di", shown(s.inside_diameter(), 2), "smallest length Ln", shown(e.smallest_length, 2));
    add_pair(t, "total coils nt", significant(s.total_coils, 6), "active coils n", significant(e.active_coils, 6));
    add_pair(t, "ends", std::string(spring::word(s.ends)), "wound", std::string(spring::word(s.hand)));
    add_pair(t, "spring index w", fixed(e.index, 2), "stress factor k", fixed(e.stress_factor, 3));
    add_pair(t, "pitch m", shown(e.pitch, 2), "helix angle",
             fixed(in_base_unit(e.helix_angle) * 180.0 / std::numbers::pi, 1) + "°");
    add_pair(t, "wire length", shown(e.wire_length, 0), "mass", shown(e.mass, 2));
    add_pair(t, "rate R", shown(e.rate, 4), "rate in service", shown(e.rate_hot, 4));
    add_pair(t, "widening, ends free", shown(e.growth_ends_free, 3), "widening, ends held",
             shown(e.growth_ends_held, 3));
    add_pair(t, "natural frequency", shown(e.natural_frequency, 0), "buckling deflection",
             e.buckling_deflection ? shown(*e.buckling_deflection, 2) : "never");
    return t.text(2);
}

std::string loads(const EvaluationView& v) {
    const auto& e = v.evaluation;
    TextTable t({Align::left, Align::right, Align::right, Align::right, Align::right, Align::right, Align::right});
    t.add({"at", "length", "load", "in service", "stress", "with k", "of Rm"});
    const auto row = [&](const std::string& name, const check::AtLength& at) {
        t.add({name, shown(at.length, 2), shown(at.load, 2), shown(at.load_in_service, 2), shown(at.stress, 0),
               shown(at.corrected_stress, 0), percent(at.share_of_strength)});
    };
    if (e.seated) row("seated L1", *e.seated);
    if (e.full_travel) row("full travel L2", *e.full_travel);
    row("smallest Ln", e.at_smallest_length);
    row("solid Lc (theory)", e.at_solid);
    return t.text(2);
}

/// What heat does to the loads; where nobody said how hot it gets, how to say it.
std::string service_words(const EvaluationView& v) {
    if (!v.is_temperature_stated)
        return "How hot it gets in service is not stated: 20 °C is taken, and no load loss counted. State it in the "
               "file, under [surroundings], as temperature.";
    const double loss = v.evaluation.load_loss;
    std::string words = "In service: " + shown(v.requirement.surroundings.temperature) + ", ";
    words += loss > 0.0 ? "load loss taken as " + fixed(100.0 * loss, 1) + " %" : "no load loss counted";
    if (!v.requirement.limits.load_loss && loss > 0.0) words += " (guidance, an estimate)";
    return words + '.';
}

std::string sideways(const EvaluationView& v, int width) {
    if (!v.evaluation.sideways) return {};
    const auto& s = *v.evaluation.sideways;
    std::string words = "Sliding seat, " + shown(s.play, 2) + " of sideways play: ";
    words +=
        s.stiffness
            ? "sideways stiffness " + shown(*s.stiffness, 3) + " at full travel, stress there with the play taken up " +
                  shown(s.combined_stress, 0)
            : std::string("the spring pushes itself sideways before full travel and has no sideways stiffness there");
    return wrapped("  ", words, width, 4);
}

std::string verdict_lines(const EvaluationView& v, const check::Verdict& verdict, int width) {
    std::string words = verdict.reason;
    if (std::isfinite(verdict.margin) && verdict.measure.limit != 0.0)
        words +=
            verdict.passed ? " (" + percent(verdict.margin) + " left)" : " (" + percent(-verdict.margin) + " beyond)";
    words += basis_words(v, *verdict.rule);
    std::string lines = wrapped(verdict.passed ? "  ok     " : "  FAILS  ", words, width, kReason);
    if (verdict.passed) return lines;
    return lines + wrapped(std::string(kReason, ' '), "source: " + verdict.source, width, kReason);
}

/// The wire's limit of temperature, beside a spring of which nobody said how hot it gets.
std::string open_temperature_lines(const check::Verdict& verdict, int width) {
    return wrapped("  ?      ",
                   std::string(verdict.rule->subject) + ": not stated, at most " +
                       check::shown(verdict.measure.limit, verdict.rule->unit),
                   width, kReason);
}

std::string verdict_lines(const record::MeasuredVerdict& verdict, int width) {
    const bool is_least = verdict.sense == check::Sense::at_least;
    const double load = in_newton(verdict.load.value);
    const double limit = in_newton(verdict.limit);
    const double plus_minus = in_newton(verdict.load.plus_minus);
    std::string words = verdict.name + ": " + doubt_text(load, plus_minus) + " N, " +
                        (is_least ? "at least " : "at most ") + significant(limit, 4) + " N";
    if (verdict.proof == record::Proof::unsure)
        return wrapped("  UNSURE ", words + ": nearer than its ±, so neither is proven", width, kReason);
    const bool is_kept = verdict.proof == record::Proof::kept;
    if (limit > 0.0) words += " (" + percent(std::abs(load - limit) / limit) + (is_kept ? " left)" : " beyond)");
    return wrapped(is_kept ? "  ok     " : "  FAILS  ", words, width, kReason);
}

/// The limits broken, then those kept.
std::string limit_lines(const EvaluationView& v, int width) {
    std::string broken, kept;
    for (const record::MeasuredVerdict& verdict : v.measured_verdicts)
        (verdict.proof == record::Proof::kept ? kept : broken) += verdict_lines(verdict, width);
    for (const check::Verdict& verdict : v.evaluation.verdicts) {
        const bool is_open = !v.is_temperature_stated && verdict.rule->id == "service_temperature";
        (verdict.passed && !is_open ? kept : broken) +=
            is_open ? open_temperature_lines(verdict, width) : verdict_lines(v, verdict, width);
    }
    return broken + kept;
}

}  // namespace

bool EvaluationView::fits() const {
    return evaluation.fits() && std::all_of(measured_verdicts.begin(), measured_verdicts.end(),
                                            [](const auto& each) { return each.proof == record::Proof::kept; });
}

std::string evaluation_text(const EvaluationView& v, int width) {
    const auto& limits = v.requirement.limits;
    std::string out = heading(v, width) + wire_lines(v, width) + '\n' + geometry(v) + '\n' + loads(v);
    out += wrapped("  ", service_words(v), width, 4) + sideways(v, width) +
           lean_text(v.evaluation, v.measured != nullptr, width) + '\n';
    if (v.measured != nullptr) out += measured_text(*v.measured, v.evaluation, width) + '\n';
    out += wrapped("  ", "Limits, school " + std::string(spring::word(limits.school)) + ":", width, 4);
    out += limit_lines(v, width);
    return v.outlook != nullptr ? out + '\n' + outlook_text(*v.outlook, width) : out;
}

}  // namespace seatload::cli
