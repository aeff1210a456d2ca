// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/record/spring_file.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The spring a TOML text states: tables spring, and optionally own_wire, heights, surroundings, measured. A spec is
/// taken too, with the requirement it carries; its heights are those of its space. Errors: everything wrong in the
/// text, by position.
Result<record::SpringFile> read_spring(std::string_view text, const std::string& file_name,
                                       const wire::Catalogue& catalogue);

/// A spring file, which read_spring() reads; `remarks` stand at its head, a line each.
std::string write_spring(const record::SpringFile& file, const std::vector<std::string>& remarks);

}  // namespace seatload::io
