// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The catalogue with what a wire file states laid over it: grades, tolerance tables, load-loss and stress-relief rows,
/// series, bibliography and holdings. What has the name of something known replaces it. lib/data/README.md describes
/// the format. Errors: all that is wrong in the text, with positions.
Result<wire::Catalogue> read_wire_file(std::string_view text, const std::string& file_name, wire::Catalogue onto);

}  // namespace seatload::io
