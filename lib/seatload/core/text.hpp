// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace seatload {

/// The text without blanks and tabs at both ends.
std::string_view trim(std::string_view text);

/// The pieces between separators, empty ones kept.
std::vector<std::string_view> split(std::string_view text, char separator);

/// The pieces joined with a separator between them.
std::string join(std::span<const std::string> pieces, std::string_view separator);

/// The byte offset of the first byte that is not well-formed UTF-8 (RFC 3629), or nothing when all is.
std::optional<std::size_t> first_invalid_utf8(std::string_view text);

/// The text cut into code points; bytes that are not UTF-8 stand alone.
std::vector<std::string> code_points(std::string_view text);

/// The number of code points.
std::size_t length_in_code_points(std::string_view text);

/// The fewest single-character insertions, deletions, replacements and swaps of neighbours between two words (optimal
/// string alignment).
std::size_t edit_distance(std::string_view a, std::string_view b);

/// The candidate nearest to a mistyped word, or nothing when none is near (distance at most 2, and under half the
/// word). Case is ignored; of equal distances the earlier candidate wins.
std::optional<std::string> nearest(std::string_view word, std::span<const std::string> candidates);

/// A hint ` did you mean "x"?`, or an empty text when nothing is near.
std::string did_you_mean(std::string_view word, std::span<const std::string> candidates);

/// ASCII letters in lower case, other bytes as they are.
std::string lower(std::string_view text);

/// The number in its shortest decimal form that reads back to the same double.
std::string shortest(double value);

/// The number with a fixed count of decimals, never with a decimal comma; minus zero is written as zero.
std::string fixed(double value, int decimals);

/// The number to `digits` significant digits, without an exponent and without trailing zeros after the point.
std::string significant(double value, int digits);

/// A count with thin groups of three: 12 345 678.
std::string grouped(unsigned long long count);

}  // namespace seatload
