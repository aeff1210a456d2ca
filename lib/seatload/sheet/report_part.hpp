// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/report_subject.hpp>

namespace seatload::sheet {

/// Width of tables on upright A4, inside the padding of PageFlow [mm].
inline constexpr double kReportWidth = 174.0;

/// All that is told of one spring: its calculation, its limits, and its figures.
void add_report_part(PageFlow& flow, const ReportSubject& subject, const std::string& name);

}  // namespace seatload::sheet
