// SPDX-License-Identifier: MIT
#include <cli/command_table.hpp>

#include <CLI/CLI.hpp>

#include <cli/every_command.hpp>

namespace seatload::cli {
namespace {

OptionEntry option_entry(const CLI::Option& option) {
    OptionEntry entry;
    for (const std::string& name : option.get_snames()) entry.names.push_back('-' + name);
    for (const std::string& name : option.get_lnames()) entry.names.push_back("--" + name);
    entry.value = option.get_option_text();
    entry.about = option.get_description();
    return entry;
}

ArgumentEntry argument_entry(const CLI::Option& option) {
    return {option.get_name(true), option.get_description(), option.get_required(),
            option.get_items_expected_max() > 1};
}

CommandEntry command_entry(const CLI::App& app) {
    CommandEntry entry;
    entry.name = app.get_name();
    entry.about = app.get_description();
    for (const CLI::Option* option : app.get_options()) {
        if (option->get_positional()) entry.arguments.push_back(argument_entry(*option));
        if (option->nonpositional()) entry.options.push_back(option_entry(*option));
    }
    for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; }))
        entry.commands.push_back(command_entry(*command));
    return entry;
}

}  // namespace

CommandEntry command_table() {
    EveryCommand options;
    CLI::App app;
    describe_program(app, options);
    return command_entry(app);
}

}  // namespace seatload::cli
