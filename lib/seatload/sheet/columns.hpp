// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/entry.hpp>

namespace seatload::sheet {

/// Lays entries out in columns of equal width, top to bottom, left to right; a heading stays with the two entries after
/// it.
struct Columns {
    Box box;
    int count = 3;
    double squeeze = 1.0;  ///< of the letters

    /// Draws the entries and returns how many found room: all of them, or those before the first that did not fit.
    std::size_t draw(Drawing& drawing, const Entries& entries) const;
};

}  // namespace seatload::sheet
