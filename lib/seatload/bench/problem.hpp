// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include <seatload/bench/readings.hpp>
#include <seatload/core/diagnostic.hpp>

namespace seatload::bench {

/// Something wrong with the readings. `reading` counts from 0 within the run, in the order given.
struct RunProblem {
    Severity severity = Severity::error;
    DiagnosticId id;
    std::string message;
    std::string hint;                    ///< may be empty
    std::optional<std::size_t> reading;  ///< empty: the run as a whole
};

/// What is wrong with the run of one spring, errors and warnings, in the order of its readings. A run with an error
/// cannot be measured.
std::vector<RunProblem> problems_of(const Readings& session, const SpringRun& run);

/// What is wrong with the run on a rigid block; `reading` counts in `block_run`.
std::vector<RunProblem> block_problems_of(const Readings& session);

}  // namespace seatload::bench
