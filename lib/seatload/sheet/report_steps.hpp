// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sheet/report_step.hpp>
#include <seatload/sheet/report_subject.hpp>

namespace seatload::sheet {

/// The whole calculation of a spec, in an order in which every number put in stands above: what is demanded, the wire,
/// the spring, then one group a phenomenon. Where the schools differ, the formula is the one the limits choose.
std::vector<StepGroup> report_steps(const ReportSubject& subject);

// The parts of it, each in a file of its own kind.
void add_inputs(Calculation& c, const ReportSubject& s);
void add_shape(Calculation& c, const ReportSubject& s);
void add_stiffness(Calculation& c, const ReportSubject& s);
void add_lengths_and_loads(Calculation& c, const ReportSubject& s);
void add_strength(Calculation& c, const ReportSubject& s);
void add_room(Calculation& c, const ReportSubject& s);
void add_stability(Calculation& c, const ReportSubject& s);
void add_motion(Calculation& c, const ReportSubject& s);
void add_tolerances(Calculation& c, const ReportSubject& s);
void add_made(Calculation& c, const ReportSubject& s);

}  // namespace seatload::sheet
