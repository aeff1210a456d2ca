// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include <seatload/sheet/attachment.hpp>
#include <seatload/sheet/pdf_writer_document.hpp>

namespace seatload::sheet::detail {

/// Puts files into the document.
void attach(const Document& document, std::span<const Attachment> attachments);

}  // namespace seatload::sheet::detail
