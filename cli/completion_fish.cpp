// SPDX-License-Identifier: MIT
#include <seatload/core/text.hpp>

#include <cli/completion.hpp>
#include <cli/completion_entries.hpp>

namespace seatload::cli {
namespace {

constexpr const char* kFishFunctions =
    R"(# Whether the words so far are those of a command, and of one of its actions: __seatload_at specs list.
# With "-" for the action none was named yet.
function __seatload_at --argument-names command action
    set -l words (commandline -opc)
    set -e words[1]
    if test -z "$command"
        test (count $words) -eq 0
        return
    end
    test "$words[1]" = "$command"; or return 1
    test -n "$action"; or return 0
    set -e words[1]
    if test "$action" = -
        for word in $words
            contains -- $word $__seatload_actions; and return 1
        end
        return 0
    end
    contains -- $action $words
end

# The specs of the library, by engine and position, and files.
function __seatload_kept
    set -l library specs
    set -l words (commandline -opc)
    if set -l at (contains -i -- --library $words)
        set library $words[(math $at + 1)]
    end
    for file in $library/*/*.toml
        string replace -r '\.toml$' '' -- (string replace -- $library/ '' $file)
    end
    __fish_complete_suffix .toml
end

complete -c seatload -f
)";

/// Text in fish's single quotes, which know \' and \\ alone.
std::string fish_quoted(const std::string& text) {
    std::string quoted = "'";
    for (const char c : text) {
        if (c == '\'' || c == '\\') quoted += '\\';
        quoted += c;
    }
    return quoted + '\'';
}

/// The condition under which a line counts.
std::string fish_condition(const std::string& path, bool is_before_action = false) {
    if (path.empty()) return "-n '__seatload_at \"\"'";
    return "-n '__seatload_at " + path + (is_before_action ? " -" : "") + '\'';
}

std::string fish_offer(const Choices& choices) {
    const std::string words = join(choices.words, " ");
    switch (choices.kind) {
        case Choices::Kind::file:
            return words.empty() ? " -r -F" : " -a '(__fish_complete_suffix " + words + ")'";
        case Choices::Kind::folder:
            return " -a '(__fish_complete_directories)'";
        case Choices::Kind::words:
            return " -a " + fish_quoted(words);
        case Choices::Kind::kept_spec:
            return " -a '(__seatload_kept)'";
        case Choices::Kind::nothing:
            return "";
    }
    return "";
}

std::string fish_option_line(const CommandWords& words, const OptionEntry& option) {
    std::string line = "complete -c seatload " + fish_condition(words.path);
    for (const std::string& name : option.names)
        line += name.starts_with("--") ? " -l " + name.substr(2) : " -s " + name.substr(1);
    if (!option.value.empty()) {
        const std::string offer = fish_offer(choices_of(words.path, option));
        line += (offer.starts_with(" -r") ? "" : " -x") + offer;
    }
    return line + " -d " + fish_quoted(option.about) + '\n';
}

std::string fish_argument_line(const CommandWords& words, const ArgumentEntry& argument) {
    const std::string offer = fish_offer(choices_of(words.path, argument));
    return offer.empty() ? "" : "complete -c seatload " + fish_condition(words.path) + offer + '\n';
}

std::string fish_command_line(const CommandWords& words, const CommandEntry& command) {
    return "complete -c seatload " + fish_condition(words.path, true) + " -a " + command.name + " -d " +
           fish_quoted(command.about) + '\n';
}

/// The actions of all commands, by which it is told that one was named.
std::string fish_actions_line(const std::vector<CommandWords>& all) {
    std::string line = "set -g __seatload_actions";
    for (const CommandWords& words : all)
        if (!words.path.empty())
            for (const CommandEntry& action : words.commands) line += ' ' + action.name;
    return line + "\n\n";
}

}  // namespace

std::string fish_completion(const CommandEntry& program) {
    const auto all = all_command_words(program);
    std::string text = "# Completion of seatload's commands for fish. Made from the program's own helps.\n\n" +
                       fish_actions_line(all) + kFishFunctions;
    for (const CommandWords& words : all) {
        text += words.path.empty() ? "" : "\n# " + words.path + '\n';
        for (const CommandEntry& command : words.commands) text += fish_command_line(words, command);
        // An action's own options alone: those of its command are listed there, and count behind the action as well.
        for (const OptionEntry& option : words.options) text += fish_option_line(words, option);
        for (const ArgumentEntry& argument : words.arguments) text += fish_argument_line(words, argument);
    }
    return text;
}

}  // namespace seatload::cli
