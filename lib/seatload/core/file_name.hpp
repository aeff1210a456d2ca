// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace seatload {

/// A file name made of words: lower-case ASCII letters and digits, all else as single hyphens; never empty.
std::string file_stem(std::string_view words);

/// True for a name that every file system takes and that leads nowhere else: 1 to 100 of ASCII letters, digits, dot,
/// hyphen, underscore and blank; no dot or blank at either end.
bool is_plain_file_name(std::string_view name);

}  // namespace seatload
