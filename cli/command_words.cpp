// SPDX-License-Identifier: MIT
#include <memory>
#include <string>

#include <CLI/CLI.hpp>

#include <cli/every_command.hpp>
#include <cli/number_argument.hpp>
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

void add_output(CLI::App& command, std::string& folder) {
    command.add_option("--output,-o", folder, "folder for what is written (default: output)")->option_text("FOLDER");
}

void add_no_papers(CLI::App& command, bool& papers, const std::string& words) {
    command.add_flag_callback(
        "--no-papers", [&papers] { papers = false; }, words);
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
    add_output(c, o.output);
    add_wire_file(c, o.wire_file);
    add_no_papers(c, o.papers, "only tell, write no files");
    c.add_flag("--overwrite", o.overwrite, "write over spring files edited by hand, too");
    c.add_flag("--details", o.details, "tell every reading and where each ± comes from, too");
    c.add_flag("--json", o.json, "write JSON: an array, one object a file");
}

void add_inspect(CLI::App& app, InspectOptions& o) {
    CLI::App& c = add_command(app, "inspect", "judge a lot by samples measured of it");
    c.add_option("SPEC", o.spec, "spec the lot was made to")->required();
    c.add_option("SAMPLES", o.samples, "file of what was measured")->required();
    add_output(c, o.output);
    add_wire_file(c, o.wire_file);
    add_no_papers(c, o.papers, "only tell, write no files");
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
    add_no_papers(c, o.papers, "only count and list, write no files");
    c.add_flag("--overwrite", o.overwrite, "write over specs that were edited by hand, too");
    c.add_flag("--json", o.json, "write JSON");
}

void add_sheet(CLI::App& app, SheetOptions& o) {
    CLI::App& c = add_command(app, "sheet", "draw the sheets of specs, or take specs out again");
    c.add_option("FILE", o.files, "spec files; with --extract, PDFs")->required();
    c.add_flag("--extract", o.extract, "take specs out of PDFs, not other files in them");
    add_output(c, o.output);
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
    add_output(c, o.output);
    add_wire_file(c, o.wire_file);
    c.add_option("--paper", o.look.size, "paper size: a4 (default) or letter")->option_text("NAME");
    add_no_papers(c, o.papers, "write no report; a chosen spec is written");
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

}  // namespace seatload::cli
