// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "picture.hpp"

namespace seatload::test {

/// A sheet whose picture is kept: a spec and the options it is drawn with.
struct GoldenCase {
    std::string name;
    std::vector<std::string> options;
};

/// The cases of cases.txt. Throws std::runtime_error when the file is missing.
std::vector<GoldenCase> golden_cases();

/// Where the spec of a case stands, and where its accepted picture.
std::filesystem::path spec_of(const GoldenCase& golden);
std::filesystem::path picture_of(const GoldenCase& golden);

/// The sheet of a spec drawn by the finished program and rendered by poppler; `folder` holds what is made on the way.
/// Throws std::runtime_error with what the program or poppler said.
Picture drawn(const std::filesystem::path& spec, const std::vector<std::string>& options,
              const std::filesystem::path& folder);

/// Whether the program that renders PDFs is there.
bool can_render();

}  // namespace seatload::test
