// SPDX-License-Identifier: MIT
#include <cli/arguments.hpp>

#include <algorithm>
#include <memory>

#include <CLI/CLI.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/complaint_meaning.hpp>

#include <cli/every_command.hpp>
#include <cli/first_words.hpp>
#include <cli/number_argument.hpp>
#include <cli/session.hpp>
#include <cli/specs_arguments.hpp>
#include <cli/version_facts.hpp>

namespace seatload::cli {
namespace {

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

void add_start(CLI::App& app, StartOptions& o) {
    CLI::App& c = add_command(app, "start", "write a file to be filled in, with remarks on how");
    c.add_option("NAME", o.name, "kind of file, such as requirement; else all are listed");
    c.add_option("--output,-o", o.file, "where to write it (default: NAME.toml, here)")->option_text("FILE");
    c.add_flag("--overwrite", o.overwrite, "write over a file that is there, too");
}

void add_bench(CLI::App& app, BenchOptions& o) {
    CLI::App& c = add_command(app, "bench", "tell what springs carry, from bench readings");
    c.add_option("READINGS", o.readings, "files of readings")->required();
    c.add_option("--output,-o", o.output, "folder for what is written (default: output)")->option_text("FOLDER");
    add_wire_file(c, o.wire_file);
    c.add_flag_callback(
        "--no-papers", [&o] { o.papers = false; }, "only tell, write no files");
    c.add_flag("--overwrite", o.overwrite, "write over spring files edited by hand, too");
    c.add_flag("--details", o.details, "tell every reading, all wires that fit and where each ± comes from, too");
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
        ->check(whole_number(1, 26))
        ->option_text("1..26");
    c.add_option("--threads", o.threads, "threads to search with; the answer stays the same")
        ->check(whole_number(1, 1024))
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
        ->check(whole_number(1, 10'000'000))
        ->option_text("PIECES");
    c.add_option("--date", o.date, "the day offers are judged on: 2026-12-15")->option_text("DATE");
    c.add_option("--currency", o.currency, "compare in this currency")->option_text("CODE");
    c.add_option("--rate", o.rates, "what one unit of another is worth in it")
        ->option_text("CODE=NUMBER")
        ->expected(1)
        ->take_all();
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

/// Where more is told on a command.
std::string more_help(const CLI::App& command) {
    const std::string name = full_name(command);
    return "\"seatload " + name + (name.empty() ? "" : " ") + "--help\" tells more";
}

/// A complaint of the words typed; what may have been meant, or `otherwise`, goes before where more is told.
Diagnostic usage_error(const CLI::App& command, DiagnosticId id, const std::string& message,
                       const std::string& meant = {}, const std::string& otherwise = {}) {
    const std::string first = !meant.empty() ? meant + ' ' : !otherwise.empty() ? otherwise + "; " : "";
    return error(id, message, first + more_help(command));
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

/// The first word that looks like an option and is none, with what may have been meant.
std::optional<Diagnostic> unknown_option(const CLI::App& command, int argc, const char* const* argv) {
    const auto names = option_names(command);
    for (int i = 1; i < argc; ++i) {
        const std::string all = argv[i];
        if (all.size() < 2 || all[0] != '-') continue;
        const std::string word = all[1] == '-' ? all.substr(0, all.find('=')) : all.substr(0, 2);
        if (word == "--" || std::find(names.begin(), names.end(), word) != names.end()) continue;
        return usage_error(command, "unknown-option"_id, "unknown option \"" + word + '"',
                           word[1] == '-' ? did_you_mean(word, names) : "");
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

/// What is wrong with options and arguments that the command has; the library says it in words of its own.
Diagnostic wrong_value(const CLI::App& command, const CLI::ParseError& error) {
    const std::string said = error.what();
    const std::string name = said.substr(0, said.find_first_of(": "));
    if (dynamic_cast<const CLI::ArgumentMismatch*>(&error) != nullptr)
        return usage_error(command, "no-value"_id, name + " needs a value", {}, "write " + shown_option(command, name));
    for (const std::string& word : command.remaining())
        if (word != "--") return usage_error(command, "word-too-many"_id, '"' + word + "\" is one word too many");
    if (dynamic_cast<const CLI::RequiredError*>(&error) != nullptr)
        return usage_error(command, "missing-argument"_id, "no " + name + " is given", {}, shown_option(command, name));
    if (dynamic_cast<const CLI::RequiresError*>(&error) != nullptr)
        return usage_error(command, "unmatched-options"_id, said);
    return usage_error(command, is_beyond_bounds(said) ? "out-of-span"_id : "not-a-number"_id, said);
}

/// What is wrong with the words; the library's own message names neither the command mistyped nor the one meant.
Diagnostic explanation(const CLI::App& app, int argc, const char* const* argv, const CLI::ParseError& error) {
    const auto commands = command_names(app);
    const std::string list = "commands are " + join(commands, ", ");
    const std::string first = argv[1];
    const CLI::App& command = command_used(app);
    if (&command == &app && !first.starts_with('-'))
        return usage_error(app, "unknown-command"_id, "unknown command \"" + first + '"', did_you_mean(first, commands),
                           list);
    if (const auto unknown = unknown_option(command, argc, argv)) return *unknown;
    if (&command == &app && dynamic_cast<const CLI::RequiresError*>(&error) == nullptr)
        return usage_error(app, "missing-argument"_id, "no command given", {}, list);
    if (const auto unknown = unknown_action(command, argc, argv)) return *unknown;
    return wrong_value(command, error);
}

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

/// --version, with --json behind it or before it.
void add_version(CLI::App& app, const int& width) {
    const auto said = [&app, &width] {
        const VersionFacts facts = version_facts();
        std::string text = app.count("--json") > 0 ? version_json(facts) : version_text(facts, width);
        text.pop_back();  // CLI11 ends the line
        return text;
    };
    CLI::Option* version = app.set_version_flag("--version", said, "show the version, and which data are built in");
    app.add_flag("--json")->description("with --version: write JSON")->needs(version);
}

/// The word behind "help", without the brackets in which the name of a complaint is shown; nothing when there is none.
std::optional<std::string_view> asked_of_help(int argc, const char* const* argv) {
    if (argc != 3 || std::string_view(argv[1]) != "help") return std::nullopt;
    std::string_view name = argv[2];
    if (name.starts_with('[') && name.ends_with(']')) name = name.substr(1, name.size() - 2);
    return name;
}

/// What "help NAME" answers when the name is that of a complaint; else nothing.
std::optional<std::string> told_of_complaint(std::string_view name, int width) {
    const auto meaning = io::meaning_of_complaint(name);
    if (!meaning) return std::nullopt;
    return wrapped(std::string(name) + ": ", *meaning, width, 4);
}

/// The names of complaints that hold a word, such as "number"; none when they are many.
std::vector<std::string> complaints_with(const std::string& word, const std::vector<std::string>& names) {
    constexpr std::size_t kMost = 8;
    constexpr std::size_t kShortest = 3;  // "no" or "a" says nothing
    std::vector<std::string> found;
    for (const std::string& name : names)
        if (word.size() >= kShortest && name.find(word) != std::string::npos) found.push_back(name);
    return found.size() > kMost ? std::vector<std::string>{} : found;
}

/// What is wrong when "help NAME" names neither a command nor a complaint.
std::optional<Diagnostic> unknown_help(const CLI::App& app, const std::string& name) {
    std::vector<std::string> names = command_names(app);
    if (name.starts_with('-') || std::find(names.begin(), names.end(), name) != names.end()) return std::nullopt;
    const std::string commands = join(names, ", ");
    std::vector<std::string> complaints;
    for (const io::ComplaintMeaning& each : io::complaint_meanings()) complaints.push_back(each.id);
    names.insert(names.end(), complaints.begin(), complaints.end());
    const std::vector<std::string> alike = complaints_with(name, complaints);
    const std::string otherwise =
        alike.empty() ? "commands are " + commands + "; a complaint's name stands behind it in brackets, [bare-number]"
                      : "complaints are called " + join(alike, ", ");
    return usage_error(app, "unknown-command"_id, '"' + name + "\" is neither a command nor the name of a complaint",
                       did_you_mean(name, names), otherwise);
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

void describe_program(CLI::App& app, EveryCommand& options) {
    app.name("seatload");
    app.description(kAbout);
    const auto formatter = std::make_shared<HelpFormatter>();
    formatter->column_width(kHelpColumn);
    formatter->label("Positionals", "Arguments");
    formatter->label("OPTIONS", "options");
    formatter->label("SUBCOMMAND", "command");
    app.formatter(formatter);
    app.set_help_flag("--help,-h", "show this help");
    add_version(app, options.version_width);
    app.footer(kExitCodes);
    app.require_subcommand(1);
    add_start(app, options.start);
    add_bench(app, options.bench);
    add_budget(app, options.budget);
    add_size(app, options.size);
    add_check(app, options.check);
    add_wire(app, options.wire);
    add_sheet(app, options.sheet);
    add_report(app, options.report);
    add_reply(app, options.reply);
    add_quotes(app, options.quotes);
    add_inspect(app, options.inspect);
    add_specs(app, options.specs);
}

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
        complain({explanation(app, count, words.data(), error)}, err);
        return {std::nullopt, kBadInput};
    }
    return {with_terminal(app, std::move(options), terminal), 0};
}

}  // namespace seatload::cli
