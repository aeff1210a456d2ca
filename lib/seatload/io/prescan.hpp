// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/io/source_text.hpp>

namespace seatload::io {

/// Deepest nesting of brackets and longest dotted key taken; the TOML library overflows its stack on deeper ones.
inline constexpr unsigned kDeepest = 32;

/// What was found in a text before the TOML library sees it.
struct Prescan {
    Diagnostics errors;
    bool is_safe = true;  ///< whether `mended` may be given to the TOML library
    std::string mended;   ///< the text with quotes set round values that lack them, so that reading can go on
};

/// Looks through a text for what the TOML library would answer with a crash or a riddle: too large, not UTF-8, a NUL
/// byte, brackets or dotted keys nested deeper than kDeepest, a non-ASCII character outside quotes, and values with
/// units or words that lack their quotes (`bore = 9 mm`).
Prescan prescan(const SourceText& source);

}  // namespace seatload::io
