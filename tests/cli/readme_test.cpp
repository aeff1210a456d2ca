// SPDX-License-Identifier: MIT
// The commands of the README, run in their order as a reader would.
#include <algorithm>
#include <filesystem>
#include <optional>
#include <regex>
#include <string>
#include <vector>

#include <seatload/core/text.hpp>
#include <support/check.hpp>
#include <support/scratch_folder.hpp>

#include "process.hpp"
#include "script.hpp"

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

/// A fenced block, and the file its reader is told to write it to: the text before it ends with "`name`:".
struct Block {
    std::vector<std::string> lines;
    std::optional<std::string> file;
};

std::vector<Block> blocks_of(const std::vector<std::string>& page) {
    std::vector<Block> blocks;
    bool is_inside = false;
    std::string before;
    for (const std::string& line : page) {
        std::smatch name;
        if (line.starts_with("```")) {
            is_inside = !is_inside;
            if (!is_inside) {
                before.clear();
                continue;
            }
            blocks.emplace_back();
            if (std::regex_search(before, name, std::regex("`([^`/ ]+)`:$"))) blocks.back().file = name[1];
        } else if (is_inside) {
            blocks.back().lines.push_back(line);
        } else if (!line.empty()) {
            before = line;
        }
    }
    return blocks;
}

struct Command {
    std::string words;
    int code = 0;                    ///< as told by "# exits 1" behind it
    std::vector<std::string> shown;  ///< what the page shows of its output, "..." for lines left out
};

/// The lines of a block that call the program, those broken by a backslash put together. A block that installs or
/// builds is none of ours.
std::vector<Command> commands_of(const Block& block) {
    std::vector<Command> commands;
    bool goes_on = false;
    for (const std::string& line : block.lines) {
        if (line.find("cmake ") != std::string::npos) return {};
        if (goes_on)
            commands.back().words += "\n" + line;
        else if (line.starts_with("seatload ") || line.starts_with("build/bin/seatload "))
            commands.push_back({line, 0, {}});
        else {
            if (!commands.empty()) commands.back().shown.push_back(line);
            continue;
        }
        goes_on = line.ends_with("\\");
        std::smatch told;
        if (std::regex_search(line, told, std::regex("# exits ([0-3])$"))) commands.back().code = std::stoi(told[1]);
    }
    return commands;
}

/// The first line shown that the output does not have there, or nothing. Lines shown one after another stand so in the
/// output; "..." stands for any lines left out, and blank lines at the end of the block do not count.
std::optional<std::string> not_printed(std::vector<std::string> shown, const std::vector<std::string>& output) {
    while (!shown.empty() && shown.back().empty()) shown.pop_back();
    auto at = output.begin();
    bool is_adjoining = false;
    for (const std::string& line : shown) {
        if (line == "...") {
            is_adjoining = false;
            continue;
        }
        const auto found =
            is_adjoining ? (at != output.end() && *at == line ? at : output.end()) : std::find(at, output.end(), line);
        if (found == output.end()) return line;
        at = found + 1;
        is_adjoining = true;
    }
    return std::nullopt;
}

/// Lays out what a clone has after the first command: templates, specs and the program.
void furnish(const fs::path& folder) {
    for (const char* name : {"templates", "specs"})
        if (const fs::path from = fs::path(SEATLOAD_SOURCE_DIR) / name; fs::exists(from))
            fs::copy(from, folder / name, fs::copy_options::recursive);
    fs::create_directories(folder / "build/bin");
    fs::create_symlink(SEATLOAD_PROGRAM, folder / "build/bin/seatload");
}

TEST_CASE("every command of the README does what it says there") {
    const ScratchFolder folder;
    furnish(folder.path());
    const std::string path = "PATH=" + (folder / "build/bin").string() + ":/usr/bin:/bin";
    int count = 0, excerpts = 0;
    for (const Block& block : blocks_of(lines_of(bytes_of(fs::path(SEATLOAD_SOURCE_DIR) / "README.md")))) {
        if (block.file) write_bytes(folder / *block.file, text_of(block.lines));
        for (const Command& command : commands_of(block)) {
            const Ended ended = run_program({"/bin/sh", "-c", command.words}, folder.path(), {path});
            INFO(command.words << "\n" << ended.out << ended.err);
            CHECK(ended.code == command.code);
            const auto missing = not_printed(command.shown, lines_of(ended.out));
            INFO("shown, but not printed there: " << missing.value_or(""));
            CHECK_FALSE(missing.has_value());
            excerpts += command.shown.empty() ? 0 : 1;
            ++count;
        }
    }
    CHECK(count > 0);
    CHECK(excerpts >= 4);
}

TEST_CASE("an excerpt of an output is held against it line by line") {
    const std::vector<std::string> output{"a", "b", "c", "b", "d"};
    CHECK_FALSE(not_printed({"b", "c", ""}, output).has_value());
    CHECK_FALSE(not_printed({"...", "a", "...", "d"}, output).has_value());
    CHECK_FALSE(not_printed({}, output).has_value());
    CHECK(not_printed({"b", "d"}, output) == "d");
    CHECK(not_printed({"d", "...", "a"}, output) == "a");
    CHECK(not_printed({"d", "e"}, output) == "e");
}

TEST_CASE("the commands of a page are found, with their codes and the files they need") {
    const auto blocks =
        blocks_of(lines_of("Write\n`a.toml`:\n\n```toml\nx = 1\n```\n\n```\n"
                           "seatload check a.toml   # exits 2\nbuild/bin/seatload size \\\n    b.toml\n"
                           "  seatload is quoted\n```\n```sh\ncmake . &&\nseatload wire\n```\n"));
    REQUIRE(blocks.size() == 3);
    CHECK(blocks[0].file == "a.toml");
    CHECK(text_of(blocks[0].lines) == "x = 1\n");
    CHECK_FALSE(blocks[1].file.has_value());
    const auto commands = commands_of(blocks[1]);
    REQUIRE(commands.size() == 2);
    CHECK(commands[0].code == 2);
    CHECK(commands[0].shown.empty());
    CHECK(commands[1].shown == std::vector<std::string>{"  seatload is quoted"});
    CHECK(commands[1].words == "build/bin/seatload size \\\n    b.toml");
    CHECK(commands[1].code == 0);
    CHECK(commands_of(blocks[2]).empty());
}

}  // namespace
}  // namespace seatload::test
