// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/result.hpp>
#include <seatload/record/sought.hpp>
#include <seatload/wire/catalogue.hpp>

#include <cli/specs_options.hpp>

namespace seatload::cli {

/// What is looked for, out of the words given. Errors: all words that are no quantities, loads and lengths that do not
/// pair, a requirement beside them, a requirement that is wrong.
Result<record::Sought> read_sought(const FindOptions& options, const wire::Catalogue& wires);

/// What is looked for in words: "5 N .. 6 N at 18 mm, cold and new; in a bore of 9 mm".
std::string sought_words(const FindOptions& options);

}  // namespace seatload::cli
