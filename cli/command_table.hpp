// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace seatload::cli {

/// An option of a command, as its help names it.
struct OptionEntry {
    std::vector<std::string> names;  ///< "-o", "--output": the short one first
    std::string value;               ///< what it takes, "FOLDER"; empty: it is a switch
    std::string about;
};

/// A word that stands on its own behind a command.
struct ArgumentEntry {
    std::string name;  ///< "REQUIREMENT"
    std::string about;
    bool is_needed = false;
    bool is_many = false;
};

/// A command, an action of one, or the program itself.
struct CommandEntry {
    std::string name;
    std::string about;
    std::vector<ArgumentEntry> arguments;
    std::vector<OptionEntry> options;
    std::vector<CommandEntry> commands;  ///< of the program, or actions of a command: its options may follow them too
};

/// All that can be typed, in the order and the words of the helps: what manual pages and completions are made from.
CommandEntry command_table();

}  // namespace seatload::cli
