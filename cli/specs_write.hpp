// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <seatload/core/result.hpp>
#include <seatload/io/spec_library.hpp>
#include <seatload/wire/catalogue.hpp>

#include <cli/specs_shelves.hpp>

namespace seatload::cli {

/// The contents of a spec file for the library: in the order and form the program writes, its remarks kept; without
/// states, and without the seal of another command when it no longer holds. A spec that says nothing of its end tips
/// gets them as they are ordered now, to stay so. Errors: those of reading; an engine, position, number or revision
/// that is not stated.
Result<std::string> content_for_library(std::string_view text, const std::string& file, const References& references);

/// Puts a revision with a further step in its place, once it has been seen that it reads back.
Diagnostics write_step(const io::SpecLibrary& library, const OnShelf& on_shelf, const record::Step& step,
                       const wire::Catalogue& wires);

/// Puts a new revision in as the one last made, once it has been seen that it reads back.
Diagnostics write_new(const io::SpecLibrary& library, const record::Address& address, std::string_view content,
                      const record::Step& step, const wire::Catalogue& wires);

/// The text without a last line that seals it as another command wrote it.
std::string without_seal(std::string_view text);

}  // namespace seatload::cli
