// SPDX-License-Identifier: MIT
#include <cli/completion_entries.hpp>

namespace seatload::cli {
namespace {

void add_words(std::vector<CommandWords>& all, const CommandEntry& entry, const std::string& path,
               const std::vector<OptionEntry>& inherited) {
    std::vector<OptionEntry> options = entry.options;
    for (const OptionEntry& option : inherited)
        if (option.names.back() != "--help") options.push_back(option);
    all.push_back({path, entry.about, options, entry.arguments, entry.commands});
    // What is said to the program itself does not go on behind a command.
    const std::vector<OptionEntry> handed_on = path.empty() ? std::vector<OptionEntry>{} : entry.options;
    for (const CommandEntry& command : entry.commands)
        add_words(all, command, path.empty() ? command.name : path + ' ' + command.name, handed_on);
}

}  // namespace

std::vector<CommandWords> all_command_words(const CommandEntry& program) {
    std::vector<CommandWords> all;
    add_words(all, program, "", {});
    return all;
}

std::string shell_quoted(std::string_view text) {
    std::string quoted = "'";
    for (const char c : text) {
        if (c == '\'') quoted += "'\\'";
        quoted += c;
    }
    return quoted + '\'';
}

}  // namespace seatload::cli
