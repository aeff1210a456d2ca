// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/demand/requirement.hpp>
#include <seatload/io/reader.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// What a table [prefer] states.
demand::Preference read_preference(Reader& table);

/// Complains of wishes that cannot be met: a criterion named twice, a grade that is not known, and grades, wire
/// diameters and ends that the requirement does not allow in the first place.
void check_preference(Document& document, const demand::Requirement& requirement, const wire::Catalogue& catalogue);

}  // namespace seatload::io
