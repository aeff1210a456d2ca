// SPDX-License-Identifier: MIT
#include <cli/typed_command.hpp>

#include <algorithm>
#include <string_view>

namespace seatload::cli {
namespace {

/// Letters that no shell takes for its own; what is beyond ASCII is none of its business either.
bool is_harmless(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x80 || (byte >= '0' && byte <= '9') || (byte >= 'A' && byte <= 'Z') ||
           (byte >= 'a' && byte <= 'z') || std::string_view("_-./,:@%+=").find(c) != std::string_view::npos;
}

}  // namespace

std::string shell_word(const std::string& word) {
    if (!word.empty() && std::all_of(word.begin(), word.end(), is_harmless)) return word;
    std::string quoted = "'";
    for (const char c : word) quoted += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return quoted + '\'';
}

TypedCommand::TypedCommand(const std::string& command) : line_("seatload " + command) {}

TypedCommand& TypedCommand::name(const std::string& word) {
    line_ += ' ' + shell_word(word.starts_with('-') ? "./" + word : word);
    return *this;
}

TypedCommand& TypedCommand::option(const std::string& option, const std::string& value) {
    // A value that begins with a dash would be read as an option of its own.
    if (!value.empty()) line_ += ' ' + option + (value.starts_with('-') ? '=' : ' ') + shell_word(value);
    return *this;
}

TypedCommand& TypedCommand::open(const std::string& words) {
    line_ += ' ' + words;
    return *this;
}

std::string TypedCommand::text() const { return '`' + line_ + '`'; }

}  // namespace seatload::cli
