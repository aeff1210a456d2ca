// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include <seatload/core/diagnostic.hpp>

namespace seatload::cli {

/// The text of a spec with a last line that holds its SHA-256, so that an edit by hand can be told later.
std::string sealed(const std::string& spec);

/// Whether a text is as sealed() returned it.
bool is_sealed(std::string_view text);

/// An error when a file stands where a spec is about to be written and is not as it was written: it holds work of a
/// person.
Diagnostics edits_in_the_way(const std::filesystem::path& path);

}  // namespace seatload::cli
