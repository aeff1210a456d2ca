// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/io/source_text.hpp>

namespace seatload::io {

/// Deepest nesting of brackets and longest dotted key taken; the TOML library overflows its stack on deeper ones.
inline constexpr unsigned kDeepest = 32;

/// Quotes set in a line where they lacked.
struct Mend {
    Position at;                    ///< of the value, the same before and after
    std::vector<unsigned> columns;  ///< where each letter of the mended value stands in the text as written
    unsigned end_before = 0;        ///< column behind the value as written
};

/// What was found in a text before the TOML library sees it.
struct Prescan {
    Diagnostics errors;
    bool is_safe = true;      ///< whether `mended` may be given to the TOML library
    std::string mended;       ///< the text with quotes set round values that lack them, so that reading can go on
    std::vector<Mend> mends;  ///< by rising line, at most one a line

    /// Where something that stands at a place of `mended` stands in the text as it was written.
    Position as_written(Position at) const;
};

/// Looks through a text for what the TOML library would answer with a crash or a riddle: too large, not UTF-8, a NUL
/// byte, brackets or dotted keys nested deeper than kDeepest, a non-ASCII character outside quotes, and values with
/// units or words that lack their quotes (`bore = 9 mm`).
Prescan prescan(const SourceText& source);

}  // namespace seatload::io
