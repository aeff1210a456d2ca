// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The text `to`, as one of our writers makes it, with the remarks of `from` put where they belong: those above a key
/// or table above the same one, those behind a value behind it, in place of the writer's own. Remarks on keys that `to`
/// does not have come before the next one that it has; those after the last key stay at the end.
std::string with_remarks_of(std::string_view from, std::string_view to);

/// The spec a text states with its keys in the order of write_spec(), its remarks kept. A text whose keys stand in that
/// order already stays as it is, byte for byte, though it leaves keys out. Errors: those of read_spec().
Result<std::string> arranged_spec(std::string_view text, const std::string& file_name,
                                  const wire::Catalogue& catalogue);

/// The spec in the order and form of write_spec(), with the remarks of another text of it.
std::string written_with_remarks(const record::Spec& spec, std::string_view remarks_of);

}  // namespace seatload::io
