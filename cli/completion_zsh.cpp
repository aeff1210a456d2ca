// SPDX-License-Identifier: MIT
#include <algorithm>

#include <cli/completion.hpp>
#include <cli/completion_entries.hpp>

namespace seatload::cli {
namespace {

constexpr const char* kZshKeptSpecs = R"(# The specs of the library, by engine and position.
_seatload_kept() {
  local library=specs
  (( ${words[(I)--library]} )) && library=${words[${words[(I)--library]}+1]}
  local -a kept=( $library/*/*.toml(N) )
  kept=( ${${kept#$library/}%.toml} )
  _alternative 'kept:spec:compadd -a kept' 'files:file:_files -g "*.toml"'
}

)";

/// Text inside the brackets of _arguments, where brackets and colons mean something.
std::string in_zsh_brackets(const std::string& text) {
    std::string escaped;
    for (const char c : text) {
        if (c == '[' || c == ']' || c == ':' || c == '\\') escaped += '\\';
        escaped += c;
    }
    return escaped;
}

/// What completes a value; nothing is a message alone.
std::string zsh_action(const Choices& choices) {
    std::string joined;
    const bool is_file = choices.kind == Choices::Kind::file;
    for (const std::string& word : choices.words)
        joined += (joined.empty() ? "" : is_file ? "|" : " ") + (is_file ? '*' + word : word);
    switch (choices.kind) {
        case Choices::Kind::file:
            return joined.empty() ? "_files" : "_files -g \"" + joined + '"';
        case Choices::Kind::folder:
            return "_files -/";
        case Choices::Kind::words:
            return (joined.ends_with('=') ? "compadd -S \"\" " + joined : '(' + joined + ')');
        case Choices::Kind::kept_spec:
            return "_seatload_kept";
        case Choices::Kind::nothing:
            return " ";
    }
    return " ";
}

/// Names before the brackets: one alone, or all of an option, each of which rules the others out.
std::string zsh_option_names(const OptionEntry& option) {
    const auto written = [&](const std::string& name) {
        return name + (!option.value.empty() && name.starts_with("--") ? "=" : "");
    };
    if (option.names.size() == 1) return '\'' + written(option.names.front());
    std::string all, braces;
    for (const std::string& name : option.names) {
        all += (all.empty() ? "" : " ") + name;
        braces += (braces.empty() ? "" : ",") + written(name);
    }
    return "'(" + all + ")'{" + braces + "}'";
}

std::string zsh_option_line(const CommandWords& words, const OptionEntry& option) {
    std::string rest = '[' + in_zsh_brackets(option.about) + ']';
    if (!option.value.empty())
        rest += ':' + in_zsh_brackets(option.value) + ':' + zsh_action(choices_of(words.path, option));
    return "    " + zsh_option_names(option) + shell_quoted(rest).substr(1) + " \\\n";
}

std::string zsh_argument_line(const CommandWords& words, std::size_t index) {
    const ArgumentEntry& argument = words.arguments[index];
    const std::string place = argument.is_many ? "*" : std::to_string(index + 1);
    return "    " +
           shell_quoted(place + (argument.is_needed || argument.is_many ? ":" : "::") + argument.name + ':' +
                        zsh_action(choices_of(words.path, argument))) +
           " \\\n";
}

std::string zsh_function_name(std::string path) {
    std::replace(path.begin(), path.end(), ' ', '_');
    return path.empty() ? "_seatload" : "_seatload_" + path;
}

/// The commands with what they do, and the function of each.
std::string zsh_choice_of_commands(const CommandWords& words) {
    std::string listed, cases;
    const std::string before = words.path.empty() ? "" : words.path + ' ';
    for (const CommandEntry& command : words.commands) {
        listed += "      " + shell_quoted(command.name + ':' + in_zsh_brackets(command.about)) + '\n';
        cases += "        " + command.name + ") " + zsh_function_name(before + command.name) + " ;;\n";
    }
    return "    '1: :->command' '*:: :->rest' && return\n  case $state in\n    command)\n      commands=(\n" + listed +
           "      )\n      _describe command commands\n      ;;\n    rest)\n      case $words[1] in\n" + cases +
           "      esac\n      ;;\n  esac\n";
}

std::string zsh_function(const CommandWords& words) {
    std::string options;
    for (const OptionEntry& option : words.options) options += zsh_option_line(words, option);
    std::string text = zsh_function_name(words.path) + "() {\n";
    if (!words.commands.empty())
        return text + "  local curcontext=\"$curcontext\" state line\n  local -a commands\n  _arguments -C \\\n" +
               options + zsh_choice_of_commands(words) + "}\n\n";
    text += "  _arguments \\\n" + options;
    for (std::size_t i = 0; i < words.arguments.size(); ++i) text += zsh_argument_line(words, i);
    text.resize(text.size() - 3);  // the last line goes on no further
    return text + "\n}\n\n";
}

}  // namespace

std::string zsh_completion(const CommandEntry& program) {
    std::string text =
        "#compdef seatload\n# Completion of seatload's commands for zsh. Made from the program's own helps.\n\n";
    text += kZshKeptSpecs;
    for (const CommandWords& words : all_command_words(program)) text += zsh_function(words);
    // Autoloaded, the file is the function itself and is called for the first time; sourced, it only tells of itself.
    return text +
           "if [[ $funcstack[1] == _seatload ]]; then\n  _seatload \"$@\"\nelse\n  compdef _seatload seatload\nfi\n";
}

}  // namespace seatload::cli
