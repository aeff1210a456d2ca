// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/units/dimension.hpp>

namespace seatload::test {

// Regular expressions of what the readers of quantities take, in the dialect of JSON Schema (ECMA 262), without the
// anchors around them. `is_signed` lets the value be below zero.

/// One quantity: "9.00 mm", "1/4 in", "1 1/2 in".
std::string quantity_pattern(const units::Dimension& dimension, bool is_signed);
/// One quantity with what it may be off by both ways.
std::string stated_pattern(const units::Dimension& dimension, bool is_signed);
/// Two limits: a range, or a value with its tolerance.
std::string two_limits_pattern(const units::Dimension& dimension, bool is_signed);
/// An upper or a lower limit alone.
std::string at_most_pattern(const units::Dimension& dimension, bool is_signed);
std::string at_least_pattern(const units::Dimension& dimension, bool is_signed);

/// The alternatives as one expression, anchored to the whole text.
std::string whole_text(std::initializer_list<std::string> alternatives);

/// A plain number as C++ reads it.
extern const std::string kNumberPattern;

}  // namespace seatload::test
