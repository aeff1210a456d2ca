// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The spec as a TOML text that a person can read; equal specs give equal bytes.
std::string write_spec(const record::Spec& spec);

/// The spec a TOML text states, equal to the one write_spec() was given. Errors: everything wrong in the text, by
/// position.
Result<record::Spec> read_spec(std::string_view text, const std::string& file_name, const wire::Catalogue& catalogue);

}  // namespace seatload::io
