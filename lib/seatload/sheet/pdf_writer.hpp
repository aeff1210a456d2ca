// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>

#include <seatload/core/result.hpp>
#include <seatload/sheet/attachment.hpp>
#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// What the PDF says of itself. No date: the bytes depend on the pages and on this alone.
struct DocumentInfo {
    std::string title;
    std::string author;
    std::string subject;
    std::string keywords = {};
};

/// The bytes of a PDF with these pages and attachments, typefaces embedded. Equal pages give equal bytes (with one
/// version of libharu). Errors: no page, a coordinate that is not a number or lies far off the page, text that is not
/// UTF-8 or has a character without a glyph (see readable()), attachments whose names are no plain file names or are
/// alike, and anything libharu reports.
Result<std::string> write_pdf(std::span<const Drawing> pages, const DocumentInfo& info,
                              std::span<const Attachment> attachments = {});

}  // namespace seatload::sheet
