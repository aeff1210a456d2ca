// SPDX-License-Identifier: MIT
#include <seatload/record/lean_told.hpp>

#include <seatload/check/tips.hpp>
#include <seatload/record/specify.hpp>

namespace seatload::record {

LeanTold lean_told(const check::Coil& coil, double L0) {
    if (const auto tips = check::tips(coil, L0)) {
        const bool may_rub = !tips->is_enough();
        return {may_rub, may_rub || tips->is_closer() ? check::tips_in_words(*tips) : std::string{}};
    }
    if (!check::leans_too_far(coil, L0)) return {};
    return {
        true,
        "Its coils are not half a turn over, and its end tips stand anyhow: it may lean further than there is room, "
        "and rub. Try the first pieces in the mechanism, or take a spring with more room."};
}

LeanTold lean_told(const Spec& spec, const wire::Grade& grade, const tolerance::Tables& tables) {
    const demand::Requirement requirement = requirement_of(spec);
    const auto wire = check::numbers(grade, spec.spring.wire_diameter, requirement);
    if (!wire) return {};
    const check::DemandNumbers demand = check::numbers(requirement);
    const check::Coil coil(demand, *wire, tables, in_mm(spec.spring.mean_diameter), spec.spring.ends,
                           spec.spring.total_coils);
    return lean_told(coil, in_mm(spec.spring.free_length));
}

}  // namespace seatload::record
