// SPDX-License-Identifier: MIT
#include <seatload/sheet/facts.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include <seatload/check/numbers.hpp>
#include <seatload/core/diagnostic.hpp>
#include <seatload/core/text.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/printable.hpp>
#include <seatload/sheet/wire_range.hpp>
#include <seatload/spring/buckling.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::sheet {
namespace {

constexpr double kSolidShare = 0.56;  ///< of Rm, permissible at solid length (EN 13906-1 cl. 10, from memory)

bool holds(const std::vector<record::Adjustable>& list, record::Adjustable quantity) {
    return std::find(list.begin(), list.end(), quantity) != list.end();
}

std::optional<Diagnostic> over_defined(const record::Spec& spec) {
    const bool coils = holds(spec.adjustable, record::Adjustable::coils_and_wire) ||
                       holds(spec.adjustable, record::Adjustable::coils_and_diameter);
    const bool length = holds(spec.adjustable, record::Adjustable::free_length);
    if (coils && length) return std::nullopt;
    const std::string missing = coils    ? "the free length"
                                : length ? "the coils with the wire or the coil diameter"
                                         : "anything";
    return error(
        "over-defined"_id, "over-defined: both loads are required, and the maker may not adjust " + missing,
        "let the maker adjust the free length, and the coils with either the wire diameter or the coil diameter");
}

/// What keeps a spring from being drawn at all; a spring that is merely unfit is drawn all the same.
std::optional<Diagnostic> undrawable(const record::Spec& spec) {
    const spring::Spring& s = spec.spring;
    const bool is_body = s.wire_diameter > 0.0 * mm && s.mean_diameter > s.wire_diameter;
    if (!is_body)
        return error("impossible-spring"_id, "the coil diameter is not larger than the wire",
                     "look at wire_diameter and the diameter of the coils: are they exchanged?");
    if (!(spring::active_coils(s.ends, s.total_coils) > 0.0))
        return error("impossible-spring"_id, "the spring has no active coils",
                     "total_coils counts the closed coils of both ends too: two or so are not active");
    if (!(s.free_length > s.wire_diameter * spring::textbook_solid_wires(s.ends, s.total_coils)))
        return error("impossible-spring"_id, "the free spring is not longer than its coils",
                     "look at free_length, total_coils and wire_diameter: pressed solid it would be longer than free");
    if (!(spec.seated.length < s.free_length && spec.full_travel.length <= spec.seated.length))
        return error("impossible-spring"_id, "the lengths do not fall from free to seated to full travel",
                     "look at free_length, seated_height and full_travel_height: are two of them exchanged?");
    return std::nullopt;
}

std::optional<Trusted<Length>> wire_tolerance(const wire::Grade& grade, Length d) {
    for (const wire::ToleranceRow& row : grade.diameter_tolerance)
        if (d <= row.up_to) return Trusted<Length>{row.plus_minus, row.evidence};
    return std::nullopt;
}

std::optional<Trusted<Length>> coil_tolerance(const record::Spec& spec, const tolerance::Tables& tables) {
    const Length D = spec.spring.mean_diameter;
    const auto value = tolerance::diameter_tolerance(tables, D, spec.spring.index(), spec.diameter_grade);
    if (!value) return std::nullopt;
    wire::Evidence evidence = wire::Evidence::memory;
    for (const tolerance::DiameterRow& row : tables.diameter)
        if (row.over < D && D <= row.up_to) evidence = row.evidence[static_cast<std::size_t>(spec.diameter_grade - 1)];
    return Trusted<Length>{*value, evidence};
}

std::optional<Force> grade_tolerance(const record::Spec& spec, const record::LoadAtLength& load, double n) {
    if (!load.grade) return std::nullopt;
    return tolerance::load_tolerance(spec.spring.wire_diameter, spec.spring.mean_diameter, n, load.nominal,
                                     *load.grade);
}

/// What check::evaluate needs of the spec. The sheet's numbers are those of the cold spring, so that a wire whose load
/// loss at service temperature is not known can still be drawn.
demand::Requirement cold_requirement(const record::Spec& spec) {
    demand::Requirement requirement = record::requirement_of(spec);
    requirement.space.seated_height = spec.seated.length;
    requirement.space.full_travel_height = spec.full_travel.length;
    requirement.surroundings.temperature = Celsius{20.0};
    return requirement;
}

/// What another spring for the same sheet must keep: the loads are those ordered, not those we need, which the maker's
/// copy of the spec does not tell.
demand::Requirement own_requirement(const record::Spec& spec) {
    demand::Requirement requirement = cold_requirement(spec);
    requirement.seated_load = requirement.full_travel_load = {};
    return requirement;
}

/// A load the spring of the spec does not give, as drawn, within its own tolerances.
std::optional<Diagnostic> contradiction(const check::Evaluation& e, const record::LoadAtLength& load,
                                        std::string_view name) {
    const Force given = e.rate * (e.spring.free_length - load.length);
    constexpr double kRounding = 1e-6;  // of a load; far below any tolerance
    const Force slack = kRounding * load.nominal;
    if (given >= load.nominal - load.minus - slack && given <= load.nominal + load.plus + slack) return std::nullopt;
    return error(
        "contradiction"_id,
        fmt::format("the spec contradicts itself: its spring gives {} N at {} mm, its {} asks for {} N to {} N",
                    significant(in_newton(given), 4), significant(in_mm(load.length), 6), name,
                    significant(in_newton(load.nominal - load.minus), 4),
                    significant(in_newton(load.nominal + load.plus), 4)),
        "`seatload check` on the spec shows more; `seatload size` finds springs that give their loads");
}

/// The free length [mm] up to which the spring keeps its buckling margin at full travel; nothing: however long it is,
/// or not even as it is.
std::optional<double> buckling_free_length_mm(const record::Spec& spec, const check::Evaluation& e) {
    if (spec.space.seats == demand::Seats::guided) return std::nullopt;
    const double moduli = e.moduli.shear / e.moduli.young;
    const auto is_stable = [&](double L0) {
        const double share =
            spring::buckling_share(L0 / in_mm(spec.spring.mean_diameter), moduli, e.seating_coefficient);
        return L0 * share >= spec.limits.buckling_margin * (L0 - in_mm(spec.full_travel.length));
    };
    double low = in_mm(spec.spring.free_length);
    double high = 4.0 * low;
    if (!is_stable(low) || is_stable(high)) return std::nullopt;
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (is_stable(middle) ? low : high) = middle;
    }
    return low;
}

Length printed_bound(const record::Spec& spec, double longest_mm) {
    return check::printed_bound(longest_mm, in_mm(spec.spring.free_length)) * mm;
}

/// What buckling and the room for the free spring leave.
std::optional<Length> longest_upright(const record::Spec& spec, const check::Evaluation& e) {
    std::optional<double> bound = buckling_free_length_mm(spec, e);
    const auto& room = spec.space.free_length;
    if (room && room->largest >= spec.spring.free_length)
        bound = std::min(bound.value_or(in_mm(room->largest)), in_mm(room->largest));
    return bound ? std::optional(printed_bound(spec, *bound)) : std::nullopt;
}

std::optional<Length> smaller(std::optional<Length> a, std::optional<Length> b) {
    if (!a || !b) return a ? a : b;
    return std::min(*a, *b);
}

std::optional<Length> longest_free_length(const record::Spec& spec, const check::Evaluation& e) {
    std::optional<Length> by_lean;
    if (e.lean_bounds && std::isfinite(e.lean_bounds->longest_mm))
        by_lean = printed_bound(spec, e.lean_bounds->longest_mm);
    return smaller(longest_upright(spec, e), by_lean);
}

/// Nothing unless lean asks for a shorter spring than all else, and closer tips give some of that back.
std::optional<CloserTips> closer_tips(const record::Spec& spec, const check::Evaluation& e) {
    if (!e.lean_bounds || !e.lean_bounds->closer) return std::nullopt;
    const auto& closer = *e.lean_bounds->closer;
    const Length longest = *smaller(longest_upright(spec, e), printed_bound(spec, closer.longest_mm));
    if (longest <= *longest_free_length(spec, e)) return std::nullopt;
    return CloserTips{closer.tips, longest};
}

/// What the sheet lets pass of free length and tips, whatever wire the maker takes.
std::vector<LeanPromise> lean_promises(const Facts& facts) {
    if (!facts.values.lean_bounds) return {};
    const Length longest = facts.longest_free_length.value_or(facts.spec.spring.free_length);
    std::vector<LeanPromise> out{{facts.half_turn_tolerance(), longest}};
    if (facts.closer_tips) out.push_back({facts.closer_tips->turns, facts.closer_tips->longest_free_length});
    return out;
}

}  // namespace

bool Facts::may_adjust(record::Adjustable quantity) const { return holds(spec.adjustable, quantity); }

Length Facts::longest_solid() const {
    if (spec.limits.solid_form == demand::SolidForm::en || !wire_tolerance) return values.solid_length;
    const spring::Spring& s = spec.spring;
    return values.solid_length + wire_tolerance->value * spring::textbook_solid_wires(s.ends, s.total_coils);
}

check::AtLength Facts::at_longest_solid() const {
    check::AtLength at = values.at_solid;
    at.length = longest_solid();
    at.deflection = spec.spring.free_length - at.length;
    const double share = at.deflection / values.at_solid.deflection;
    at.load *= share;
    at.load_in_service *= share;
    at.stress *= share;
    at.corrected_stress *= share;
    at.share_of_strength *= share;
    return at;
}

bool Facts::bears_solid() const { return values.at_solid.share_of_strength <= kSolidShare; }

std::optional<double> Facts::half_turn_tolerance() const {
    if (!values.tips) return std::nullopt;
    return values.tips->ordered;
}

Result<Facts> facts(const record::Spec& as_written, const wire::Grade& grade, const tolerance::Tables& tables,
                    const Paper& paper) {
    Diagnostics diagnostics;
    record::Spec spec = printable(as_written, diagnostics);
    for (const auto& wrong : {over_defined(spec), undrawable(spec)})
        if (wrong) diagnostics.push_back(*wrong);
    if (has_error(diagnostics)) return diagnostics;
    auto evaluation = check::evaluate(spec.spring, grade, cold_requirement(spec), tables);
    if (!evaluation) return evaluation.error();
    check::Evaluation values = std::move(evaluation).value();
    for (const auto& wrong : {contradiction(values, spec.seated, "seated load"),
                              contradiction(values, spec.full_travel, "load at full travel")})
        if (wrong) diagnostics.push_back(*wrong);
    if (has_error(diagnostics)) return diagnostics;
    for (record::LoadAtLength* load : {&spec.seated, &spec.full_travel})
        load->grade = record::load_grade_inside(spec.spring, load->nominal, load->plus, load->minus);
    const double n = values.active_coils;
    const Stress permissible =
        check::permissible_share(grade, spec.limits) / spec.limits.stress_safety * values.strength.minimum;
    const auto longest = longest_free_length(spec, values);
    const auto closer = closer_tips(spec, values);
    Facts out{paper,
              spec,
              printable(grade, diagnostics),
              std::move(values),
              wire_tolerance(grade, spec.spring.wire_diameter),
              coil_tolerance(spec, tables),
              tolerance::squareness(spec.spring.free_length, spec.squareness_grade),
              tolerance::parallelism(spec.spring.outside_diameter(), spec.squareness_grade),
              grade_tolerance(spec, spec.seated, n),
              grade_tolerance(spec, spec.full_travel, n),
              permissible,
              longest,
              closer};
    if (has_error(diagnostics)) return diagnostics;
    if (out.wire_is_adjustable())
        out.wire_range =
            wire_range(spec, grade, own_requirement(spec), tables, out.half_turn_tolerance(), lean_promises(out));
    return {std::move(out), std::move(diagnostics)};
}

}  // namespace seatload::sheet
