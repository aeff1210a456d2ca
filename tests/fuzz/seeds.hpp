// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace seatload::fuzz {

/// Bytes a target begins with, and where they come from.
struct Seed {
    std::string name;
    std::string bytes;
};

/// What there is for a target: the files of templates/, specs/, lib/data/ and tests/bad_input that are of its kind,
/// lines of tests/fuzz/seeds, and all of tests/fuzz/regressions; ordered by name.
std::vector<Seed> seeds(std::string_view target);

}  // namespace seatload::fuzz
