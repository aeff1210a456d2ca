// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string>
#include <vector>

#include <seatload/sheet/histogram.hpp>
#include <seatload/sheet/report_subject.hpp>
#include <seatload/sheet/ruled_table.hpp>
#include <seatload/tolerance/simulation.hpp>

namespace seatload::sheet {

/// Loads of springs made to the drawing of a spec, before and after the maker has brought the lot in.
struct ReportSimulation {
    tolerance::LotModel model;
    tolerance::LoadWindow ordered;  ///< loads as ordered
    tolerance::LoadWindow need;     ///< what the mechanism needs, cold and new
    tolerance::Simulated any;       ///< springs of many lots, nothing brought in
    tolerance::Simulated adjusted;  ///< springs of one lot brought in
    std::array<double, 2> from{};   ///< edges of the histograms [N]
    std::array<double, 2> to{};
};

/// Runs both simulations with a seed of their own, so that the report of a spec is the same every time.
ReportSimulation simulated(const ReportSubject& subject);

/// The model's numbers, each with its tolerance, what of it stays within a lot, and what it rests on.
RuledTable simulation_model_table(const ReportSubject& subject, const ReportSimulation& simulation, double width);
/// Means, spreads and shares of both cases, with the spread that propagation gives beside.
RuledTable simulation_result_table(const ReportSimulation& simulation, double width);
/// What the model takes for granted, in words.
std::vector<std::string> simulation_assumptions(const ReportSimulation& simulation);
/// F1 and F2 of the first case, then of the second.
std::array<Histogram, 4> simulation_histograms(const ReportSubject& subject, const ReportSimulation& simulation);

}  // namespace seatload::sheet
