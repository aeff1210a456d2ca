// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace seatload::cli {

/// The text filled up with blanks to `width` columns; longer text as it is.
std::string padded(std::string text, std::size_t width);

/// A name out of a file, with dots in place of its middle when it is longer than two lines of `width` columns: no one
/// reads such a one to its end, and what is said of it would be out of sight.
std::string cut_name(const std::string& name, int width);

}  // namespace seatload::cli
