// SPDX-License-Identifier: MIT
#include <seatload/record/spec_outlook.hpp>

#include <algorithm>

#include <seatload/record/specify.hpp>

namespace seatload::record {
namespace {

std::optional<int> grade_of(const spring::Spring& spring, const LoadAtLength& load) {
    return load_grade_inside(spring, load.nominal, load.plus, load.minus);
}

/// The loads ordered, when they are ordered at the heights of the requirement.
std::optional<std::array<double, 2>> ordered_loads(const Spec& spec, const demand::Space& space) {
    if (spec.seated.length != space.seated_height || spec.full_travel.length != space.full_travel_height)
        return std::nullopt;
    return std::array{in_newton(spec.seated.nominal), in_newton(spec.full_travel.nominal)};
}

}  // namespace

sizing::ToleranceGrades stated_grades(const Spec& spec) {
    const auto seated = grade_of(spec.spring, spec.seated);
    const auto full = grade_of(spec.spring, spec.full_travel);
    if (!seated || !full) return {1, spec.diameter_grade, true};
    return {std::min(*seated, *full), spec.diameter_grade};
}

std::optional<sizing::Outlook> spec_outlook(const Spec& spec, const wire::Grade& grade,
                                            const demand::Requirement& requirement, const tolerance::Tables& tables,
                                            const sizing::OutlookOptions& options) {
    return sizing::outlook({spec.spring, grade, requirement, tables, ordered_loads(spec, requirement.space),
                            stated_grades(spec), spec.bore_rules},
                           options);
}

}  // namespace seatload::record
