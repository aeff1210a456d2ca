// SPDX-License-Identifier: MIT
// The manual pages as the build makes them, rendered by groff.
#include <algorithm>
#include <regex>

#include <support/check.hpp>
#include <support/scratch_folder.hpp>

#include "help_text.hpp"

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

fs::path man_file(const std::string& command) {
    return fs::path(SEATLOAD_PAGES) / "man" / "man1" / ("seatload" + (command.empty() ? "" : '-' + command) + ".1");
}

/// The page as plain text; groff must find nothing to warn of.
std::string rendered_page(const std::string& command) {
    const Ended groff = run_program({"/usr/bin/groff", "-man", "-ww", "-Tutf8", "-P-cbou", man_file(command).string()},
                                    fs::temp_directory_path(), {"PATH=/usr/bin:/bin"});
    INFO(command << ": " << groff.err);
    REQUIRE(groff.code == 0);
    CHECK(groff.err == "");
    // How a hyphen is drawn is up to the machine's man.local.
    return std::regex_replace(groff.out, std::regex("\xE2\x88\x92|\xE2\x80\x90"), "-");
}

/// Whether the option stands there by itself: "--at", not as the beginning of "--attach".
bool names_option(const std::string& page, const std::string& option) {
    return std::regex_search(page, std::regex("(^|[\\s,])" + option + "([\\s,]|$)"));
}

/// The command lines between .EX and .EE, with the exit status that the words before them tell.
std::vector<std::pair<std::string, int>> shown_examples(const std::string& command) {
    std::vector<std::pair<std::string, int>> examples;
    const auto lines = lines_of(bytes_of(man_file(command)));
    for (std::size_t i = 4; i + 1 < lines.size(); ++i) {
        if (lines[i] != ".EX") continue;
        const bool fails = lines[i - 3].find("(exit status 1)") != std::string::npos;
        examples.emplace_back(std::regex_replace(lines[i + 1], std::regex("\\\\-"), "-"), fails ? 1 : 0);
    }
    return examples;
}

}  // namespace

TEST_CASE("every command has a manual page that renders without a warning and tells each option of its help") {
    for (const auto& words : every_command()) {
        const std::string command = words.empty() ? "" : words.front();
        const std::string page = rendered_page(command);
        for (const char* heading : {"NAME", "SYNOPSIS", "DESCRIPTION", "OPTIONS", "EXIT STATUS", "FILES", "EXAMPLES"}) {
            INFO(command << ' ' << heading);
            CHECK(page.find(heading) != std::string::npos);
        }
        for (const auto& [option, value] : help_of(words).options) {
            INFO(command << ' ' << option);
            CHECK(names_option(page, option));
        }
        if (words.size() == 2) CHECK(page.find("seatload " + words[0] + ' ' + words[1]) != std::string::npos);
        const std::string source = bytes_of(man_file(command));
        CHECK(std::all_of(source.begin(), source.end(), [](char c) { return static_cast<unsigned char>(c) < 127; }));
    }
}

TEST_CASE("there is no manual page of what is no command") {
    const auto commands = help_of({}).commands;
    std::size_t pages = 0;
    for (const auto& entry : fs::directory_iterator(fs::path(SEATLOAD_PAGES) / "man" / "man1")) {
        ++pages;
        const std::string name = entry.path().stem().string();
        INFO(name);
        CHECK((name == "seatload" || std::find(commands.begin(), commands.end(), name.substr(9)) != commands.end()));
    }
    CHECK(pages == commands.size() + 1);
}

TEST_CASE("the examples of the manual pages do what they say", "[slow]") {
    ScratchFolder folder;
    for (const char* copied : {"templates", "specs"})
        fs::copy(fs::path(SEATLOAD_SOURCE_DIR) / copied, folder / copied, fs::copy_options::recursive);
    std::size_t run = 0;
    for (const auto& words : every_command()) {
        if (words.size() == 2) continue;
        for (const auto& [line, code] : shown_examples(words.empty() ? "" : words.front())) {
            std::vector<std::string> typed = words_of(line);
            REQUIRE(typed.front() == "seatload");
            typed.front() = SEATLOAD_PROGRAM;
            const Ended ended = run_program(typed, folder.path(), {});
            INFO(line << '\n' << ended.err);
            CHECK(ended.code == code);
            ++run;
        }
    }
    CHECK(run >= 2 * 11);
}

}  // namespace seatload::test
