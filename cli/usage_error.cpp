// SPDX-License-Identifier: MIT
#include <cli/usage_error.hpp>

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

#include <CLI/CLI.hpp>
#include <seatload/core/text.hpp>

#include <cli/number_argument.hpp>

namespace seatload::cli {
namespace {

/// The command that was being read when the words ran into trouble, or the program itself.
const CLI::App& command_used(const CLI::App& app) {
    const auto used = app.get_subcommands();
    return used.empty() ? app : command_used(*used.front());
}

/// The command as it is typed behind the program's name: "specs list"; empty for the program itself.
std::string full_name(const CLI::App& command) {
    if (command.get_parent() == nullptr) return {};
    const std::string before = full_name(*command.get_parent());
    return (before.empty() ? "" : before + ' ') + command.get_name();
}

/// The options of a command, and those of the one it is an action of.
std::vector<std::string> option_names(const CLI::App& command) {
    std::vector<std::string> names;
    if (const CLI::App* parent = command.get_parent(); parent != nullptr && parent->get_parent() != nullptr)
        names = option_names(*parent);
    for (const CLI::Option* option : command.get_options()) {
        for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
        for (const std::string& name : option->get_snames()) names.push_back('-' + name);
    }
    return names;
}

/// Where more is told on a command.
std::string more_help(const CLI::App& command) {
    const std::string name = full_name(command);
    return "\"seatload " + name + (name.empty() ? "" : " ") + "--help\" tells more";
}

/// What is wrong with the words behind a command that has actions, when they name none.
std::optional<Diagnostic> unknown_action(const CLI::App& command, int argc, const char* const* argv) {
    const auto actions = command_names(command);
    if (command.get_parent() == nullptr || actions.empty()) return std::nullopt;
    const std::string list = "it can " + join(actions, ", ");
    const std::string name = "\"seatload " + full_name(command) + '"';
    if (argc < 3 || argv[2][0] == '-')
        return usage_error(command, "missing-argument"_id, name + " needs to know what to do", {}, list);
    return usage_error(command, "unknown-command"_id, name + " cannot \"" + argv[2] + '"',
                       did_you_mean(argv[2], actions), list);
}

/// An option that another action has, and what the command says in its place.
struct SaidOtherwise {
    std::string_view command;
    std::string_view option;
    std::string_view meant;
};

constexpr std::array kSaidOtherwise{SaidOtherwise{"specs approve", "--reason", "--without-inspection"}};

/// What may have been meant by an option that the command does not have.
std::string meant_option(const CLI::App& command, const std::string& word, const std::vector<std::string>& names) {
    if (word[1] != '-') return {};
    for (const SaidOtherwise& said : kSaidOtherwise)
        if (full_name(command) == said.command && word == said.option)
            return "did you mean \"" + std::string(said.meant) + "\"?";
    return did_you_mean(word, names);
}

/// The first word that looks like an option and is none, with what may have been meant.
std::optional<Diagnostic> unknown_option(const CLI::App& command, int argc, const char* const* argv) {
    const auto names = option_names(command);
    for (int i = 1; i < argc; ++i) {
        const std::string all = argv[i];
        if (all.size() < 2 || all[0] != '-') continue;
        const std::string word = all[1] == '-' ? all.substr(0, all.find('=')) : all.substr(0, 2);
        if (word == "--" || std::find(names.begin(), names.end(), word) != names.end()) continue;
        return usage_error(command, "unknown-option"_id, "unknown option \"" + word + '"',
                           meant_option(command, word, names));
    }
    return std::nullopt;
}

/// An option or argument as its help shows it: "--what-if \"NAME=FROM..TO\""; empty when there is none of the name.
std::string shown_option(const CLI::App& command, const std::string& name) {
    const CLI::Option* option = command.get_option_no_throw(name);
    if (option == nullptr) return {};
    if (option->get_positional()) return name + ": " + option->get_description();
    const std::string value = option->get_option_text();
    const bool holds_blanks = value.find('=') != std::string::npos;  // NAME=FROM..TO, where FROM and TO have units
    return name + ' ' + (holds_blanks ? '"' + value + '"' : value);
}

/// The first word that neither the command nor one it is an action of has a use for; empty when there is none.
std::string word_too_many(const CLI::App& command) {
    for (const std::string& word : command.remaining())
        if (word != "--") return word;
    return command.get_parent() != nullptr ? word_too_many(*command.get_parent()) : std::string{};
}

/// What is wrong with options and arguments that the command has; the library says it in words of its own.
Diagnostic wrong_value(const CLI::App& command, const CLI::ParseError& error) {
    const std::string said = error.what();
    const std::string name = said.substr(0, said.find_first_of(": "));
    if (dynamic_cast<const CLI::ArgumentMismatch*>(&error) != nullptr)
        return usage_error(command, "no-value"_id, name + " needs a value", {}, "write " + shown_option(command, name));
    if (const std::string word = word_too_many(command); !word.empty())
        return usage_error(command, "word-too-many"_id, '"' + word + "\" is one word too many");
    if (dynamic_cast<const CLI::RequiredError*>(&error) != nullptr)
        return usage_error(command, "missing-argument"_id, "no " + name + " is given", {}, shown_option(command, name));
    if (dynamic_cast<const CLI::RequiresError*>(&error) != nullptr)
        return usage_error(command, "unmatched-options"_id, said);
    return usage_error(command, is_beyond_bounds(said) ? "out-of-span"_id : "not-a-number"_id, said);
}

/// What may have been meant by an unknown command: the action of one, or one spelt nearly so.
std::string meant_command(const CLI::App& app, const std::string& word) {
    for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; })) {
        const auto actions = command_names(*command);
        if (std::find(actions.begin(), actions.end(), word) != actions.end())
            return "did you mean \"" + command->get_name() + ' ' + word + "\"?";
    }
    return did_you_mean(word, command_names(app));
}

}  // namespace

std::vector<std::string> command_names(const CLI::App& app) {
    std::vector<std::string> names;
    for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; }))
        names.push_back(command->get_name());
    return names;
}

Diagnostic usage_error(const CLI::App& command, DiagnosticId id, const std::string& message, const std::string& meant,
                       const std::string& otherwise) {
    const std::string first = !meant.empty() ? meant + ' ' : !otherwise.empty() ? otherwise + "; " : "";
    return error(id, message, first + more_help(command));
}

Diagnostic usage_error(const CLI::App& app, int argc, const char* const* argv, const CLI::ParseError& error) {
    const auto commands = command_names(app);
    const std::string list = "commands are " + join(commands, ", ");
    const std::string first = argv[1];
    const CLI::App& command = command_used(app);
    if (&command == &app && !first.starts_with('-'))
        return usage_error(app, "unknown-command"_id, "unknown command \"" + first + '"', meant_command(app, first),
                           list);
    if (const auto unknown = unknown_option(command, argc, argv)) return *unknown;
    if (&command == &app && dynamic_cast<const CLI::RequiresError*>(&error) == nullptr)
        return usage_error(app, "missing-argument"_id, "no command given", {}, list);
    if (const auto unknown = unknown_action(command, argc, argv)) return *unknown;
    return wrong_value(command, error);
}

}  // namespace seatload::cli
