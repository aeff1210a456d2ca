// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "script.hpp"

namespace seatload::test {

/// What a script is played with.
struct Stage {
    std::filesystem::path program;
    std::filesystem::path repository;      ///< where `copy` takes files from
    std::vector<std::string> environment;  ///< all that the program sees of it
};

/// The script as it came out: what was expected replaced by what happened; equal to the script when the test passes.
/// Throws NotHere when it cannot be played here, std::runtime_error when a section makes no sense.
Script play(const Script& script, const Stage& stage);

}  // namespace seatload::test
