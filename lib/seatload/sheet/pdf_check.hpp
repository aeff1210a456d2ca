// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/attachment.hpp>
#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// Complaints about pages a PDF must not be made of, because libharu would accept them and write rubbish without a
/// word: numbers that are not finite or lie off any page, text that is not UTF-8, characters without a glyph, no page
/// at all.
Diagnostics complaints(std::span<const Drawing> pages);

/// Complaints about attachments: a name that is no plain file name or stands twice, a kind that is no "type/subtype", a
/// description that cannot be written, more bytes than any of our files has (kLargestInput).
Diagnostics complaints(std::span<const Attachment> attachments);

/// True when the text can be written: UTF-8, and every character but the script marks has a glyph.
bool is_printable(std::string_view words, Face face);

}  // namespace seatload::sheet
