// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// Complaints about pages a PDF must not be made of, because libharu would accept them and write rubbish without a
/// word: numbers that are not finite or lie off any page, text that is not UTF-8, characters without a glyph, no page
/// at all.
Diagnostics complaints(std::span<const Drawing> pages);

/// True when the text can be written: UTF-8, and every character but the script marks has a glyph.
bool is_printable(std::string_view words, Face face);

}  // namespace seatload::sheet
