// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace seatload::io {

/// The text with typographic quotes (“ ” „ « » and the like), single ones too, turned into plain double ones.
std::string with_plain_quotes(std::string_view text);

/// A line of the form `key = value` whose value lacks its quotes, or has typographic ones.
struct Unquoted {
    std::size_t offset = 0;  ///< of the value, in bytes from the start of the line
    std::string_view value;  ///< as it stands
    std::string quoted;      ///< as it should stand
    std::string assignment;  ///< key and quoted value
    bool has_digit = false;  ///< a quantity rather than a word
    bool is_curly = false;   ///< it has quotes, but not plain ones
};

/// The missing quotes of a line, or nothing when its value is sound TOML, quoted or not of the form `key = value`.
/// A list on one line counts too.
std::optional<Unquoted> find_unquoted(std::string_view line);

}  // namespace seatload::io
