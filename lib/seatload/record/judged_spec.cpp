// SPDX-License-Identifier: MIT
#include <seatload/record/judged_spec.hpp>

#include <seatload/record/specify.hpp>

namespace seatload::record {

Result<JudgedSpec> judged_spec(Spec spec, const wire::Grade& grade, const tolerance::Tables& tables,
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
    return JudgedSpec{std::move(spec), grade, std::move(evaluation).value(), merit, std::move(lean)};
}

bool is_better(const JudgedSpec& a, const JudgedSpec& b) {
    if (a.evaluation.fits() != b.evaluation.fits()) return a.evaluation.fits();
    return sizing::room_in_tenths(a.merit.tolerance_room) > sizing::room_in_tenths(b.merit.tolerance_room);
}

}  // namespace seatload::record
