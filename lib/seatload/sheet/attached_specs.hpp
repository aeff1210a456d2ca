// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/attachment.hpp>
#include <seatload/sheet/pdf_attachments.hpp>

namespace seatload::sheet {

/// The specs of a PDF's sheets.
struct AttachedSpecs {
    std::vector<Attachment> specs;
    Diagnostics tampered;  ///< what shows that they are not those the sheets were drawn from; empty: nothing does
};

/// The specs among the files a PDF carries: those its keywords have a mark for, and those that look like a spec.
/// Tampered is a spec whose SHA-256 is not the mark in the keywords, one without a mark, a mark without its spec, and,
/// where marks are printed on the pages, a spec whose mark is not among them.
AttachedSpecs attached_specs(const PdfAttachments& carried);

}  // namespace seatload::sheet
