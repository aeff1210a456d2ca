// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include <support/check.hpp>

#include "process.hpp"
#include "script.hpp"

namespace seatload::test {

/// A command or an action as its help tells it.
struct HelpText {
    std::map<std::string, std::string> options;  ///< every spelling, with what it takes: "" for a switch
    std::vector<std::string> commands;           ///< listed below "Commands:"
};

/// Reads "  -o,--output FOLDER   words" and "  name   words" off a help text.
inline HelpText read_help(const std::string& text) {
    HelpText help;
    bool is_list = false;
    for (const std::string& line : lines_of(text)) {
        const bool is_item = line.starts_with("  ") && line.size() > 2 && line[2] != ' ';
        const auto words = is_item ? words_of(line) : std::vector<std::string>{};
        if (is_item && is_list) help.commands.push_back(words.front());
        if (is_item && words.front().starts_with('-')) {
            // One blank parts an option from what it takes, several from what is told of it.
            const std::size_t end = line.find(words.front()) + words.front().size();
            const bool takes = end + 1 < line.size() && line[end + 1] != ' ' && words.size() > 1;
            for (std::size_t from = 0; from < words.front().size();) {
                const std::size_t to = std::min(words.front().find(',', from), words.front().size());
                help.options[words.front().substr(from, to - from)] = takes ? words[1] : "";
                from = to + 1;
            }
        }
        is_list = line == "Commands:" || (is_list && !line.empty());
    }
    return help;
}

/// The help behind these words: of the program itself when there are none.
inline HelpText help_of(std::vector<std::string> words) {
    words.insert(words.begin(), SEATLOAD_PROGRAM);
    words.emplace_back("--help");
    const Ended ended = run_program(words, std::filesystem::temp_directory_path(), {});
    CHECK(ended.code == 0);
    return read_help(ended.out);
}

/// What can be typed behind the program's name to have a command done: {}, {"size"}, {"specs", "list"}, ...
inline std::vector<std::vector<std::string>> every_command() {
    std::vector<std::vector<std::string>> all{{}};
    for (const std::string& command : help_of({}).commands) {
        all.push_back({command});
        for (const std::string& action : help_of({command}).commands) all.push_back({command, action});
    }
    return all;
}

}  // namespace seatload::test
