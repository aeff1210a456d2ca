// SPDX-License-Identifier: MIT
// The commands of the README, run in their order as a reader would.
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
    int code = 0;  ///< as told by "# exits 1" behind it
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
            commands.push_back({line});
        else
            continue;
        goes_on = line.ends_with("\\");
        std::smatch told;
        if (std::regex_search(line, told, std::regex("# exits ([0-3])$"))) commands.back().code = std::stoi(told[1]);
    }
    return commands;
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
    int count = 0;
    for (const Block& block : blocks_of(lines_of(bytes_of(fs::path(SEATLOAD_SOURCE_DIR) / "README.md")))) {
        if (block.file) write_bytes(folder / *block.file, text_of(block.lines));
        for (const Command& command : commands_of(block)) {
            const Ended ended = run_program({"/bin/sh", "-c", command.words}, folder.path(), {path});
            INFO(command.words << "\n" << ended.out << ended.err);
            CHECK(ended.code == command.code);
            ++count;
        }
    }
    CHECK(count > 0);
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
    CHECK(commands[1].words == "build/bin/seatload size \\\n    b.toml");
    CHECK(commands[1].code == 0);
    CHECK(commands_of(blocks[2]).empty());
}

}  // namespace
}  // namespace seatload::test
