// SPDX-License-Identifier: MIT
// That the .test files leave nothing out.
#include <algorithm>
#include <filesystem>
#include <regex>
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

/// The words of every run of a command, or of one of its actions, in the .test files; of no command: of every run.
std::set<std::string> words_run(const test::Lines& path) {
    std::set<std::string> words;
    for (const test::Section& section : all_sections()) {
        const test::Lines run = test::words_of(section.head);
        if (run.size() < 2 || run.front() != "run") continue;
        const bool is_command = path.empty() || (run.size() > 2 && run[2] == path.front());
        const bool is_action = path.size() < 2 || std::count(run.begin() + 2, run.end(), path[1]) > 0;
        if (!is_command || !is_action) continue;
        for (const std::string& word : run) words.insert(word.substr(0, word.find('=')));
    }
    return words;
}

/// Every option of the program, its commands and their actions, and the commands and actions ("specs add").
struct Typed {
    std::set<std::string> options;
    std::set<std::string> commands;
};

/// Options that one function reads for every action that takes evidence, and those that all helps list: enough when
/// they are run with some action.
bool is_shared(const std::string& option) {
    static const std::set<std::string> kShared{"--help", "--hours", "--keep", "--lot", "--note", "--revision", "-h"};
    return kShared.contains(option);
}

void check_options_are_run(const test::Lines& path, const std::string& help, Typed& all) {
    const auto run = words_run(path);
    const auto run_somewhere = words_run(path.empty() || path.size() == 1 ? test::Lines{} : test::Lines{path.front()});
    const auto options = options_in(help);
    CHECK(options.size() >= 3);
    for (const std::string& option : options) {
        INFO(join(path, " ") << " " << option);
        CHECK((is_shared(option) ? run_somewhere : run).contains(option));
        all.options.insert(option);
    }
}

/// Walks all helps, and checks that each option is run with its own command and action.
Typed all_that_can_be_typed() {
    Typed all;
    const std::string help = output_of({"--help"});
    check_options_are_run({}, help, all);
    for (const std::string& command : commands_in(help)) {
        const std::string about = output_of({command, "--help"});
        check_options_are_run({command}, about, all);
        all.commands.insert(command);
        for (const std::string& action : commands_in(about)) {
            INFO(command << " " << action);
            CHECK(words_run({command}).contains(action));
            check_options_are_run({command, action}, output_of({command, action, "--help"}), all);
            all.commands.insert(command + ' ' + action);
        }
    }
    return all;
}

/// What a page sets in code and begins with the program's name or with an option, in the text and in its blocks.
std::vector<std::string> code_on(const test::Lines& page) {
    const std::regex span("`([^`]+)`");
    std::vector<std::string> found;
    bool is_block = false;
    for (const std::string& line : page) {
        if (line.starts_with("```")) is_block = !is_block;
        if (is_block) found.push_back(line);
        for (std::sregex_iterator each(line.begin(), line.end(), span), end; !is_block && each != end; ++each)
            found.push_back((*each)[1]);
    }
    std::erase_if(found, [](const std::string& code) {
        return !code.starts_with("seatload ") && !code.starts_with("build/bin/seatload ") && !code.starts_with("-");
    });
    return found;
}

std::vector<fs::path> pages() {
    std::vector<fs::path> pages{fs::path(SEATLOAD_SOURCE_DIR) / "README.md"};
    for (const auto& entry : fs::directory_iterator(fs::path(SEATLOAD_SOURCE_DIR) / "cli" / "manual"))
        if (entry.path().extension() == ".md") pages.push_back(entry.path());
    return pages;
}

/// Checks that a command of a page is one, and that the options in it are options.
void check_is_typed(const std::string& code, const Typed& typed) {
    const test::Lines words = test::words_of(code.substr(0, code.find(" #")));
    const bool is_call = words.front().ends_with("seatload");
    const bool is_option_or_name = words.size() < 2 || words[1].starts_with('-') || words[1] == "help";
    if (is_call && !is_option_or_name) CHECK(typed.commands.contains(words[1]));
    for (const std::string& word : words) {
        const std::string option = word.substr(0, word.find_first_of("=,"));
        if (option.starts_with("--") && option.size() > 2) CHECK(typed.options.contains(option));
    }
}

}  // namespace

TEST_CASE("every option that help names is used in some .test file, with its own command and action") {
    const Typed typed = all_that_can_be_typed();
    CHECK(typed.commands.size() >= 20);
    CHECK(typed.options.size() >= 40);
    SECTION("and README and manual name no other commands and options") {
        std::size_t count = 0;
        for (const fs::path& page : pages())
            for (const std::string& code : code_on(test::lines_of(test::bytes_of(page)))) {
                INFO(page.filename().string() << ": " << code);
                check_is_typed(code, typed);
                ++count;
            }
        CHECK(count > 40);
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
