// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/core/result.hpp>
#include <seatload/inspection/forecast.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::sheet {

/// What the simulation of the calculation report foretells of a lot made to a spec, and the loss of load it counts on.
/// Errors: those of report_subject().
Result<inspection::Forecast> forecast(const record::Spec& spec, const wire::Grade& grade,
                                      const tolerance::Tables& tables);

}  // namespace seatload::sheet
