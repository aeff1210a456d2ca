// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace seatload::test {

using Lines = std::vector<std::string>;

/// A part of a .test file: the words after "=== ", the lines below them, and the blank lines that set it off.
struct Section {
    std::string head;
    Lines body;
    std::size_t blank_lines = 0;
};

/// A .test file.
struct Script {
    Lines preface;
    std::vector<Section> sections;
};

/// The lines of a text; a missing or a blank last line, which a .test file cannot hold, becomes a line of words.
Lines lines_of(std::string_view text);

/// The lines, each with its line end.
std::string text_of(const Lines& lines);

Script parse_script(std::string_view text);
Lines lines_of(const Script& script);

/// Words parted by blanks; what stands in double quotes is one word.
Lines words_of(std::string_view line);

}  // namespace seatload::test
