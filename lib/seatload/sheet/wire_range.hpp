// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include <seatload/demand/requirement.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::sheet {

/// That a spring so long, its tips so nearly half a turn apart (or anyhow), has room for its lean.
struct LeanPromise {
    std::optional<double> tips;  ///< [turns, plus-minus]
    Length longest_free_length;
};

/// The wire diameters [mm] from the spec's own down and up, without a gap, of which the maker can wind a spring of the
/// same grade and required coil diameter that gives both loads, keeps every limit that the
/// spec's spring keeps, and passes the others no further than it: he chooses the coils and the free length. Of a spring
/// that must keep half a turn over (so nearly, in turns), the loads may leave their nominal values by half their
/// tolerance. What the sheet promises of lean must hold of each. `requirement` is the one the spring is judged by.
/// Nothing when no diameter but its own does.
std::optional<demand::LengthRange> wire_range(const record::Spec& spec, const wire::Grade& grade,
                                              const demand::Requirement& requirement, const tolerance::Tables& tables,
                                              std::optional<double> half_turn_tolerance,
                                              const std::vector<LeanPromise>& lean_promises);

}  // namespace seatload::sheet
