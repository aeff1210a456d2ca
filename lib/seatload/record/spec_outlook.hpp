// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/demand/requirement.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sizing/outlook.hpp>
#include <seatload/tolerance/tables.hpp>

namespace seatload::record {

/// The EN 15800 grades a spec's tolerances amount to: the finer of what its two loads' deviations let in, and that of
/// its coil diameter; grade 1, marked so, when a load is ordered tighter.
sizing::ToleranceGrades stated_grades(const Spec& spec);

/// What tolerances do to the springs of a spec: its lots brought to the loads ordered, judged by a requirement (its
/// own, or another). Nothing as from sizing::outlook().
std::optional<sizing::Outlook> spec_outlook(const Spec& spec, const wire::Grade& grade,
                                            const demand::Requirement& requirement, const tolerance::Tables& tables,
                                            const sizing::OutlookOptions& options = {});

}  // namespace seatload::record
