// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include <seatload/sheet/attachment.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/pdf_writer_document.hpp>

namespace seatload::sheet::detail {

/// Writes title, author and the like into the document.
void describe(const Document& document, const DocumentInfo& info);

/// An identifier made of what the document holds: libharu would make it of the clock, or none.
void identify(const Document& document, std::span<const HPDF_Page> pages, const DocumentInfo& info,
              std::span<const Attachment> attachments);

}  // namespace seatload::sheet::detail
