// SPDX-License-Identifier: MIT
// What the shells complete, by the shells themselves.
#include <algorithm>
#include <set>

#include <support/check.hpp>
#include <support/scratch_folder.hpp>

#include "help_text.hpp"

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

const fs::path kBashScript = fs::path(SEATLOAD_PAGES) / "bash-completion" / "completions" / "seatload";

/// What a shell writes when it runs a script in the folder.
std::vector<std::string> lines_by(const std::vector<std::string>& shell, const std::string& script,
                                  const fs::path& folder) {
    std::vector<std::string> words = shell;
    words.push_back(script);
    const Ended ended = run_program(words, folder, {"PATH=/usr/bin:/bin", "HOME=" + folder.string()});
    INFO(ended.err);
    CHECK(ended.err == "");
    auto lines = lines_of(ended.out);
    lines.erase(std::remove(lines.begin(), lines.end(), ""), lines.end());
    return lines;
}

std::string in_quotes(const std::string& word) { return '\'' + word + '\''; }

/// What bash offers when these words are typed and the tabulator is pressed behind the last.
std::set<std::string> bash_offers(const std::vector<std::string>& typed, const fs::path& folder) {
    std::string script = "source " + in_quotes(kBashScript.string()) + "\nCOMP_WORDS=(seatload";
    for (const std::string& word : typed) script += ' ' + in_quotes(word);
    script += ")\nCOMP_CWORD=" + std::to_string(typed.size()) +
              "\n_seatload\nfor word in \"${COMPREPLY[@]}\"; do printf '%s\\n' \"$word\"; done\n";
    const auto lines = lines_by({"/usr/bin/bash", "--norc", "-c"}, script, folder);
    return {lines.begin(), lines.end()};
}

using Offers = std::set<std::string>;

/// A folder with a library of specs and files of several kinds.
void fill(const ScratchFolder& folder) {
    for (const char* name : {"latch.toml", "lathe.csv", "latch.pdf", "la kept.toml", "specs/m14/ahead.toml",
                             "specs/m14/astern.toml", "kept/m21/relief.toml", "output/old.toml", ".hidden/x.toml"})
        write_bytes(folder / name, "");
}

}  // namespace

TEST_CASE("bash completes commands, actions and options") {
    ScratchFolder folder;
    const auto commands = help_of({}).commands;
    CHECK(bash_offers({""}, folder.path()) == Offers(commands.begin(), commands.end()));
    CHECK(bash_offers({"si"}, folder.path()) == Offers{"size"});
    CHECK(bash_offers({"specs", "ver"}, folder.path()) == Offers{"verify"});
    CHECK(bash_offers({"specs", "--library", "kept", "ver"}, folder.path()) == Offers{"verify"});
    CHECK(bash_offers({"nonsense", "--"}, folder.path()) == bash_offers({"--"}, folder.path()));
    for (const auto& words : every_command()) {
        std::vector<std::string> typed = words;
        typed.emplace_back("-");
        const Offers offers = bash_offers(typed, folder.path());
        for (const auto& [option, value] : help_of(words).options) {
            INFO((words.empty() ? "" : words.back()) << ' ' << option);
            CHECK(offers.contains(option));
        }
    }
    CHECK(bash_offers({"specs", "list", "--lib"}, folder.path()) == Offers{"--library"});
}

TEST_CASE("bash completes files and folders where they are wanted") {
    ScratchFolder folder;
    fill(folder);
    CHECK(bash_offers({"size", "la"}, folder.path()) == Offers{"latch.toml", "la kept.toml"});
    CHECK(bash_offers({"size", "latch.toml", "la"}, folder.path()) == Offers{"latch.toml", "la kept.toml"});
    CHECK(bash_offers({"sheet", "--extract", "latch"}, folder.path()) == Offers{"latch.toml", "latch.pdf"});
    CHECK(bash_offers({"quotes", "latch"}, folder.path()) == Offers{"latch.toml", "latch.pdf"});
    CHECK(bash_offers({"quotes", "latch.pdf", "latch"}, folder.path()) == Offers{"latch.toml"});
    CHECK(bash_offers({"check", "lathe"}, folder.path()) == Offers{"lathe.csv"});  // nothing better is there
    CHECK(bash_offers({"size", "latch.toml", "--output", ""}, folder.path()) == Offers{"kept", "output", "specs"});
    CHECK(bash_offers({"size", "latch.toml", "-o", "o"}, folder.path()) == Offers{"output"});
    CHECK(bash_offers({"check", "x.toml", "-r", "latch"}, folder.path()) == Offers{"latch.toml"});
    CHECK(bash_offers({"specs", "evidence", "m14/ahead", "--keep", "latch"}, folder.path()) ==
          Offers{"latch.toml", "latch.pdf"});
    CHECK(bash_offers({"budget", "latch.toml", ""}, folder.path()).empty());  // one plunger at a time
}

TEST_CASE("bash completes the specs of the library") {
    ScratchFolder folder;
    fill(folder);
    CHECK(bash_offers({"specs", "show", "m14/a"}, folder.path()) == Offers{"m14/ahead", "m14/astern"});
    CHECK(bash_offers({"specs", "--library", "kept", "show", ""}, folder.path()) == Offers{"m21/relief"});
    CHECK(bash_offers({"specs", "show", "--library", "=", "kept", ""}, folder.path()) == Offers{"m21/relief"});
    CHECK(bash_offers({"specs", "diff", "m14/ahead", "--with", "m14/as"}, folder.path()) == Offers{"m14/astern"});
    CHECK(bash_offers({"specs", "show", "latch"}, folder.path()) == Offers{"latch.toml"});
    CHECK(bash_offers({"specs", "add", "m14"}, folder.path()).empty());
}

TEST_CASE("bash completes words where words are wanted") {
    ScratchFolder folder;
    CHECK(bash_offers({"size", "--paper", ""}, folder.path()) == Offers{"a4", "letter"});
    CHECK(bash_offers({"size", "--paper", "=", "l"}, folder.path()) == Offers{"letter"});
    CHECK(bash_offers({"sheet", "--units", "="}, folder.path()) == Offers{"metric", "inch"});
    CHECK(bash_offers({"size", "--language", ""}, folder.path()) == Offers{"en", "de", "it"});
    CHECK(bash_offers({"specs", "order", "x", "--paper", ""}, folder.path()) == Offers{"a4", "letter"});
    CHECK(bash_offers({"wire", "ASTM-A401"}, folder.path()) == Offers{"ASTM-A401"});
    CHECK(bash_offers({"wire", "EN10270-1"}, folder.path()).size() == 5);  // SL, SM, DM, SH, DH
    CHECK(bash_offers({"size", "--what-if", "space.bo"}, folder.path()) == Offers{"space.bore="});
    CHECK(bash_offers({"size", "--what-if", "space.bore", "=", ""}, folder.path()).empty());
    CHECK(bash_offers({"size", "--alternatives", ""}, folder.path()).empty());
}

TEST_CASE("the program takes every word that is offered", "[slow]") {
    ScratchFolder folder;
    const std::string spec =
        (fs::path(SEATLOAD_SOURCE_DIR) / "specs" / "ottermere-m14" / "ahead-latch-plunger.toml").string();
    const std::string library = (fs::path(SEATLOAD_SOURCE_DIR) / "specs").string();
    const auto is_taken = [&](std::vector<std::string> words, const std::string& offered) {
        words.insert(words.begin(), SEATLOAD_PROGRAM);
        words.push_back(offered);
        const Ended ended = run_program(words, folder.path(), {});
        INFO(words[1] << ' ' << offered << ": " << ended.err);
        CHECK(ended.code == 0);
    };
    for (const char* option : {"--paper", "--units", "--language"}) {
        const Offers offers = bash_offers({"sheet", option, ""}, folder.path());
        CHECK(offers.size() >= 2);
        for (const std::string& word : offers) is_taken({"sheet", spec, option}, word);
    }
    for (const std::string& word : bash_offers({"wire", "--series", ""}, folder.path()))
        is_taken({"wire", "--series"}, word);
    for (const std::string& word : bash_offers({"specs", "list", "--state", ""}, folder.path()))
        is_taken({"specs", "list", "--library", library, "--state"}, word);
    const Offers grades = bash_offers({"wire", ""}, folder.path());
    CHECK(grades.size() >= 35);
    for (const std::string& grade : grades) is_taken({"wire"}, grade);
    const Offers kinds = bash_offers({"start", ""}, folder.path());
    CHECK(kinds.size() >= 5);
    for (const std::string& kind : kinds) is_taken({"start"}, kind);
}

TEST_CASE("what an option takes is known to the completion") {
    // Of these nothing can be foretold: numbers, quantities, dates, names and words of one's own.
    const std::set<std::string> free{
        "1..26", "1..1024", "LENGTH", "LOAD",   "HEAT", "WORDS",       "NAME",
        "DATE",  "INDEX",   "HOURS",  "PIECES", "CODE", "CODE=NUMBER", "MAKER/ALTERNATIVE"};
    std::string script = "source " + in_quotes(kBashScript.string()) + '\n';
    std::vector<std::pair<std::string, std::string>> asked;
    for (const auto& words : every_command())
        for (const auto& [option, value] : help_of(words).options) {
            if (value.empty()) continue;
            std::string command = words.empty() ? "" : words.front();
            if (words.size() == 2) command += ' ' + words.back();
            asked.emplace_back(command + ' ' + option, value);
            script += "_seatload_value " + in_quotes(command) + ' ' + in_quotes(option) + " || echo unknown\n";
        }
    const auto kinds = lines_by({"/usr/bin/bash", "--norc", "-c"}, script, fs::temp_directory_path());
    REQUIRE(kinds.size() == asked.size());
    CHECK(asked.size() > 40);
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        const auto& [option, value] = asked[i];
        INFO(option << ' ' << value << ": " << kinds[i]);
        if (value == "FILE")
            CHECK(kinds[i].starts_with("file"));
        else if (value == "FOLDER")
            CHECK(kinds[i].starts_with("folder"));
        else if (value == "SPEC")
            CHECK(kinds[i].starts_with("kept"));
        else if (value == "GRADE" || value == "STATE" || value == "NAME=FROM..TO")
            CHECK(kinds[i].starts_with("words "));
        else
            CHECK(free.contains(value));
    }
}

TEST_CASE("zsh and fish can read their completions") {
    ScratchFolder folder;
    const fs::path zsh = fs::path(SEATLOAD_PAGES) / "zsh" / "site-functions" / "_seatload";
    const fs::path fish = fs::path(SEATLOAD_PAGES) / "fish" / "vendor_completions.d" / "seatload.fish";
    CHECK(lines_of(bytes_of(zsh)).front() == "#compdef seatload");
    if (fs::exists("/usr/bin/zsh"))
        CHECK(lines_by({"/usr/bin/zsh", "-fc"}, "zsh -fn " + in_quotes(zsh.string()), folder.path()).empty());
    if (!fs::exists("/usr/bin/fish")) return;
    const auto offers = [&](const std::string& typed) {
        Offers words;
        for (const std::string& line :
             lines_by({"/usr/bin/fish", "--no-config", "-c"},
                      "source " + in_quotes(fish.string()) + "; complete -C " + in_quotes(typed), folder.path()))
            words.insert(line.substr(0, line.find('\t')));
        return words;
    };
    fill(folder);
    CHECK(offers("seatload si") == Offers{"size"});
    CHECK(offers("seatload specs ver") == Offers{"verify"});
    CHECK(offers("seatload specs --library kept ver") == Offers{"verify"});
    CHECK(offers("seatload size --paper ") == Offers{"a4", "letter"});
    CHECK(offers("seatload specs list --sta") == Offers{"--state"});
    CHECK(offers("seatload specs show m14/as") == Offers{"m14/astern"});
    CHECK(offers("seatload wire ASTM-A40") == Offers{"ASTM-A401"});
    CHECK(offers("seatload size latch.t") == Offers{"latch.toml"});
}

}  // namespace seatload::test
