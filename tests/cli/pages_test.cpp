// SPDX-License-Identifier: MIT
// The README and the manual: their commands, run in their order as a reader would, and what they point to.
#include <algorithm>
#include <filesystem>
#include <set>
#include <string>
#include <vector>

#include <seatload/core/text.hpp>
#include <support/check.hpp>
#include <support/scratch_folder.hpp>

#include "page.hpp"
#include "process.hpp"

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

const fs::path kSources = SEATLOAD_SOURCE_DIR;

struct Count {
    int commands = 0;
    int excerpts = 0;
};

/// Runs the commands of a page in a folder laid out as a clone, and holds what they print against what the page shows.
Count run_page(const fs::path& page) {
    const ScratchFolder folder;
    furnish_clone(folder.path(), kSources, SEATLOAD_PROGRAM);
    const std::string path = "PATH=" + (folder / "build/bin").string() + ":/usr/bin:/bin";
    Count count;
    for (const Block& block : blocks_of(lines_of(bytes_of(page)))) {
        if (block.file) write_bytes(folder / *block.file, text_of(block.lines));
        for (const Command& command : commands_of(block)) {
            const Ended ended = run_program({"/bin/sh", "-c", command.words}, folder.path(), {path});
            INFO(page.string() << ": " << command.words << "\n" << ended.out << ended.err);
            CHECK(ended.code == command.code);
            const auto missing = not_printed(command.shown, lines_of(ended.out));
            INFO("shown, but not printed there: " << missing.value_or(""));
            CHECK_FALSE(missing.has_value());
            count.excerpts += command.shown.empty() ? 0 : 1;
            ++count.commands;
        }
    }
    return count;
}

std::vector<fs::path> manual_pages() {
    std::vector<fs::path> pages;
    for (const auto& entry : fs::directory_iterator(kSources / "cli/manual"))
        if (entry.path().extension() == ".md") pages.push_back(entry.path());
    std::sort(pages.begin(), pages.end());
    return pages;
}

std::vector<fs::path> all_pages() {
    std::vector<fs::path> pages = manual_pages();
    pages.push_back(kSources / "README.md");
    return pages;
}

TEST_CASE("every command of the README does what it says there", "[slow]") {
    const Count count = run_page(kSources / "README.md");
    CHECK(count.commands > 0);
    CHECK(count.excerpts >= 4);
}

TEST_CASE("every command of the manual does what it says there", "[slow]") {
    Count all;
    for (const fs::path& page : manual_pages()) {
        const Count count = run_page(page);
        all.commands += count.commands;
        all.excerpts += count.excerpts;
    }
    CHECK(all.commands >= 15);
    CHECK(all.excerpts >= 10);
}

TEST_CASE("README and manual between them run every command there is") {
    std::set<std::string> run;
    for (const fs::path& page : all_pages())
        for (const Block& block : blocks_of(lines_of(bytes_of(page))))
            for (const Command& command : commands_of(block)) {
                const Lines words = words_of(command.words);
                if (words.size() > 1) run.insert(words[1]);
            }
    const Ended help = run_program({SEATLOAD_PROGRAM, "--help"}, fs::temp_directory_path(), {});
    bool is_list = false;
    int count = 0;
    for (const std::string& line : lines_of(help.out)) {
        is_list = line == "Commands:" || (is_list && line.starts_with("  "));
        if (!is_list || !line.starts_with("  ")) continue;
        const std::string name = words_of(line).front();
        INFO(name);
        CHECK(run.contains(name));
        ++count;
    }
    CHECK(count >= 12);
}

TEST_CASE("what README and manual point to is there") {
    int count = 0;
    for (const fs::path& page : all_pages())
        for (const std::string& link : links_of(lines_of(bytes_of(page)))) {
            INFO(page.string() << " points to " << link);
            CHECK(fs::exists(page.parent_path() / link));
            ++count;
        }
    CHECK(count >= 12);
}

TEST_CASE("the manual's pictures are small, and each is shown on a page") {
    std::set<std::string> shown;
    for (const fs::path& page : manual_pages())
        for (const std::string& link : links_of(lines_of(bytes_of(page)))) shown.insert(link);
    int count = 0;
    for (const auto& entry : fs::directory_iterator(kSources / "cli/manual/pictures")) {
        INFO(entry.path().filename().string());
        CHECK(entry.file_size() < 120'000);
        CHECK(bytes_of(entry.path()).starts_with("\x89PNG"));
        CHECK(shown.contains("pictures/" + entry.path().filename().string()));
        ++count;
    }
    CHECK(count >= 4);
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

TEST_CASE("links of a page are found outside its blocks") {
    const Lines page =
        lines_of("[a](a.md) and ![b](pictures/b.png)\n```\n[c](c.md)\n```\n[d](https://d) [e](e.md#f)\n");
    CHECK(links_of(page) == Lines{"a.md", "pictures/b.png", "e.md"});
}

}  // namespace
}  // namespace seatload::test
