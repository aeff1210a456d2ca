// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/demand/maker.hpp>
#include <seatload/demand/requirement.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The requirement a TOML text states. Tables: identity, space, load or plunger, duty, surroundings, wire, own_wire, coil, grid,
/// limits, prefer, order; `templates/` shows every key. Wire grades are looked up in the catalogue and in the requirement's
/// own; limits are held to what the maker of the order can do, the first one when none is named. Errors: everything wrong in the text, by position; contradictions show both places.
Result<demand::Requirement> read_requirement(std::string_view text, const std::string& file_name,
                                             const wire::Catalogue& catalogue);
/// The same with other makers than those built in.
Result<demand::Requirement> read_requirement(std::string_view text, const std::string& file_name,
                                             const wire::Catalogue& catalogue, const demand::Makers& makers);

}  // namespace seatload::io
