// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <tuple>

namespace seatload::test {

/// What tells a file from a later one of the same name: number on the disk, size, time of the last change.
using Trace = std::tuple<std::uint64_t, std::int64_t, std::int64_t, std::int64_t>;

/// All that stands in a folder and below it but folders, by name.
std::map<std::string, Trace> traces(const std::filesystem::path& folder);

}  // namespace seatload::test
