// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "script.hpp"

namespace seatload::test {

/// A fenced block of a Markdown page, and the file its reader is told to write it to: the text before it ends with
/// "`name`:".
struct Block {
    Lines lines;
    std::optional<std::string> file;
};

std::vector<Block> blocks_of(const Lines& page);

/// A call of the program on a page.
struct Command {
    std::string words;
    int code = 0;  ///< as told by "# exits 1" behind it
    Lines shown;   ///< what the page shows of its output, "..." for lines left out
};

/// The lines of a block that call the program, those broken by a backslash put together. A block that installs or
/// builds is none of ours.
std::vector<Command> commands_of(const Block& block);

/// The first line shown that the output does not have there, or nothing. Lines shown one after another stand so in the
/// output; "..." stands for any lines left out, and blank lines at the end of the block do not count.
std::optional<std::string> not_printed(Lines shown, const Lines& output);

/// What a page links to or shows as a picture in its own folders, as written: "](limits.md)".
Lines links_of(const Lines& page);

/// Lays out what a clone has after the first command of the README: templates, specs and the program.
void furnish_clone(const std::filesystem::path& folder, const std::filesystem::path& sources,
                   const std::filesystem::path& program);

}  // namespace seatload::test
