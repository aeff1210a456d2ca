// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/demand/requirement.hpp>
#include <seatload/io/document.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// Adds to the document's complaints where members of a requirement read from it contradict each other or the
/// catalogue. Members that could not be read are passed over; they have been complained of already.
void check_requirement(Document& document, const demand::Requirement& requirement, const wire::Catalogue& catalogue);

}  // namespace seatload::io
