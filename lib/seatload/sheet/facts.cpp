// SPDX-License-Identifier: MIT
#include <seatload/sheet/facts.hpp>

#include <algorithm>

#include <seatload/record/specify.hpp>
#include <seatload/sheet/complaint.hpp>
#include <seatload/sheet/printable.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::sheet {
namespace {

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
        "over-defined: both loads are required, and the maker may not adjust " + missing,
        "let the maker adjust the free length, and the coils with either the wire diameter or the coil diameter");
}

/// What keeps a spring from being drawn at all; a spring that is merely unfit is drawn all the same.
std::optional<Diagnostic> undrawable(const record::Spec& spec) {
    const spring::Spring& s = spec.spring;
    const bool is_body = s.wire_diameter > 0.0 * mm && s.mean_diameter > s.wire_diameter;
    if (!is_body) return error("the coil diameter is not larger than the wire");
    if (!(spring::active_coils(s.ends, s.total_coils) > 0.0)) return error("the spring has no active coils");
    if (!(s.free_length > s.wire_diameter * spring::textbook_solid_wires(s.ends, s.total_coils)))
        return error("the free spring is not longer than its coils");
    if (!(spec.seated.length < s.free_length && spec.full_travel.length <= spec.seated.length))
        return error("the lengths do not fall from free to seated to full travel");
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

}  // namespace

bool Facts::may_adjust(record::Adjustable quantity) const { return holds(spec.adjustable, quantity); }

Result<Facts> facts(const record::Spec& as_written, const wire::Grade& grade, const tolerance::Tables& tables) {
    Diagnostics diagnostics;
    const record::Spec spec = printable(as_written, diagnostics);
    for (const auto& wrong : {over_defined(spec), undrawable(spec)})
        if (wrong) diagnostics.push_back(*wrong);
    if (has_error(diagnostics)) return diagnostics;
    auto evaluation = check::evaluate(spec.spring, grade, cold_requirement(spec), tables);
    if (!evaluation) return evaluation.error();
    const double n = evaluation->active_coils;
    Facts out{spec,
              printable(grade, diagnostics),
              std::move(evaluation).value(),
              wire_tolerance(grade, spec.spring.wire_diameter),
              coil_tolerance(spec, tables),
              tolerance::squareness(spec.spring.free_length, spec.squareness_grade),
              tolerance::parallelism(spec.spring.outside_diameter(), spec.squareness_grade),
              grade_tolerance(spec, spec.seated, n),
              grade_tolerance(spec, spec.full_travel, n)};
    if (has_error(diagnostics)) return diagnostics;
    return {std::move(out), std::move(diagnostics)};
}

}  // namespace seatload::sheet
