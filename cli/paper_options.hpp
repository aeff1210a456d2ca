// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/result.hpp>
#include <seatload/sheet/paper.hpp>

namespace seatload::cli {

/// How the papers for the maker are asked for, as written on the command line.
struct PaperOptions {
    std::string language;  ///< a built-in language; empty: English
    std::string wording;   ///< the user's own wording file instead
    std::string units = "metric";
    std::string size = "a4";
    bool portrait = false;

    bool operator==(const PaperOptions&) const = default;
};

/// The paper asked for. Errors: words that are none of the choices, with what may have been meant; a language and a
/// wording file at once; a wording file that cannot be read.
Result<sheet::Paper> make_paper(const PaperOptions& options);

}  // namespace seatload::cli
