// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/demand/requirement.hpp>
#include <seatload/io/document.hpp>

namespace seatload::io {

/// How far the spring is compressed from the seat to full travel [mm]; nothing when a height could not be read or both
/// contradict each other.
std::optional<Length> travel_of(const demand::Space& space);

/// Adds to the document's complaints where members of its table [space] contradict each other. Members that could not
/// be read are passed over; they have been complained of already.
void check_space(Document& document, const demand::Space& space);

/// The same for one more range of free lengths, which stands at `path`.
void check_free_length(Document& document, const demand::Space& space, std::string_view path,
                       const std::optional<demand::LengthRange>& range);

}  // namespace seatload::io
