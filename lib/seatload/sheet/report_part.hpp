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

/// What a part need not say, because an earlier one of the report did.
struct ToldBefore {
    bool demand = false;   ///< the first group of report_steps()
    bool methods = false;  ///< how tolerances are followed through to the loads, and what is taken for granted there
};

/// All that is told of one spring: its calculation, its limits, and its figures.
void add_report_part(PageFlow& flow, const ReportSubject& subject, const std::string& name, const ToldBefore& before);

}  // namespace seatload::sheet
