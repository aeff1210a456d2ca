// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/sizing/what_if.hpp>

namespace seatload::sheet {

/// What a picture of one number tried at several values tells of.
struct WhatIfSheetInput {
    const demand::Requirement& requirement;
    const sizing::WhatIf& question;
    const std::vector<sizing::WhatIfRow>& rows;
    const Wording& words;  ///< of the title block's fields; the paper itself is in English
    PaperSize size = PaperSize::a4;
};

/// One upright page, for our own use: how many springs fit, the best one's tolerance room and its stress, each against
/// the number's value, the stated value as an upright line. Where none fits there is no point for room and stress.
/// Errors: text that is not UTF-8.
Result<std::vector<Drawing>> what_if_sheet(const WhatIfSheetInput& input);

/// The same as the bytes of a PDF.
Result<std::string> what_if_sheet_pdf(const WhatIfSheetInput& input);

}  // namespace seatload::sheet
