// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/demand/maker.hpp>

namespace seatload::io {

/// The limits of a spring maker that a TOML text states; lib/data/makers and templates/maker_a.toml show the format.
/// Errors: everything wrong in the text, by position.
Result<demand::Maker> read_maker(std::string_view text, const std::string& file_name);

}  // namespace seatload::io
