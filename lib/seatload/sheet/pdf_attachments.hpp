// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/sheet/attachment.hpp>

namespace seatload::sheet {

/// Most files a PDF may carry to be read here; a paper of ours has one for each of at most 26 alternatives, and a form.
inline constexpr std::size_t kMostAttachments = 100;

/// What a PDF carries beside its pages.
struct PdfAttachments {
    std::vector<Attachment> files;  ///< in the order of their names
    std::string keywords;           ///< as DocumentInfo::keywords
    std::string letters;            ///< every character printed on its pages but blanks, page after page
};

/// The files a PDF carries, with what is needed to check their marks. Errors: not a PDF, damaged (never mended by
/// guessing), locked with a password, more files than kMostAttachments, a file larger than kLargestInput.
Result<PdfAttachments> pdf_attachments(std::string_view bytes);

}  // namespace seatload::sheet
