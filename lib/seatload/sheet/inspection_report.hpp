// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/inspection/forecast.hpp>
#include <seatload/inspection/lot_verdict.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>

namespace seatload::sheet {

/// What the report of an inspection tells of.
struct InspectionReportInput {
    const inspection::LotInspection& lot;
    const record::Spec& spec;
    std::string sheet_mark;                        ///< the tamper_mark() that the spec's sheet bears
    std::optional<inspection::Forecast> forecast;  ///< nothing: not compared
    const Wording& words;                          ///< of the title block's fields; the report itself is in English
    PaperSize size = PaperSize::a4;
};

/// The report of an inspection, upright, for our own use: verdict with its reasons, what the sample protects from, how
/// the lot compares with what was foretold; run chart and histogram of each characteristic against its limits; all
/// pieces. Errors: text that is not UTF-8.
Result<std::vector<Drawing>> inspection_report(const InspectionReportInput& input);

/// The same as the bytes of a PDF.
Result<std::string> inspection_report_pdf(const InspectionReportInput& input);

}  // namespace seatload::sheet
