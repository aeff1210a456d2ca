// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/demand/requirement.hpp>
#include <seatload/io/document.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// Adds to the document's complaints what is wrong with the wire a requirement allows: grades and series that are not
/// known, diameters outside the strengths of every allowed grade, wire that cannot be coiled into the bore, own wire
/// whose id is taken.
void check_wire_choice(Document& document, const demand::Requirement& requirement, const wire::Catalogue& catalogue);

/// The hint for a grade that is neither in the catalogue nor an own wire: what was probably meant, and where to find
/// them.
std::string unknown_grade_hint(std::string_view id, const std::vector<std::string>& own_ids,
                               const wire::Catalogue& catalogue);

}  // namespace seatload::io
