// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/record/quotation.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>

namespace seatload::sheet {

/// What a report on quotations tells of.
struct QuotesSheetInput {
    const record::Comparison& all;
    const Wording& words;  ///< of the title block's fields; the report itself is in English
    PaperSize size = PaperSize::a4;
};

/// The report on quotations, upright, for our own use: the ranking, what it costs at each quantity with a diagram, and
/// how each offer was judged. Errors: no spring enquired for, and text that is not UTF-8.
Result<std::vector<Drawing>> quotes_sheet(const QuotesSheetInput& input);

/// The same as the bytes of a PDF.
Result<std::string> quotes_sheet_pdf(const QuotesSheetInput& input);

}  // namespace seatload::sheet
