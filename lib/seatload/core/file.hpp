// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include <seatload/core/result.hpp>

namespace seatload {

/// Largest input file read [bytes]; what a person writes by hand stays far below it.
inline constexpr std::size_t kLargestInput = 1024 * 1024;

/// The bytes of a regular file of at most `largest` bytes.
/// Errors: missing, a directory or another special file, unreadable, too large.
Result<std::string> read_text_file(const std::filesystem::path& path, std::size_t largest = kLargestInput);

/// Puts `bytes` in place of the file, wholly or not at all: written aside in the same folder, fsynced, renamed, folder
/// fsynced. Returns the diagnostics of a failure, or none. An existing file keeps its permissions; a link is followed.
Diagnostics replace_file(const std::filesystem::path& path, std::string_view bytes);

/// Makes the folder and its parents; returns the diagnostics of a failure, or none.
Diagnostics make_folder(const std::filesystem::path& path);

}  // namespace seatload
