// SPDX-License-Identifier: MIT
#include <seatload/record/counter_offer.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/record/offered_wire.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sizing/spread.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::record {
namespace {

constexpr int kUsualGrade = 2;  // of EN 15800, in which a spec's tolerance room is counted
constexpr double kMostTurnsAdjusted = 2.0;
constexpr double kTurnStep = 0.5;

std::string millimetres(Length length) { return shortest(in_mm(length)) + " mm"; }

/// A spec with what is needed to judge it.
struct Built {
    Spec spec;
    wire::Grade grade;
    check::Evaluation evaluation;
    sizing::Merit merit;
    LeanTold lean;
};

demand::Requirement requirement_with(const Spec& spec, const wire::Grade& grade, bool is_catalogued) {
    demand::Requirement r = requirement_of(spec);
    r.limits.tips_degrees.reset();  // of the spring as it was; of another they are ordered anew
    r.wire.own_grades.clear();
    r.wire.grades.clear();
    if (is_catalogued)
        r.wire.grades = {grade.id};
    else
        r.wire.own_grades = {grade};
    r.wire.diameters = {spec.spring.wire_diameter};
    r.load_grade = kUsualGrade;
    return r;
}

/// What is ordered anew of a spring that is another than that of its spec.
struct Anew {
    std::optional<double> tips_degrees;  ///< as asked for
};

/// The spec judged as it stands; with `anew`, its spring is another than that of its loads.
Result<Built> built(Spec spec, const wire::Grade& grade, const tolerance::Tables& tables,
                    const std::optional<Anew>& anew) {
    if (anew) spec.limits.tips_degrees = anew->tips_degrees;
    demand::Requirement r = requirement_of(spec);
    r.load_grade = kUsualGrade;
    auto evaluation = check::evaluate(spec.spring, grade, r, tables);
    if (!evaluation) return Diagnostics(evaluation.error());
    const auto wire = check::numbers(grade, spec.spring.wire_diameter, r);
    SEATLOAD_ASSERT(wire.has_value());
    const check::DemandNumbers demand = check::numbers(r);
    const check::Coil coil(demand, *wire, tables, in_mm(spec.spring.mean_diameter), spec.spring.ends,
                           spec.spring.total_coils);
    const sizing::Merit merit = sizing::merit(coil, in_mm(spec.spring.free_length));
    if (anew) {
        order_loads(spec, *wire, kUsualGrade);
        order_tips(spec, *evaluation);
    }
    LeanTold lean = lean_told(coil, in_mm(spec.spring.free_length));
    return Built{std::move(spec), grade, std::move(evaluation).value(), merit, std::move(lean)};
}

bool is_better(const Built& a, const Built& b) {
    if (a.evaluation.fits() != b.evaluation.fits()) return a.evaluation.fits();
    return sizing::room_in_tenths(a.merit.tolerance_room) > sizing::room_in_tenths(b.merit.tolerance_room);
}

/// What changes are made of: names, and values as people write them.
void note_change(std::vector<Difference>& into, const std::string& name, const std::string& symbol,
                 const std::string& now, const std::string& before) {
    if (now != before) into.push_back({name, now, before, symbol});
}

/// A length cleared of what differences of decimals leave in the last binary digits: it goes into the file of a spec.
Length cleared(Length length) { return std::round(in_mm(length) * 1e9) / 1e9 * mm; }

/// The coil diameter the sheet requires.
Length required_diameter(const Spec& spec) {
    return spec.bore_rules ? spec.spring.outside_diameter() : spec.spring.inside_diameter();
}

void apply_wire(Spec& spec, const wire::Grade& grade, Length diameter, bool is_catalogued, CounterOffer& out) {
    note_change(out.asked, "wire", "wire", grade.id, spec.wire_grade);
    note_change(out.asked, "wire diameter d", "d", units::shown_wire(diameter),
                units::shown_wire(spec.spring.wire_diameter));
    const Length kept = required_diameter(spec);
    spec.spring.wire_diameter = diameter;
    spec.spring.mean_diameter = cleared(spec.bore_rules ? kept - diameter : kept + diameter);
    if (grade.id == spec.wire_grade) return;
    spec.wire_grade = grade.id;
    spec.own_grade.reset();
    if (is_catalogued) return;
    spec.own_grade = grade;
    // A wire of its own carries no guidance along into the file of the spec.
    if (!spec.limits.load_loss) spec.limits.load_loss = wire::load_loss_at(grade, spec.surroundings.temperature);
}

void apply_changes(Spec& spec, const AskedChanges& asked, CounterOffer& out) {
    spring::Spring& s = spec.spring;
    if (asked.outside_diameter) {
        note_change(out.asked, "outside diameter De", "De", millimetres(*asked.outside_diameter),
                    millimetres(cleared(s.outside_diameter())));
        s.mean_diameter = cleared(*asked.outside_diameter - s.wire_diameter);
    }
    if (asked.total_coils) {
        note_change(out.asked, "total coils nt", "nt", shortest(*asked.total_coils), shortest(s.total_coils));
        s.total_coils = *asked.total_coils;
    }
    if (asked.free_length) {
        note_change(out.asked, "free length L0", "L0", millimetres(*asked.free_length), millimetres(s.free_length));
        s.free_length = *asked.free_length;
    }
    if (asked.ends) {
        note_change(out.asked, "ends", "ends", std::string(spring::word(*asked.ends)),
                    std::string(spring::word(s.ends)));
        s.ends = *asked.ends;
    }
    if (asked.diameter_grade) {
        note_change(out.asked, "coil diameter to EN 15800 grade", "coil diameter grade",
                    std::to_string(*asked.diameter_grade), std::to_string(spec.diameter_grade));
        spec.diameter_grade = *asked.diameter_grade;
        spec.limits.diameter_grade = *asked.diameter_grade;
    }
}

bool may_adjust(const Spec& spec, Adjustable what) {
    return std::find(spec.adjustable.begin(), spec.adjustable.end(), what) != spec.adjustable.end();
}

/// The grid of what the maker may still adjust; all else is a single point (an axis whose step is its value).
void set_grid(demand::Requirement& r, const Spec& spec, const AskedChanges& asked) {
    const spring::Spring& s = spec.spring;
    r.grid.mean_diameter = demand::LengthRange{s.mean_diameter, s.mean_diameter};
    r.grid.mean_diameter_step = s.mean_diameter;
    const bool coils = !asked.total_coils && (may_adjust(spec, Adjustable::coils_and_wire) ||
                                              may_adjust(spec, Adjustable::coils_and_diameter));
    const double room = coils ? kMostTurnsAdjusted : 0.0;
    // Half turns away from what is on the sheet, so that quarter turns stay quarter turns.
    const bool is_even = std::fmod(s.total_coils, kTurnStep) == 0.0;
    r.grid.total_coils = {std::max(s.total_coils - room, kTurnStep), s.total_coils + room};
    r.grid.total_coils_step = !coils ? s.total_coils : is_even ? kTurnStep : 0.5 * kTurnStep;
    if (!asked.free_length && may_adjust(spec, Adjustable::free_length)) return;
    r.grid.free_length = demand::LengthRange{s.free_length, s.free_length};
    r.grid.free_length_step = s.free_length;
}

/// The best spring that the sheet lets the maker make of a spec; nothing when none keeps all limits.
std::optional<Built> adjusted(const Built& from, bool is_catalogued, const Offer& offer, const JudgingBasis& basis) {
    demand::Requirement r = requirement_with(from.spec, from.grade, is_catalogued);
    set_grid(r, from.spec, offer.changes);
    r.limits.tips_degrees = offer.changes.tips_degrees;
    const sizing::Space space = sizing::search_space(r, basis.wires);
    const auto found = sizing::spread(space, sizing::search(space, basis.tolerances), 1);
    if (found.empty()) return std::nullopt;
    Spec spec = from.spec;
    spec.spring.total_coils = found.front().candidate.total_coils;
    spec.spring.free_length = found.front().candidate.free_length_mm * mm;
    auto better = built(std::move(spec), from.grade, basis.tolerances, Anew{offer.changes.tips_degrees});
    SEATLOAD_ASSERT(better.has_value());
    return std::move(better).value();
}

void tell_adjustment(const Built& before, const Built& after, CounterOffer& out) {
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
Result<Built> rebuilt(const Built& enquired, Spec spec, const OfferedWire& wire, const Offer& offer,
                      const JudgingBasis& basis, CounterOffer& out) {
    auto as_asked = built(std::move(spec), wire.grade, basis.tolerances, Anew{offer.changes.tips_degrees});
    if (!as_asked) return as_asked;
    const bool has_less = !as_asked->evaluation.fits() || sizing::room_in_tenths(as_asked->merit.tolerance_room) <
                                                              sizing::room_in_tenths(enquired.merit.tolerance_room);
    if (!has_less) return as_asked;
    auto better = adjusted(*as_asked, wire.is_catalogued && !as_asked->spec.own_grade, offer, basis);
    if (!better || !is_better(*better, *as_asked)) return as_asked;
    tell_adjustment(*as_asked, *better, out);
    return std::move(*better);
}

CounterOffer& judged_as(CounterOffer& out, Built b) {
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
    auto sent = built(enquired, grade, basis.tolerances, std::nullopt);
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
    if (wire.missing.empty()) apply_wire(spec, wire.grade, d, wire.is_catalogued, out);
    apply_changes(spec, offer.changes, out);
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
