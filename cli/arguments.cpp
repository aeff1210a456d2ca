// SPDX-License-Identifier: MIT
#include <cli/arguments.hpp>

#include <utility>
#include <vector>

#include <CLI/CLI.hpp>

#include <cli/every_command.hpp>
#include <cli/first_words.hpp>
#include <cli/help_word.hpp>
#include <cli/session.hpp>
#include <cli/usage_error.hpp>

namespace seatload::cli {
namespace {

Options with_terminal(const CLI::App& app, EveryCommand o, const Terminal& terminal) {
    for (int* width :
         {&o.start.width, &o.sheet.width, &o.wire.width, &o.check.width, &o.size.width, &o.reply.width, &o.budget.width,
          &o.bench.width, &o.inspect.width, &o.specs.width, &o.quotes.width, &o.report.width})
        *width = terminal.width;
    o.size.progress = terminal.errors_seen && !o.size.json;
    const std::string name = app.get_subcommands().front()->get_name();
    if (name == "start") return o.start;
    if (name == "wire") return o.wire;
    if (name == "check") return o.check;
    if (name == "size") return o.size;
    if (name == "bench") return o.bench;
    if (name == "inspect") return o.inspect;
    if (name == "budget") return o.budget;
    if (name == "report") return o.report;
    if (name == "reply") return o.reply;
    if (name == "quotes") return o.quotes;
    if (name == "specs") return o.specs;
    return o.sheet;
}

}  // namespace

Arguments parse_arguments(int argc, const char* const* argv, const Terminal& terminal, std::ostream& out,
                          std::ostream& err) {
    EveryCommand options;
    options.version_width = terminal.width;
    CLI::App app;
    describe_program(app, options);
    if (argc < 2) {
        out << kFirstWords;
        return {std::nullopt, 0};
    }
    if (const auto name = asked_of_help(argc, argv)) {
        if (const auto told = told_of_complaint(*name, terminal.width)) {
            out << *told;
            return {std::nullopt, 0};
        }
        if (const auto wrong = unknown_help(app, std::string(*name))) {
            complain({*wrong}, err);
            return {std::nullopt, kBadInput};
        }
    }
    const std::vector<const char*> words = with_help(app, argc, argv);
    const int count = static_cast<int>(words.size());
    try {
        app.parse(count, words.data());
    } catch (const CLI::Success& success) {
        app.exit(success, out, err);
        return {std::nullopt, 0};
    } catch (const CLI::ParseError& error) {
        complain({usage_error(app, count, words.data(), error)}, err);
        return {std::nullopt, kBadInput};
    }
    return {with_terminal(app, std::move(options), terminal), 0};
}

}  // namespace seatload::cli
