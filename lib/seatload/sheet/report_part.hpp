// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/report_step.hpp>
#include <seatload/sheet/report_subject.hpp>

namespace seatload::sheet {

/// Width of tables on upright A4, inside the padding of PageFlow [mm].
inline constexpr double kReportWidth = 174.0;

/// A group of a calculation under its heading.
void add_steps(PageFlow& flow, const StepGroup& group);

/// All that is told of one spring: its calculation, its limits, and its figures. What is demanded, the first group of
/// report_steps(), is left out when it was told before.
void add_report_part(PageFlow& flow, const ReportSubject& subject, const std::string& name, bool with_demand);

}  // namespace seatload::sheet
