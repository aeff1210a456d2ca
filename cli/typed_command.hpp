// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace seatload::cli {

/// A word as a POSIX shell reads it back: as it stands, or in single quotes where it holds anything the shell would
/// take for its own.
std::string shell_word(const std::string& word);

/// A command of this program to be typed next. Every name in it is quoted where a shell needs it, so that the line
/// works as it is shown; parts stand in the order they are added in.
class TypedCommand {
  public:
    /// "specs order", without the program's own name.
    explicit TypedCommand(const std::string& command);

    /// A file or the name of something; one that begins with a dash gets "./" before it.
    TypedCommand& name(const std::string& word);
    /// "--library FOLDER"; left out when the value is empty.
    TypedCommand& option(const std::string& option, const std::string& value);
    /// Words as they stand, for what the reader fills in: "--by NAME --date DATE".
    TypedCommand& open(const std::string& words);

    /// The command in backticks.
    std::string text() const;

  private:
    std::string line_;
};

}  // namespace seatload::cli
