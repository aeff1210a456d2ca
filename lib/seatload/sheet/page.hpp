// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>

namespace seatload::sheet {

/// An empty page of that size (A4: ISO 216; Letter: 8.5 in by 11 in), standing on its short side or lying on its long
/// one.
inline Drawing empty_page(PaperSize size, bool upright) {
    const bool is_letter = size == PaperSize::letter;
    const double short_side = is_letter ? 215.9 : 210.0;
    const double long_side = is_letter ? 279.4 : 297.0;
    return upright ? Drawing{short_side, long_side} : Drawing{long_side, short_side};
}

}  // namespace seatload::sheet
