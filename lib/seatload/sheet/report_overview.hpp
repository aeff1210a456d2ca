// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/report.hpp>
#include <seatload/sheet/report_subject.hpp>

namespace seatload::sheet {

/// What the report is, the springs side by side, and how to read it.
void add_overview(PageFlow& flow, std::span<const ReportSubject> subjects);

/// The map of all that fits, and what rejects the rest.
void add_map(PageFlow& flow, std::span<const ReportSubject> subjects, const ReportSizing& sizing);

/// The entries of the bibliography that the report's source texts name; nothing when they name none.
void add_sources(PageFlow& flow, std::span<const ReportSubject> subjects, const std::vector<wire::Source>& sources);

}  // namespace seatload::sheet
