// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/demand/budget.hpp>
#include <seatload/record/plunger_file.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>

namespace seatload::sheet {

/// What a pressure diagram tells of.
struct PressureSheetInput {
    const record::PlungerFile& file;
    const demand::Budget& budget;
    const Wording& words;  ///< of the title block's fields; the paper itself is in English
    PaperSize size = PaperSize::a4;
};

/// The pressure diagram of a plunger, upright, for our own use: pressure against lift with the spring given or with the
/// loads allowed, the limits of the loads, how the plunger moves; then every limit with formula and numbers. Bands that
/// contradict themselves are drawn as they are. Errors: text that is not UTF-8.
Result<std::vector<Drawing>> pressure_sheet(const PressureSheetInput& input);

/// The same as the bytes of a PDF.
Result<std::string> pressure_sheet_pdf(const PressureSheetInput& input);

}  // namespace seatload::sheet
