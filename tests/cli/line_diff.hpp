// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "script.hpp"

namespace seatload::test {

/// The lines that differ, "-" before those expected and "+" before those that came, with two lines around them; empty
/// when none differ.
std::string line_diff(const Lines& expected, const Lines& actual);

}  // namespace seatload::test
