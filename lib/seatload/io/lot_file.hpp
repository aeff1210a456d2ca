// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/record/lot.hpp>

namespace seatload::io {

/// The record of a lot as a TOML text that a person can read; equal records give equal bytes.
std::string write_lot(const record::Lot& lot);

/// The record a TOML text states, equal to the one write_lot() was given. Errors: everything wrong in the text, by
/// position.
Result<record::Lot> read_lot(std::string_view text, const std::string& file_name);

}  // namespace seatload::io
