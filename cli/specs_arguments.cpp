// SPDX-License-Identifier: MIT
#include <cli/specs_arguments.hpp>

#include <CLI/CLI.hpp>

#include <cli/number_argument.hpp>

namespace seatload::cli {
namespace {

CLI::App& add_action(CLI::App& specs, SpecsOptions& o, const std::string& name, const std::string& about) {
    CLI::App& action = *specs.add_subcommand(name, about);
    action.group("Commands");
    action.fallthrough();  // --library and the like may stand behind the action
    action.footer("Options of \"seatload specs\" may follow too: --library, --threads,\n--json, --wire-file.\n\n" +
                  specs.get_footer());
    action.callback([&o, name] { o.action = name; });
    return action;
}

void add_spec(CLI::App& c, SpecsOptions& o) {
    c.add_option("SPEC", o.specs, "engine/position, its path, or the part number")->required()->expected(1);
}

void add_revision(CLI::App& c, SpecsOptions& o) {
    c.add_option("--revision", o.revision, "an earlier revision, by its index")->option_text("INDEX");
}

void add_who_and_when(CLI::App& c, StepOptions& o) {
    c.add_option("--by", o.by, "who answers for it")->option_text("NAME");
    c.add_option("--date", o.date, "when, as 2026-11-25; the clock is not asked")->option_text("DATE");
    c.add_option("--note", o.note, "anything else worth keeping")->option_text("WORDS");
}

void add_evidence(CLI::App& c, StepOptions& o) {
    c.add_option("--lot", o.lots, "record of a lot, from seatload inspect")
        ->option_text("FILE")
        ->expected(1)
        ->take_all();
    c.add_option("--keep", o.files, "other evidence: readings, a reply")->option_text("FILE")->expected(1)->take_all();
    c.add_option("--hours", o.hours, "time in a trial engine [h]")->option_text("HOURS")->check(number(0.0, 1e6));
}

void add_filter(CLI::App& c, SpecsFilter& o) {
    c.add_option("--engine", o.engine, "only engines with this in their name")->option_text("WORDS");
    c.add_option("--position", o.position, "only positions with this in their name")->option_text("WORDS");
    c.add_option("--state", o.state, "draft, trial, approved, superseded, withdrawn")->option_text("STATE");
    c.add_flag("--all", o.all, "earlier revisions, and all states");
}

void add_looks(CLI::App& specs, SpecsOptions& o) {
    CLI::App& list = add_action(specs, o, "list", "list the specs kept, by engine and position");
    add_filter(list, o.filter);
    CLI::App& show = add_action(specs, o, "show", "show a spec, its states and evidence");
    add_spec(show, o);
    add_revision(show, o);
    CLI::App& diff = add_action(specs, o, "diff", "show what a revision changed, and what it brings");
    add_spec(diff, o);
    add_revision(diff, o);
    diff.add_option("--with", o.with, "compare with this spec or file instead")->option_text("SPEC");
    CLI::App& verify = add_action(specs, o, "verify", "see that nothing was changed, and reckon anew");
    verify.add_option("SPEC", o.specs, "those to be verified; else all");
    add_filter(verify, o.filter);
}

void add_find(CLI::App& specs, SpecsOptions& o) {
    CLI::App& c = add_action(specs, o, "find", "find kept springs by load, length and room");
    FindOptions& f = o.find;
    c.add_option("--requirement,-r", f.requirement, "judge all by a requirement")->option_text("FILE");
    c.add_option("--gives", f.gives, "a load: \"5 N .. 6 N\", \"at least 5 N\"")
        ->option_text("LOAD")
        ->expected(1)
        ->take_all();
    c.add_option("--at", f.at, "the length it is given at: \"18 mm\"")->option_text("LENGTH")->expected(1)->take_all();
    c.add_option("--bore", f.bore, "it must work in: \"9 mm\"")->option_text("LENGTH");
    c.add_option("--rod", f.rod, "it must work over: \"5 mm\"")->option_text("LENGTH");
    c.add_option("--temperature", f.temperature, "least loads are wanted hot: \"120 °C\"")->option_text("HEAT");
    c.add_option("--wire", f.wire, "only grades with this in their name")->option_text("GRADE");
    c.add_option("--wire-diameter", f.wire_diameter, "only d of: \"0.6 mm .. 0.8 mm\"")->option_text("LENGTH");
    c.add_option("--outside", f.outside_diameter, "only De of: \"at most 9 mm\"")->option_text("LENGTH");
    c.add_option("--free-length", f.free_length, "only L0 of: \"18 mm .. 22 mm\"")->option_text("LENGTH");
    add_filter(c, o.filter);
}

void add_steps(CLI::App& specs, SpecsOptions& o) {
    CLI::App& add = add_action(specs, o, "add", "take a spec in, as a draft");
    add.add_option("FILE", o.specs, "spec file, as size writes it")->required()->expected(1);
    add_who_and_when(add, o.step);
    add_evidence(add, o.step);
    CLI::App& trial = add_action(specs, o, "trial", "freeze a draft, for springs to be tried");
    CLI::App& approve = add_action(specs, o, "approve", "approve a spec on the evidence of a lot");
    approve.add_option("--without-inspection", o.step.without_inspection, "why it needs no accepted lot")
        ->option_text("WORDS");
    CLI::App& evidence = add_action(specs, o, "evidence", "keep what more is known of a spec");
    CLI::App& withdraw = add_action(specs, o, "withdraw", "withdraw a spec from use");
    withdraw.add_option("--reason", o.step.reason, "why")->option_text("WORDS");
    for (CLI::App* action : {&trial, &approve, &evidence, &withdraw}) {
        add_spec(*action, o);
        add_who_and_when(*action, o.step);
        add_evidence(*action, o.step);
    }
    for (CLI::App* action : {&evidence, &withdraw}) add_revision(*action, o);
    CLI::App& revise = add_action(specs, o, "revise", "make a draft of a new revision");
    add_spec(revise, o);
    revise.add_option("--with", o.with, "spec file with the new contents; else those kept")->option_text("FILE");
    revise.add_option("--reason", o.step.reason, "what is changed and why")->option_text("WORDS");
    revise.add_option("--as", o.as, "index of the revision; else the next one")->option_text("INDEX");
    add_who_and_when(revise, o.step);
    add_evidence(revise, o.step);
}

void add_order(CLI::App& specs, SpecsOptions& o) {
    CLI::App& c = add_action(specs, o, "order", "write the papers to order a spec with, again");
    add_spec(c, o);
    add_revision(c, o);
    c.add_option("--quantity", o.quantity, "pieces; else left open")
        ->option_text("PIECES")
        ->check(whole_number(1, 10'000'000));
    c.add_option("--number", o.order_number, "number of the order; else left open")->option_text("WORDS");
    c.add_option("--date", o.step.date, "date of the order; else left open")->option_text("DATE");
    c.add_option("--output,-o", o.output, "folder for the papers (default: output)")->option_text("FOLDER");
}

}  // namespace

void add_specs_actions(CLI::App& specs, SpecsOptions& o) {
    add_looks(specs, o);
    add_find(specs, o);
    add_steps(specs, o);
    add_order(specs, o);
    specs.require_subcommand(1);
    specs.add_option("--library", o.library, "folder of the library (default: specs)")->option_text("FOLDER");
    specs.add_option("--threads", o.threads, "threads to work with; the answer is the same")
        ->check(whole_number(1, 1024))
        ->option_text("1..1024");
    specs.add_flag("--json", o.json, "write JSON: list, show, diff, find, verify");
}

}  // namespace seatload::cli
