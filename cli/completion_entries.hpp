// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <cli/completion_choices.hpp>

namespace seatload::cli {

/// A command or action with everything that may follow it.
struct CommandWords {
    std::string path;                  ///< "", "size", "specs list"
    std::string about;                 ///< of its help
    std::vector<OptionEntry> options;  ///< its own, then those of the command it is an action of
    std::vector<ArgumentEntry> arguments;
    std::vector<CommandEntry> commands;  ///< that may come next
};

/// The program, each command and each action, outer ones first.
std::vector<CommandWords> all_command_words(const CommandEntry& program);

/// The text in single quotes, as a shell whose quotes know no escapes but this one reads it: it's -> 'it'\''s'.
std::string shell_quoted(std::string_view text);

}  // namespace seatload::cli
