// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include <seatload/core/diagnostic.hpp>

namespace seatload::cli {

/// The text of a file with a last line that holds its SHA-256, so that an edit by hand can be told later. `command` is
/// who writes it.
std::string sealed(const std::string& text, const std::string& command = "size");

/// Whether a text is as sealed() returned it.
bool is_sealed(std::string_view text, const std::string& command = "size");

/// An error when a file stands where one is about to be written and is not as the command wrote it: it holds work of a
/// person. `kind` is what it is called, "spec".
Diagnostics edits_in_the_way(const std::filesystem::path& path, const std::string& kind = "spec",
                             const std::string& command = "size");

}  // namespace seatload::cli
