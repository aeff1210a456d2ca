// SPDX-License-Identifier: MIT
#include <seatload/record/counter_offer.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/record/makers_adjustment.hpp>
#include <seatload/record/offered_wire.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <seatload/units/format.hpp>

namespace seatload::record {
namespace {

void tell_adjustment(const JudgedSpec& before, const JudgedSpec& after, CounterOffer& out) {
    note_change(out.adjusted, "free length L0", "L0", millimetres(after.spec.spring.free_length),
                millimetres(before.spec.spring.free_length));
    note_change(out.adjusted, "total coils nt", "nt", shortest(after.spec.spring.total_coils),
                shortest(before.spec.spring.total_coils));
}

/// Complains of a load whose tolerance of the grade asked for is larger than what the mechanism leaves.
void judge_load_grade(const Spec& spec, const LoadAtLength& load, int grade, CounterOffer& out) {
    const spring::Spring& s = spec.spring;
    const double n = spring::active_coils(s.ends, s.total_coils);
    const Force wanted = tolerance::load_tolerance(s.wire_diameter, s.mean_diameter, n, load.nominal, grade);
    const auto inside = load_grade_inside(s, load.nominal, load.plus, load.minus);
    if (inside && *inside >= grade) return;
    out.failures.push_back({"load_grade", "load tolerance of grade " + std::to_string(grade),
                            "load tolerance of EN 15800 grade " + std::to_string(grade) + " at " +
                                millimetres(load.length) + ": ±" + units::shown(wanted, 2) + ", there is room for +" +
                                fixed(in_newton(load.plus), 2) + " -" + units::shown(load.minus, 2)});
}

/// The coarsest grade whose tolerance both loads of a sheet bear; 0: not even the finest.
int grade_on_sheet(const Spec& spec) {
    return std::min(spec.seated.grade.value_or(0), spec.full_travel.grade.value_or(0));
}

void judge_loads(const Spec& enquired, const AskedChanges& asked, CounterOffer& out) {
    if (!asked.load_grade) return;
    const int before = grade_on_sheet(enquired);
    if (*asked.load_grade > before)
        out.asked.push_back({"loads to EN 15800 grade", std::to_string(*asked.load_grade),
                             before == 0 ? "the bounds on the sheet" : std::to_string(before), "load grade"});
    judge_load_grade(out.spec, out.spec.seated, *asked.load_grade, out);
    judge_load_grade(out.spec, out.spec.full_travel, *asked.load_grade, out);
}

std::string tips_of(const check::Tips& tips) { return "±" + significant(360.0 * tips.ordered, 3) + "°"; }

/// Tips that another tolerance is asked for, where the sheet orders any.
void note_tips(const std::optional<check::Tips>& enquired, const AskedChanges& asked, CounterOffer& out) {
    if (asked.tips_degrees && enquired)
        note_change(out.asked, "end tips from half a turn apart", "tips",
                    "±" + significant(*asked.tips_degrees, 3) + "°", tips_of(*enquired));
}

/// Complains of tips held less closely than the sheet has them, with which the spring may rub.
void judge_tips(const std::optional<check::Tips>& enquired, const AskedChanges& asked, CounterOffer& out) {
    if (!asked.tips_degrees || !enquired || !out.evaluation || !out.evaluation->tips) return;
    const check::Tips& tips = *out.evaluation->tips;
    if (tips.ordered > enquired->ordered + 1e-9 && !tips.is_enough())
        out.failures.push_back({"tips", "lean with such end tips",
                                "lean with end tips " + tips_of(tips) +
                                    " from half a turn apart: " + significant(tips.most_lean_mm, 3) + " mm, at most " +
                                    significant(tips.room_mm, 3) + " mm"});
}

void tell_failures(const check::Evaluation& evaluation, CounterOffer& out) {
    for (const check::Verdict& v : evaluation.verdicts)
        if (!v.passed) out.failures.push_back({std::string(v.rule->id), std::string(v.rule->name), v.reason});
}

Fit fit_of(const CounterOffer& out) {
    if (!out.failures.empty()) return Fit::fails;
    if (sizing::room_in_tenths(out.merit.tolerance_room) < sizing::room_in_tenths(out.enquired.tolerance_room))
        return Fit::less_room;
    return out.asked.empty() ? Fit::as_enquired : Fit::fits;
}

/// Everything of the spring itself, which differs from that enquired for.
Result<JudgedSpec> rebuilt(const JudgedSpec& enquired, Spec spec, const OfferedWire& wire, const Offer& offer,
                           const JudgingBasis& basis, CounterOffer& out) {
    auto as_asked = judged_spec(std::move(spec), wire.grade, basis.tolerances, Anew{offer.changes.tips_degrees});
    if (!as_asked) return as_asked;
    const bool has_less = !as_asked->evaluation.fits() || sizing::room_in_tenths(as_asked->merit.tolerance_room) <
                                                              sizing::room_in_tenths(enquired.merit.tolerance_room);
    if (!has_less) return as_asked;
    auto better = adjusted(*as_asked, wire.is_catalogued && !as_asked->spec.own_grade, offer, basis);
    if (!better || !is_better(*better, *as_asked)) return as_asked;
    tell_adjustment(*as_asked, *better, out);
    return std::move(*better);
}

CounterOffer& judged_as(CounterOffer& out, JudgedSpec b) {
    tell_failures(b.evaluation, out);
    out.spec = std::move(b.spec);
    out.grade = std::move(b.grade);
    out.evaluation = std::move(b.evaluation);
    out.merit = b.merit;
    out.lean = std::move(b.lean);
    return out;
}

}  // namespace

Result<CounterOffer> judge_offer(const Spec& enquired, const wire::Grade& grade, const Offer& offer,
                                 const JudgingBasis& basis) {
    auto sent = judged_spec(enquired, grade, basis.tolerances, std::nullopt);
    if (!sent) return Diagnostics(sent.error());
    CounterOffer out;
    out.enquired = sent->merit;
    out.spec = enquired;
    out.grade = grade;
    if (!offer.changes.note.empty())
        out.remarks.push_back("to be read, not judged here: \"" + offer.changes.note + '"');
    const Length d = offer.wire.diameter.value_or(enquired.spring.wire_diameter);
    const OfferedWire wire = offered_wire(offer.wire, grade, d, basis.wires);
    out.remarks.insert(out.remarks.end(), wire.remarks.begin(), wire.remarks.end());
    Spec spec = enquired;
    if (wire.missing.empty()) apply_wire(spec, wire.grade, d, wire.is_catalogued, out.asked);
    apply_changes(spec, offer.changes, out.asked);
    const std::optional<check::Tips> tips = sent->evaluation.tips;
    note_tips(tips, offer.changes, out);
    out.missing = wire.missing;
    if (spec.spring.mean_diameter <= 0.0 * mm)
        out.missing.push_back("a coil diameter larger than the wire: De " +
                              millimetres(*offer.changes.outside_diameter));
    if (!out.missing.empty()) {
        out.fit = Fit::unknown;
        return out;
    }
    out.is_altered = !out.asked.empty();
    if (!out.is_altered) {
        judged_as(out, std::move(sent).value());
    } else {
        auto offered = rebuilt(*sent, std::move(spec), wire, offer, basis, out);
        if (!offered) {
            out.fit = Fit::unknown;
            for (const Diagnostic& wrong : offered.error()) out.missing.push_back(wrong.message);
            return out;
        }
        judged_as(out, std::move(offered).value());
    }
    judge_loads(enquired, offer.changes, out);
    judge_tips(tips, offer.changes, out);
    if (out.is_altered && out.failures.empty() && grade_on_sheet(out.spec) == 0)
        out.remarks.emplace_back("its loads need tolerances finer than EN 15800 grade 1 (from memory), to be agreed");
    out.fit = fit_of(out);
    return out;
}

}  // namespace seatload::record
