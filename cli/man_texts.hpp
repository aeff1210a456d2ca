// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

namespace seatload::cli {

/// A command line shown in a manual page, and what it is for. The tests run all of them, page by page in the order of
/// the program's commands, in a folder with copies of templates/ and specs/.
struct ManExample {
    std::string_view line;  ///< "seatload size templates/ahead_latch.toml"
    std::string_view about;
    int exit_code = 0;
};

/// A file that a command reads or writes.
struct ManFile {
    std::string_view name;
    std::string_view about;
};

/// What a manual page says beyond the command's help.
struct ManText {
    std::string_view command;                  ///< "size"; empty: of the program
    std::vector<std::string_view> paragraphs;  ///< of the description
    std::vector<ManFile> files;
    std::vector<ManExample> examples;
    std::vector<std::string_view> related;  ///< commands
};

/// The text of every page, in the order of the program's commands; the program's own first.
const std::vector<ManText>& man_texts();

}  // namespace seatload::cli
