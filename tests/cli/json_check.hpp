// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

#include "script.hpp"

namespace seatload::test {

/// What is wrong with what a command printed with --json, by the schema of that command in a folder; empty for output
/// that is no JSON and for words without --json.
Lines schema_faults(const Lines& words, const std::string& printed, const std::filesystem::path& schemas);

}  // namespace seatload::test
