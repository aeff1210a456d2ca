// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

namespace seatload::cli {

/// What is wrong with a word that must be a number; empty when nothing is.
using NumberCheck = std::function<std::string(const std::string&)>;

/// Wants a whole number from `lowest` to `highest`, in plain digits: a zero in front would make it an octal one.
NumberCheck whole_number(unsigned long long lowest, unsigned long long highest);

/// Wants a number from `lowest` to `highest`, which are whole and not below zero, with a decimal point.
NumberCheck number(double lowest, double highest);

/// Whether these words on a number say that it lies beyond its bounds; else it is none.
bool is_beyond_bounds(const std::string& words);

}  // namespace seatload::cli
