// SPDX-License-Identifier: MIT
#include "complaint_examples.hpp"

#include <algorithm>

#include <seatload/core/diagnostic.hpp>
#include <support/scratch_folder.hpp>

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kSetIn = "    ";

std::vector<fs::path> files_below(const fs::path& folder, std::string_view ending) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::recursive_directory_iterator(folder))
        if (entry.path().extension() == ending) files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

bool begins_complaint(const std::string& line) {
    if (line.starts_with(kSetIn)) return false;
    return line.find("error: ") != std::string::npos || line.find("warning: ") != std::string::npos;
}

/// The note on a second place, told below the first.
bool is_note(const std::string& line) { return line.find(": note: ") != std::string::npos; }

/// The text that C++ literals one after another at a place make; empty when there is none.
std::string literal_at(const std::string& source, std::size_t at) {
    std::string text;
    for (;;) {
        at = source.find_first_not_of(" \n", at);
        if (at == std::string::npos || source[at] != '"') return text;
        for (++at; at < source.size() && source[at] != '"'; ++at) {
            const bool is_escape = source[at] == '\\';
            at += is_escape ? 1 : 0;
            text += is_escape && source[at] == 'n' ? '\n' : source[at];
        }
        ++at;
    }
}

/// Where the files of one test folder stand, and what is found there.
struct Collector {
    fs::path sources;
    std::vector<ComplaintExample> all;

    std::string shown_path(const fs::path& file) const { return fs::relative(file, sources).generic_string(); }

    void add_answer(const std::string& cause, const fs::path& file, const Lines& answer) {
        const std::vector<Lines> complaints = complaints_in(answer);
        for (const Lines& each : complaints)
            if (const std::string id = id_of(each); !id.empty())
                all.push_back({id, cause, shown_path(file), each, complaints.size()});
    }

    void add_wrong_file(const fs::path& expected) {
        const fs::path wrong = fs::path(expected).replace_extension(".toml");
        add_answer(shown_path(wrong), wrong, lines_of(bytes_of(expected)));
    }

    void add_script(const fs::path& file) {
        std::string command;
        for (const Section& section : parse_script(bytes_of(file)).sections) {
            if (section.head.starts_with("run ")) command = section.head.substr(4);
            if (section.head == "stderr") add_answer("$ " + command, file, section.body);
        }
    }

    void add_test_source(const fs::path& file) {
        const std::string text = bytes_of(file);
        for (std::size_t at = text.find("=="); at != std::string::npos; at = text.find("==", at + 2)) {
            const std::size_t test = text.rfind("TEST_CASE(", at);
            if (test == std::string::npos) continue;
            const std::string answer = literal_at(text, at + 2);
            if (answer.find(']') != std::string::npos) add_answer(literal_at(text, test + 10), file, lines_of(answer));
        }
    }
};

}  // namespace

std::string id_of(const Lines& answer) {
    for (const std::string& line : answer) {
        const std::size_t open = line.rfind('[');
        if (open == std::string::npos || !line.ends_with(']')) continue;
        const std::string words = line.substr(open + 1, line.size() - open - 2);
        const bool stands_apart = open == 0 || line[open - 1] == ' ';
        if (stands_apart && is_diagnostic_id(words)) return words;
    }
    return {};
}

std::vector<Lines> complaints_in(const Lines& answer) {
    std::vector<Lines> all;
    for (const std::string& line : answer) {
        if (begins_complaint(line))
            all.push_back({line});
        else if (!all.empty() && (line.starts_with(kSetIn) || is_note(line)))
            all.back().push_back(line);
    }
    return all;
}

std::vector<ComplaintExample> complaint_examples(const fs::path& sources) {
    Collector found{sources, {}};
    for (const fs::path& file : files_below(sources / "tests/bad_input", ".expected")) found.add_wrong_file(file);
    for (const fs::path& file : files_below(sources / "tests/cli", ".test")) found.add_script(file);
    for (const char* folder : {"tests/unit", "tests/cli"})
        for (const fs::path& file : files_below(sources / folder, ".cpp")) found.add_test_source(file);
    return std::move(found.all);
}

}  // namespace seatload::test
