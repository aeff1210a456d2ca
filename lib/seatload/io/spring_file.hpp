// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/record/spring_file.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The spring a TOML text states: tables spring, and optionally own_wire, heights, surroundings. A spec file is taken
/// too, with the requirement it carries; its heights are those of its space. Errors: everything wrong in the text, by
/// position.
Result<record::SpringFile> read_spring(std::string_view text, const std::string& file_name,
                                       const wire::Catalogue& catalogue);

}  // namespace seatload::io
