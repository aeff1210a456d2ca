// SPDX-License-Identifier: MIT
#include <cli/arguments.hpp>

#include <algorithm>
#include <memory>

#include <CLI/CLI.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>

#include <cli/specs_arguments.hpp>

namespace seatload::cli {
namespace {

constexpr const char* kVersion = "seatload " SEATLOAD_VERSION;
constexpr int kUsage = 2;
constexpr std::size_t kHelpColumn = 28;  // leaves the words on an option 52 columns of 80

constexpr const char* kAbout =
    "Works out, from the space and the loads a mechanism leaves, every compression\n"
    "spring that can be wound for it, and writes the papers to order it with.\n";
constexpr const char* kExitCodes =
    "Exit codes: 0 done; 1 nothing fits, or a limit is broken; 2 wrong input;\n"
    "3 a fault of the program.";

/// Help without the library's words on types, which say nothing to a reader.
class HelpFormatter : public CLI::Formatter {
  public:
    std::string make_option_opts(const CLI::Option* option) const override {
        return option->get_option_text().empty() ? "" : ' ' + option->get_option_text();
    }
};

CLI::App& add_command(CLI::App& app, const std::string& name, const std::string& about) {
    CLI::App& command = *app.add_subcommand(name, about);
    command.group("Commands");
    return command;
}

void add_wire_file(CLI::App& command, std::string& file) {
    command.add_option("--wire-file", file, "wire file of your own, laid over the built-in grades")
        ->option_text("FILE");
}

void add_maker_file(CLI::App& command, std::string& file) {
    command.add_option("--maker-file", file, "limits of a spring maker of your own")->option_text("FILE");
}

void add_look(CLI::App& command, PaperOptions& o) {
    command.add_option("--language", o.language, "language of the papers: en (default), de, it")->option_text("CODE");
    command.add_option("--wording", o.wording, "wording file of your own, for another language")->option_text("FILE");
    command.add_option("--units", o.units, "metric (default), or inch with metric beside it")->option_text("NAME");
    command.add_option("--paper", o.size, "paper size: a4 (default) or letter")->option_text("NAME");
    command.add_flag("--portrait", o.portrait, "sheets stand on their short side");
}

void add_bench(CLI::App& app, BenchOptions& o) {
    CLI::App& c = add_command(app, "bench", "tell what springs carry, from bench readings");
    c.add_option("READINGS", o.readings, "files of readings")->required();
    c.add_option("--output,-o", o.output, "folder for what is written (default: output)")->option_text("FOLDER");
    add_wire_file(c, o.wire_file);
    c.add_flag_callback(
        "--no-papers", [&o] { o.papers = false; }, "only tell, write no files");
    c.add_flag("--overwrite", o.overwrite, "write over spring files edited by hand, too");
    c.add_flag("--json", o.json, "write JSON: an array, one object a file");
}

void add_inspect(CLI::App& app, InspectOptions& o) {
    CLI::App& c = add_command(app, "inspect", "judge a lot by samples measured of it");
    c.add_option("SPEC", o.spec, "spec the lot was made to")->required();
    c.add_option("SAMPLES", o.samples, "file of what was measured")->required();
    c.add_option("--output,-o", o.output, "folder for what is written (default: output)")->option_text("FOLDER");
    add_wire_file(c, o.wire_file);
    c.add_flag_callback(
        "--no-papers", [&o] { o.papers = false; }, "only tell, write no files");
    c.add_flag("--overwrite", o.overwrite, "write over a record edited by hand, too");
    c.add_flag("--json", o.json, "write JSON");
}

void add_wire(CLI::App& app, WireOptions& o) {
    CLI::App& c = add_command(app, "wire", "list the wire grades, or show one");
    c.add_option("GRADE", o.grade, "grade to show, such as ASTM-A401; else all are listed");
    c.add_option("--series", o.series, "series of stock sizes to show (default: metric)")->option_text("NAME");
    c.add_option("--diameter", o.diameter, "show the strength at one diameter: \"0.80 mm\"")->option_text("LENGTH");
    add_wire_file(c, o.file);
    c.add_flag("--json", o.json, "write JSON");
}

void add_check(CLI::App& app, CheckOptions& o) {
    CLI::App& c = add_command(app, "check", "evaluate springs in full, alone or by a requirement");
    c.add_option("FILE", o.springs, "spring or spec files")->required();
    c.add_option("--requirement,-r", o.requirement, "requirement to judge them by")->option_text("FILE");
    add_wire_file(c, o.wire_file);
    add_maker_file(c, o.maker_file);
    c.add_flag("--json", o.json, "write JSON: an array, one object a file");
}

void add_budget(CLI::App& app, BudgetOptions& o) {
    CLI::App& c = add_command(app, "budget", "work out the loads a plunger leaves its spring");
    c.add_option("PLUNGER", o.plunger, "plunger file, or a requirement with a [plunger]")->required();
    c.add_option("--spring", o.spring, "spring file, as bench writes it: is it enough?")->option_text("FILE");
    c.add_option("--output,-o", o.output, "folder for what is written; none: only tell")->option_text("FOLDER");
    c.add_flag("--overwrite", o.overwrite, "write over a requirement edited by hand, too");
    c.add_flag("--json", o.json, "write JSON");
}

void add_size(CLI::App& app, SizeOptions& o) {
    CLI::App& c = add_command(app, "size", "find every spring that fits, and write the papers");
    c.add_option("REQUIREMENT", o.requirements, "requirement files; with several: what serves all")->required();
    c.add_option("--output,-o", o.output, "folder for the papers (default: output)")->option_text("FOLDER");
    c.add_option("--alternatives,-n", o.alternatives, "how many springs to offer")
        ->check(CLI::Range(1, 26))
        ->option_text("1..26");
    c.add_option("--threads", o.threads, "threads to search with; the answer stays the same")
        ->check(CLI::Range(1, 1024))
        ->option_text("1..1024");
    c.add_option("--what-if", o.what_if, "only tell what fits as one number varies")->option_text("NAME=FROM..TO");
    add_wire_file(c, o.wire_file);
    add_maker_file(c, o.maker_file);
    add_look(c, o.look);
    c.add_flag_callback(
        "--no-papers", [&o] { o.papers = false; }, "only count and list, write no files");
    c.add_flag("--overwrite", o.overwrite, "write over specs that were edited by hand, too");
    c.add_flag("--json", o.json, "write JSON");
}

void add_sheet(CLI::App& app, SheetOptions& o) {
    CLI::App& c = add_command(app, "sheet", "draw the sheets of specs, or take specs out again");
    c.add_option("FILE", o.files, "spec files; with --extract, PDFs")->required();
    c.add_flag("--extract", o.extract, "take specs out of PDFs, not other files in them");
    c.add_option("--output,-o", o.output, "folder for what is written (default: output)")->option_text("FOLDER");
    add_wire_file(c, o.wire_file);
    add_look(c, o.look);
}

void add_reply(CLI::App& app, ReplyOptions& o) {
    CLI::App& c = add_command(app, "reply", "show what makers offer, from forms they filled in");
    c.add_option("FILE", o.replies, "reply files")->required();
    c.add_flag("--json", o.json, "write JSON: an array, one object a file");
}

void add_quotes(CLI::App& app, QuotesOptions& o) {
    CLI::App& c = add_command(app, "quotes", "judge and rank what makers offer for an enquiry");
    c.add_option("ENQUIRY", o.enquiry, "the enquiry's PDF, or the blank form beside it")->required();
    c.add_option("REPLY", o.replies, "reply files")->required();
    c.add_option("--need", o.need, "pieces needed (default: the smallest lot)")
        ->check(CLI::Range(1, 10'000'000))
        ->option_text("PIECES");
    c.add_option("--date", o.date, "the day offers are judged on: 2026-12-15")->option_text("DATE");
    c.add_option("--currency", o.currency, "compare in this currency")->option_text("CODE");
    c.add_option("--rate", o.rates, "what one unit of another is worth in it")->option_text("CODE=NUMBER")->expected(1);
    c.add_flag("--tax-back", o.reclaims_tax, "leave out tax, which is got back");
    c.add_option("--choose", o.choose, "write the spec of this offer, as a draft")->option_text("MAKER/ALTERNATIVE");
    c.add_option("--output,-o", o.output, "folder for what is written (default: output)")->option_text("FOLDER");
    add_wire_file(c, o.wire_file);
    c.add_option("--paper", o.look.size, "paper size: a4 (default) or letter")->option_text("NAME");
    c.add_flag_callback(
        "--no-papers", [&o] { o.papers = false; }, "write no report; a chosen spec is written");
    c.add_flag("--overwrite", o.overwrite, "write over a spec edited by hand, too");
    c.add_flag("--json", o.json, "write JSON");
}

void add_report(CLI::App& app, ReportOptions& o) {
    CLI::App& c = add_command(app, "report", "write the calculation of specs, for ourselves");
    c.add_option("SPEC", o.specs, "spec files")->required();
    c.add_option("--output,-o", o.output, "folder for the PDFs (default: output)")->option_text("FOLDER");
    add_wire_file(c, o.wire_file);
}

void add_specs(CLI::App& app, SpecsOptions& o) {
    CLI::App& c = add_command(app, "specs", "keep approved specs by engine, find and order them");
    add_specs_actions(c, o);
    add_wire_file(c, o.wire_file);
    for (CLI::App* action : c.get_subcommands([](const CLI::App* a) { return a->get_name() == "order"; }))
        add_look(*action, o.look);
}

std::vector<std::string> command_names(const CLI::App& app) {
    std::vector<std::string> names;
    for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; }))
        names.push_back(command->get_name());
    return names;
}

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

/// What is wrong with the words behind a command that has actions, when they name none; else empty.
std::string unknown_action(const CLI::App& command, int argc, const char* const* argv) {
    const auto actions = command_names(command);
    if (command.get_parent() == nullptr || actions.empty()) return {};
    const std::string list = "it can " + join(actions, ", ");
    const std::string name = full_name(command);
    if (argc < 3 || argv[2][0] == '-') return "\"seatload " + name + "\" needs to know what to do; " + list;
    const std::string meant = did_you_mean(argv[2], actions);
    return "\"seatload " + name + "\" cannot \"" + argv[2] + "\"; " + (meant.empty() ? list : meant);
}

/// The first word that looks like an option and is none, with what may have been meant; empty when there is none.
std::string unknown_option(const CLI::App& command, int argc, const char* const* argv) {
    const auto names = option_names(command);
    for (int i = 1; i < argc; ++i) {
        const std::string all = argv[i];
        if (all.size() < 2 || all[0] != '-') continue;
        const std::string word = all[1] == '-' ? all.substr(0, all.find('=')) : all.substr(0, 2);
        if (word == "--" || std::find(names.begin(), names.end(), word) != names.end()) continue;
        const std::string meant = word[1] == '-' ? did_you_mean(word, names) : "";
        return "unknown option \"" + word + '"' + (meant.empty() ? "" : "; " + meant);
    }
    return {};
}

/// What is wrong with the words; the library's own names neither the command mistyped nor the one meant.
std::string explanation(const CLI::App& app, int argc, const char* const* argv, const CLI::ParseError& error) {
    const auto commands = command_names(app);
    const std::string list = "commands are " + join(commands, ", ");
    if (argc < 2) return "no command given; " + list;
    const std::string first = argv[1];
    const CLI::App& command = command_used(app);
    if (&command == &app && !first.starts_with('-')) {
        const std::string meant = did_you_mean(first, commands);
        return "unknown command \"" + first + "\"; " + (meant.empty() ? list : meant);
    }
    if (const std::string unknown = unknown_option(command, argc, argv); !unknown.empty()) return unknown;
    if (&command == &app) return "no command given; " + list;
    if (const std::string unknown = unknown_action(command, argc, argv); !unknown.empty()) return unknown;
    const std::string said = error.what();
    if (dynamic_cast<const CLI::ArgumentMismatch*>(&error) != nullptr)
        return said.substr(0, said.find(':')) + " needs a value";
    for (const std::string& word : command.remaining())
        if (word != "--") return '"' + word + "\" is one word too many";
    return said;
}

std::string help_hint(const CLI::App& app) {
    const CLI::App& command = command_used(app);
    if (&command == &app) return "    \"seatload --help\" tells more\n";
    return "    \"seatload " + full_name(command) + " --help\" tells more\n";
}

Options with_terminal(const CLI::App& app, WireOptions wire, CheckOptions check, SizeOptions size, SheetOptions sheet,
                      ReplyOptions reply, ReportOptions report, BudgetOptions budget, BenchOptions bench,
                      InspectOptions inspect, SpecsOptions specs, QuotesOptions quotes, const Terminal& terminal) {
    wire.width = check.width = size.width = reply.width = budget.width = bench.width = inspect.width = terminal.width;
    specs.width = terminal.width;
    quotes.width = terminal.width;
    size.progress = terminal.errors_seen && !size.json;
    const std::string name = app.get_subcommands().front()->get_name();
    if (name == "wire") return wire;
    if (name == "check") return check;
    if (name == "size") return size;
    if (name == "bench") return bench;
    if (name == "inspect") return inspect;
    if (name == "budget") return budget;
    if (name == "report") return report;
    if (name == "reply") return reply;
    if (name == "quotes") return quotes;
    if (name == "specs") return specs;
    return sheet;
}

/// The words given, "help size" turned into "size --help"; what is no command stays to be complained of.
std::vector<const char*> with_help(const CLI::App& app, int argc, const char* const* argv) {
    std::vector<const char*> words(argv, argv + argc);
    if (argc < 2 || std::string_view(words[1]) != "help") return words;
    words.erase(words.begin() + 1);
    const auto commands = command_names(app);
    if (argc == 2 || std::find(commands.begin(), commands.end(), words[1]) != commands.end()) words.push_back("--help");
    return words;
}

}  // namespace

Arguments parse_arguments(int argc, const char* const* argv, const Terminal& terminal, std::ostream& out,
                          std::ostream& err) {
    WireOptions wire;
    CheckOptions check;
    SizeOptions size;
    SheetOptions sheet;
    ReportOptions report;
    ReplyOptions reply;
    QuotesOptions quotes;
    BudgetOptions budget;
    BenchOptions bench;
    InspectOptions inspect;
    SpecsOptions specs;
    CLI::App app(kAbout, "seatload");
    const auto formatter = std::make_shared<HelpFormatter>();
    formatter->column_width(kHelpColumn);
    formatter->label("Positionals", "Arguments");
    formatter->label("OPTIONS", "options");
    formatter->label("SUBCOMMAND", "command");
    app.formatter(formatter);
    app.set_help_flag("--help,-h", "show this help");
    app.set_version_flag("--version", kVersion, "show the version");
    app.footer(kExitCodes);
    app.require_subcommand(1);
    add_bench(app, bench);
    add_budget(app, budget);
    add_size(app, size);
    add_check(app, check);
    add_wire(app, wire);
    add_sheet(app, sheet);
    add_report(app, report);
    add_reply(app, reply);
    add_quotes(app, quotes);
    add_inspect(app, inspect);
    add_specs(app, specs);
    const std::vector<const char*> words = with_help(app, argc, argv);
    const int count = static_cast<int>(words.size());
    try {
        app.parse(count, words.data());
    } catch (const CLI::Success& success) {
        app.exit(success, out, err);
        return {std::nullopt, 0};
    } catch (const CLI::ParseError& error) {
        err << wrapped("seatload: ", explanation(app, count, words.data(), error), terminal.error_width, 4)
            << help_hint(app);
        return {std::nullopt, kUsage};
    }
    return {
        with_terminal(app, wire, check, size, sheet, reply, report, budget, bench, inspect, specs, quotes, terminal),
        0};
}

}  // namespace seatload::cli
