// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace seatload {

/// `start`, then the words in lines of at most `width` columns (never fewer than 40); lines after the first are set in
/// by `indent`. A number stays in one line with its unit and with its own groups of three digits, and so does what a
/// command in backticks holds in single quotes, whose blanks count.
std::string wrapped(const std::string& start, const std::string& words, int width, std::size_t indent);

}  // namespace seatload
