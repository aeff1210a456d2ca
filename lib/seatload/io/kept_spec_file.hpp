// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/record/kept_spec.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The part of a file of the library that is the spec itself, on which its SHA-256 is taken: all above the line that
/// begins the states. A spec that no library keeps is such a part as a whole.
std::string_view spec_content(std::string_view text);

/// The kept spec a text of the library states. Nothing below the line that begins the states counts as the spec;
/// that it is written otherwise than write_kept_spec() does is told, and no error.
/// Errors: everything wrong in either part, by position; no state at all, states in an order that cannot be.
Result<record::KeptSpec> read_kept_spec(std::string_view text, const std::string& file_name,
                                        const wire::Catalogue& catalogue);

/// The content, as it is, with the states below it.
std::string write_kept_spec(std::string_view content, const record::History& history);

}  // namespace seatload::io
