// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace seatload::io {

/// A key with its value, or the head of a table, with the remarks that belong to it.
struct TomlPiece {
    std::string id;                  ///< "spring.free_length", "[spring]"; of tables in a list also their number
    std::vector<std::string> above;  ///< remarks on lines of their own, "# ..."
    std::string text;                ///< the line or lines without the remark behind
    std::string behind;              ///< the remark behind, "# ..."; may be empty
    bool after_blank_line = false;
};

/// A TOML text taken apart into pieces; the last one has no id, and holds the remarks at the end.
/// The text must be TOML.
std::vector<TomlPiece> toml_pieces(std::string_view text);

}  // namespace seatload::io
