// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/record/plunger_file.hpp>

namespace seatload::io {

/// The plunger a TOML text states. Tables: identity, space and surroundings (as in a requirement), plunger, spring (the
/// loads of a spring to be looked at); `templates/` shows the keys. A requirement that holds a plunger is taken too, of
/// which the other tables are passed over. Errors: everything wrong in the text, by position; contradictions show both
/// places.
Result<record::PlungerFile> read_plunger(std::string_view text, const std::string& file_name);

}  // namespace seatload::io
