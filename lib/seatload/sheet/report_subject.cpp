// SPDX-License-Identifier: MIT
#include <seatload/sheet/report_subject.hpp>

#include <algorithm>

#include <seatload/core/diagnostic.hpp>
#include <seatload/record/spec_outlook.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/printable.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::sheet {
namespace {

std::optional<Diagnostic> unreckonable(const record::Spec& spec) {
    const spring::Spring& s = spec.spring;
    if (!(s.wire_diameter > 0.0 * mm && s.mean_diameter > s.wire_diameter))
        return error("impossible-spring"_id, "the coil diameter is not larger than the wire",
                     "look at wire_diameter and the diameter of the coils: are they exchanged?");
    if (!(spring::active_coils(s.ends, s.total_coils) > 0.0))
        return error("impossible-spring"_id, "the spring has no active coils",
                     "total_coils counts the closed coils of both ends too: two or so are not active");
    if (!(spec.seated.length < s.free_length && spec.full_travel.length < spec.seated.length))
        return error("impossible-spring"_id, "the lengths do not fall from free to seated to full travel",
                     "look at free_length, seated_height and full_travel_height: are two of them exchanged?");
    return std::nullopt;
}

demand::Requirement requirement_at_ordered_lengths(const record::Spec& spec) {
    demand::Requirement requirement = record::requirement_of(spec);
    requirement.space.seated_height = spec.seated.length;
    requirement.space.full_travel_height = spec.full_travel.length;
    return requirement;
}

Trust coil_tolerance_trust(const record::Spec& spec, const tolerance::Tables& tables) {
    const Length D = spec.spring.mean_diameter;
    for (const tolerance::DiameterRow& row : tables.diameter)
        if (row.over < D && D <= row.up_to)
            return trust(row.evidence[static_cast<std::size_t>(spec.limits.diameter_grade - 1)]);
    return Trust::estimate;
}

Trust wire_tolerance_trust(const wire::Grade& grade, Length d) {
    for (const wire::ToleranceRow& row : grade.diameter_tolerance)
        if (d <= row.up_to) return trust(row.evidence);
    return Trust::estimate;
}

/// The spec as the sheet prints it, with what is ours put back.
record::Spec readable_spec(const record::Spec& as_written, Diagnostics& diagnostics) {
    record::Spec spec = printable(as_written, diagnostics);
    spec.why = readable(as_written.why, "why", diagnostics);
    spec.identity.engine = readable(as_written.identity.engine, "engine", diagnostics);
    return spec;
}

}  // namespace

const check::Verdict* ReportSubject::verdict(std::string_view rule) const {
    const auto found = std::find_if(values.verdicts.begin(), values.verdicts.end(),
                                    [&](const check::Verdict& v) { return v.rule->id == rule; });
    return found == values.verdicts.end() ? nullptr : &*found;
}

double ReportSubject::smallest_length_mm() const { return in_mm(values.smallest_length); }

bool ReportSubject::knows_wire_tolerance() const {
    return wire::diameter_tolerance_at(grade, spec.spring.wire_diameter).has_value();
}

bool ReportSubject::has_fatigue() const { return demand.dynamic && wire.has_endurance; }

Result<ReportSubject> report_subject(const record::Spec& as_written, const wire::Grade& grade,
                                     const tolerance::Tables& tables) {
    Diagnostics diagnostics;
    record::Spec spec = readable_spec(as_written, diagnostics);
    if (const auto wrong = unreckonable(spec)) diagnostics.push_back(*wrong);
    if (has_error(diagnostics)) return diagnostics;
    const demand::Requirement requirement = requirement_at_ordered_lengths(spec);
    auto values = check::evaluate(spec.spring, grade, requirement, tables);
    if (!values) return values.error();
    const check::DemandNumbers demand = check::numbers(requirement);
    const auto wire = check::numbers(grade, spec.spring.wire_diameter, requirement);
    const check::Coil coil(demand, *wire, tables, in_mm(spec.spring.mean_diameter), spec.spring.ends,
                           spec.spring.total_coils);
    const sizing::ToleranceGrades grades = record::stated_grades(spec);
    const std::array loads{in_newton(spec.seated.nominal), in_newton(spec.full_travel.nominal)};
    ReportSubject out{std::move(spec),
                      printable(grade, diagnostics),
                      requirement,
                      demand,
                      *wire,
                      std::move(values).value(),
                      coil.diameter_tolerance_mm,
                      coil_tolerance_trust(as_written, tables),
                      wire_tolerance_trust(grade, as_written.spring.wire_diameter),
                      tables,
                      grades,
                      sizing::made_allowance(coil, grade.family, tables, grades),
                      sizing::made_order(coil, in_mm(as_written.spring.free_length), as_written.bore_rules, loads)};
    for (wire::Provenance& p : out.grade.provenance) p.source = readable(p.source, "source", diagnostics);
    out.grade.id = readable(out.grade.id, "wire", diagnostics);
    if (has_error(diagnostics)) return diagnostics;
    return {std::move(out), std::move(diagnostics)};
}

std::string report_letter(const record::Spec& spec, std::size_t index) {
    return spec.alternative.empty() ? std::to_string(index + 1) : spec.alternative;
}

}  // namespace seatload::sheet
