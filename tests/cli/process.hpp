// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace seatload::test {

/// What a program left when it ended.
struct Ended {
    std::string out;
    std::string err;
    int code = 0;  ///< exit code, or 128 and the signal
};

/// Runs a program in a folder with nothing but the given environment and no input, and waits for its end; after two
/// minutes it is stopped. Throws std::runtime_error when it cannot be started.
Ended run_program(const std::vector<std::string>& words, const std::filesystem::path& folder,
                  const std::vector<std::string>& environment);

}  // namespace seatload::test
