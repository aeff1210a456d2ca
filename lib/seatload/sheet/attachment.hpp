// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace seatload::sheet {

/// A file carried inside a PDF.
struct Attachment {
    std::string name;  ///< a plain file name, see is_plain_file_name()
    std::string bytes;
    std::string description;  ///< shown to the reader
    std::string mime;         ///< "application/toml"
};

}  // namespace seatload::sheet
