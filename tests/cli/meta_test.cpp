// SPDX-License-Identifier: MIT
// That the .test files leave nothing out.
#include <algorithm>
#include <filesystem>
#include <set>

#include <seatload/check/rule.hpp>
#include <seatload/core/text.hpp>
#include <support/check.hpp>
#include <support/scratch_folder.hpp>

#include "process.hpp"
#include "script.hpp"

using namespace seatload;
namespace fs = std::filesystem;

namespace {

const fs::path kFolder = fs::path(SEATLOAD_SOURCE_DIR) / "tests" / "cli";

std::vector<fs::path> test_files() {
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(kFolder))
        if (entry.path().extension() == ".test") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

std::vector<test::Section> all_sections() {
    std::vector<test::Section> sections;
    for (const fs::path& file : test_files())
        for (test::Section& section : test::parse_script(test::bytes_of(file)).sections)
            sections.push_back(std::move(section));
    return sections;
}

std::string output_of(const std::vector<std::string>& words) {
    std::vector<std::string> all{SEATLOAD_PROGRAM};
    all.insert(all.end(), words.begin(), words.end());
    const test::Ended ended = test::run_program(all, fs::temp_directory_path(), {});
    CHECK(ended.code == 0);
    return ended.out;
}

/// The spellings of the options a help text lists: "  -o,--output FOLDER   ..." has two.
std::set<std::string> options_in(const std::string& help) {
    std::set<std::string> options;
    for (const std::string& line : test::lines_of(help)) {
        if (!line.starts_with("  -")) continue;
        const std::string names = test::words_of(line).front();
        for (const std::string_view name : split(names, ',')) options.emplace(name);
    }
    return options;
}

/// The commands a help text lists below "Commands:".
std::vector<std::string> commands_in(const std::string& help) {
    std::vector<std::string> commands;
    bool is_list = false;
    for (const std::string& line : test::lines_of(help)) {
        if (is_list && line.starts_with("  ")) commands.push_back(test::words_of(line).front());
        is_list = line == "Commands:" || (is_list && line.starts_with("  "));
    }
    return commands;
}

/// The words of every run of a command ("" for the program itself) in the .test files.
std::set<std::string> words_run(const std::string& command) {
    std::set<std::string> words;
    for (const test::Section& section : all_sections()) {
        const test::Lines run = test::words_of(section.head);
        if (run.empty() || run.front() != "run" || (!command.empty() && (run.size() < 3 || run[2] != command)))
            continue;
        for (const std::string& word : run) words.insert(word.substr(0, word.find('=')));
    }
    return words;
}

void check_options_are_run(const std::string& command, const std::string& help) {
    const auto run = words_run(command);
    const auto options = options_in(help);
    CHECK(options.size() >= 3);
    for (const std::string& option : options) {
        INFO(command << " " << option);
        CHECK(run.contains(option));
    }
}

}  // namespace

TEST_CASE("every option that help names is used in some .test file") {
    const std::string help = output_of({"--help"});
    check_options_are_run("", help);
    const auto commands = commands_in(help);
    REQUIRE(commands.size() >= 4);
    for (const std::string& command : commands) {
        const std::string about = output_of({command, "--help"});
        check_options_are_run(command, about);
        for (const std::string& action : commands_in(about)) {
            INFO(command << " " << action);
            CHECK(words_run(command).contains(action));
            check_options_are_run(command, output_of({command, action, "--help"}));
        }
    }
}

TEST_CASE("every rule is kept by a spring and broken by another in the JSON of some .test file") {
    std::set<std::string> lines;
    for (const test::Section& section : all_sections())
        if (section.head == "stdout is json")
            for (const std::string& line : section.body)
                lines.insert(line.substr(std::min(line.find("verdicts["), line.size())));
    for (const check::Rule& rule : check::rules())
        for (const std::string answer : {"true", "false"}) {
            const std::string line = "verdicts[rule=" + std::string(rule.id) + "]/passed = " + answer;
            INFO(line);
            CHECK(lines.contains(line));
        }
}

TEST_CASE("every .test file is named in CMakeLists.txt") {
    std::vector<std::string> words;
    for (const std::string& line : test::lines_of(test::bytes_of(kFolder / "CMakeLists.txt")))
        for (std::string& word : test::words_of(line)) words.push_back(std::move(word));
    const auto files = test_files();
    CHECK(files.size() > 10);
    for (const fs::path& file : files) {
        INFO(file.filename().string());
        CHECK(std::count(words.begin(), words.end(), file.stem().string()) == 1);
    }
}
