// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <stdexcept>

#include "script.hpp"

namespace seatload::test {

/// Thrown when a test cannot be held here: a locked folder stops no superuser.
struct NotHere : std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// Sets up what a section `file`, `folder` or `copy` asks for; false when the section is none of them.
bool set_up(const Section& section, const std::filesystem::path& folder, const std::filesystem::path& repository);

}  // namespace seatload::test
