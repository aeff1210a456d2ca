// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/pdf_writer_fonts.hpp>

namespace seatload::sheet::detail {

/// A new page of the document, with a drawing on it.
HPDF_Page draw_page(const Document& document, const Fonts& fonts, const Drawing& drawing);

}  // namespace seatload::sheet::detail
