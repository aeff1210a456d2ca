// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/tolerance/tables.hpp>

namespace seatload::io {

/// The tolerance tables a TOML text states; lib/data/en_15800.toml shows the format. Errors: everything wrong in the
/// text, by position; rows must follow one another without gaps.
Result<tolerance::Tables> read_tolerances(std::string_view text, const std::string& file_name);

}  // namespace seatload::io
