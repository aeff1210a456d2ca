// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/report_subject.hpp>
#include <seatload/sheet/ruled_table.hpp>
#include <seatload/sizing/outlook.hpp>

namespace seatload::sheet {

/// Share of springs made to each grade, and to the grades ordered, that meet the whole demand; what breaks first and
/// what moves the loads most.
RuledTable outlook_grades_table(const sizing::Outlook& outlook, double width);
/// Every quantity, worst case and simulated side by side, for grades 1, 2 and 3.
RuledTable outlook_quantities_table(const sizing::Outlook& outlook, double width);
/// Which grade keeps 99 %, and whether the grade ordered does.
std::string outlook_verdict(const ReportSubject& subject, const sizing::Outlook& outlook);

/// Both tables, the verdict and, unless told before, what is taken for granted; nothing when the spring does not press
/// on both seats.
void add_outlook(PageFlow& flow, const ReportSubject& subject, bool with_assumptions);

}  // namespace seatload::sheet
