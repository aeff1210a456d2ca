// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

#include <seatload/core/result.hpp>

namespace seatload {

/// The bytes of an opened regular file of at most `largest` bytes, `shown` in what is said of it.
/// Errors: a directory or another special file, unreadable, too large, changed while it was read.
Result<std::string> read_opened(int descriptor, const std::filesystem::path& shown, std::size_t largest);

}  // namespace seatload
