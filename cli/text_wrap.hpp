// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/line_wrap.hpp>

namespace seatload::cli {

/// The text filled up with blanks to `width` columns; longer text as it is.
std::string padded(std::string text, std::size_t width);

}  // namespace seatload::cli
