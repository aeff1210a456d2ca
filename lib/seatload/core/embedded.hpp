// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace seatload {

/// The bytes of a file built into the library, named by its path below lib/ ("data/sources.toml").
/// An unknown name is an error of ours.
std::string_view embedded(std::string_view name);

/// The names of all built-in files below a folder ("data/wire/"), in the order lib/CMakeLists.txt lists them.
std::vector<std::string_view> embedded_names(std::string_view folder);

}  // namespace seatload
