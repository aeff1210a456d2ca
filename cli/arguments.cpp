// SPDX-License-Identifier: MIT
#include <cli/arguments.hpp>

#include <CLI/CLI.hpp>
#include <seatload/core/text.hpp>

namespace seatload::cli {
namespace {

constexpr const char* kVersion = "seatload 0.1.0";
constexpr int kUsage = 2;

constexpr const char* kAbout =
    "Works out, from the space and the loads a mechanism leaves, every compression spring that can be wound for it, and\n"
    "writes the papers to order it with.";

void add_wire_file(CLI::App& command, std::string& file) {
    command.add_option("--wire-file", file, "wire file of your own, laid over the built-in grades")->option_text("FILE");
}

void add_wire(CLI::App& app, WireOptions& o) {
    CLI::App& c = *app.add_subcommand("wire", "list the wire grades, or show one with its sizes and strengths");
    c.add_option("GRADE", o.grade, "grade to show, such as ASTM-A401");
    c.add_option("--series", o.series, "stock series whose sizes are shown (metric, music-wire, washburn-moen ...)")->option_text("NAME");
    c.add_option("--file,--wire-file", o.file, "wire file of your own, laid over the built-in grades")->option_text("FILE");
    c.add_option("--diameter", o.diameter, "show the strength at one diameter, such as \"0.80 mm\"")->option_text("LENGTH");
    c.add_flag("--json", o.json, "write JSON");
}

void add_check(CLI::App& app, CheckOptions& o) {
    CLI::App& c = *app.add_subcommand("check", "evaluate springs in full, alone or against a requirement");
    c.add_option("FILE", o.springs, "spring or spec files")->required();
    c.add_option("--requirement,-r", o.requirement, "requirement to judge them by")->option_text("FILE");
    add_wire_file(c, o.wire_file);
    c.add_flag("--json", o.json, "write JSON: an array, one object a file");
}

void add_size(CLI::App& app, SizeOptions& o) {
    CLI::App& c = *app.add_subcommand("size", "find every spring that meets a requirement, and write the papers");
    c.add_option("REQUIREMENT", o.requirement, "requirement file")->required();
    c.add_option("--output,-o", o.output, "folder for specs, sheets and enquiry (default: output)")->option_text("FOLDER");
    c.add_option("--alternatives,-n", o.alternatives, "how many alternatives to offer")->check(CLI::Range(1, 26))->option_text("1..26");
    c.add_option("--threads", o.threads, "threads to search with; the answer does not depend on it")->check(CLI::Range(1, 1024))->option_text("1..1024");
    add_wire_file(c, o.wire_file);
    c.add_flag("!--no-papers", o.papers, "only count and list, write no files");
    c.add_flag("--json", o.json, "write JSON");
}

void add_sheet(CLI::App& app, SheetOptions& o) {
    CLI::App& c = *app.add_subcommand("sheet", "draw the drawing-and-tolerance sheet of specs");
    c.add_option("SPEC", o.specs, "spec files")->required();
    c.add_option("--output,-o", o.output, "folder for the PDFs (default: output)")->option_text("FOLDER");
    add_wire_file(c, o.wire_file);
}

std::vector<std::string> command_names(const CLI::App& app) {
    std::vector<std::string> names;
    for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; })) names.push_back(command->get_name());
    return names;
}

/// The option names of the command that was being read when the words ran into trouble.
std::vector<std::string> option_names(const CLI::App& app) {
    const auto used = app.get_subcommands();
    const CLI::App& command = used.empty() ? app : *used.front();
    std::vector<std::string> names;
    for (const CLI::Option* option : command.get_options())
        for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
    return names;
}

/// CLI11's own words name neither the command mistyped nor the one meant.
std::string explanation(const CLI::App& app, int argc, const char* const* argv, const CLI::ParseError& error) {
    const auto commands = command_names(app);
    const bool has_command = !app.get_subcommands().empty();
    if (argc < 2) return "no command given; commands are " + join(commands, ", ");
    const std::string first = argv[1];
    if (!has_command && !first.starts_with('-')) {
        const std::string meant = did_you_mean(first, commands);
        return "unknown command \"" + first + "\"" + (meant.empty() ? "; commands are " + join(commands, ", ") : "; " + meant);
    }
    for (int i = 1; i < argc; ++i) {
        const std::string word = std::string(argv[i]).substr(0, std::string(argv[i]).find('='));
        const auto names = option_names(app);
        if (!word.starts_with("--") || std::find(names.begin(), names.end(), word) != names.end()) continue;
        const std::string meant = did_you_mean(word, names);
        return "unknown option \"" + word + "\"" + (meant.empty() ? "" : "; " + meant);
    }
    return error.what();
}

Options with_terminal(const CLI::App& app, WireOptions wire, CheckOptions check, SizeOptions size, SheetOptions sheet,
                      const Terminal& terminal) {
    wire.width = check.width = size.width = terminal.width;
    size.progress = terminal.errors_seen && !size.json;
    const std::string name = app.get_subcommands().front()->get_name();
    if (name == "wire") return wire;
    if (name == "check") return check;
    if (name == "size") return size;
    return sheet;
}

}  // namespace

Arguments parse_arguments(int argc, const char* const* argv, const Terminal& terminal, std::ostream& out, std::ostream& err) {
    WireOptions wire;
    CheckOptions check;
    SizeOptions size;
    SheetOptions sheet;
    CLI::App app(kAbout, "seatload");
    app.set_version_flag("--version", kVersion);
    app.require_subcommand(1);
    app.get_formatter()->column_width(28);
    add_size(app, size);
    add_check(app, check);
    add_wire(app, wire);
    add_sheet(app, sheet);
    try {
        app.parse(argc, argv);
    } catch (const CLI::Success& success) {
        app.exit(success, out, err);
        return {std::nullopt, 0};
    } catch (const CLI::ParseError& error) {
        err << "seatload: " << explanation(app, argc, argv, error) << "\n    \"seatload --help\" lists the commands\n";
        return {std::nullopt, kUsage};
    }
    return {with_terminal(app, wire, check, size, sheet, terminal), 0};
}

}  // namespace seatload::cli
