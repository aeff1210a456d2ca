// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <cli/command_table.hpp>

namespace seatload::cli {

/// What a shell offers where a value is wanted.
struct Choices {
    enum class Kind {
        nothing,    ///< a number, a name, words of one's own
        file,       ///< files, those of `words` (".toml") first
        folder,     ///< folders
        words,      ///< one of `words`
        kept_spec,  ///< engine/position of the library of specs, or a file
    };
    Kind kind = Kind::nothing;
    std::vector<std::string> words;
};

/// What is offered behind an option of a command ("size"; "specs list" for an action).
Choices choices_of(std::string_view command, const OptionEntry& option);

/// What is offered for the words that stand on their own.
Choices choices_of(std::string_view command, const ArgumentEntry& argument);

}  // namespace seatload::cli
