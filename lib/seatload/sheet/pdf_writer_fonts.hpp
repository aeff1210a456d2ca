// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/pdf_writer_document.hpp>

namespace seatload::sheet::detail {

/// The typefaces of a document.
struct Fonts {
    HPDF_Font regular;
    HPDF_Font bold;
};

/// The typefaces, embedded in the document.
Fonts load_fonts(const Document& document);

/// Puts right what libharu writes wrongly of its typefaces; once all text is drawn.
void mend(const Document& document, const Fonts& fonts);

}  // namespace seatload::sheet::detail
