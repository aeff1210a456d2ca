// SPDX-License-Identifier: MIT
#include <algorithm>

#include <seatload/check/evaluation.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/record/approval.hpp>
#include <seatload/record/specify.hpp>

#include <cli/specs_actions.hpp>
#include <cli/specs_evidence.hpp>
#include <cli/specs_shelves.hpp>
#include <cli/specs_write.hpp>

namespace seatload::cli {
namespace {

using record::State;
using record::Step;

/// What came of a step, or why it was refused.
struct Taken {
    Diagnostics wrong;
    std::vector<record::Refusal> refused;
    record::Address address;
    std::string index;
    std::string file;
    State state = State::draft;
    std::vector<std::string> conditions;  ///< of the approval
    std::string next;                     ///< what may be done now
    Diagnostics said;                     ///< what is to be known of it all the same
};

Step::Kind kind_of(const std::string& action) {
    if (action == "trial") return Step::Kind::trial;
    if (action == "approve") return Step::Kind::approved;
    return action == "withdraw" ? Step::Kind::withdrawn : Step::Kind::evidence;
}

/// Why a revision cannot come to a state from where it is.
Diagnostics not_from_here(const SpecsOptions& options, const OnShelf& on, Step::Kind kind) {
    const State state = on.revision().state;
    const std::string is =
        "revision " + on.revision().index() + " is " + (state == State::trial ? "on " : "") + std::string(word(state));
    const auto no = [&](std::string message, std::string hint) {
        return Diagnostics{error_in(on.revision().file, "cannot-follow"_id, std::move(message), std::move(hint))};
    };
    const auto command = [&](const std::string& action, const std::string& open) {
        return specs_command(options, action).name(on.shelf.address.text()).open(open).text();
    };
    const std::string revise =
        command("revise", "--reason WORDS --by NAME --date DATE") + " makes a draft of a new revision";
    const bool open = state == State::draft || state == State::trial;
    if (kind == Step::Kind::trial && state != State::draft) return no(is + ": only a draft goes on trial", revise);
    if (kind == Step::Kind::approved && !open)
        return no(is + ": only a draft or one on trial can be approved",
                  state == State::approved ? "results of further lots are kept with " +
                                                 command("evidence", "--lot FILE --by NAME --date DATE")
                                           : revise);
    if (kind != Step::Kind::trial && kind != Step::Kind::approved && state == State::withdrawn)
        return no(is + ": nothing more is written of it", revise);
    return {};
}

Diagnostics nothing_said(const OnShelf& on, Step::Kind kind, const StepOptions& o) {
    if (kind == Step::Kind::withdrawn && trim(o.reason).empty())
        return {error_in(on.revision().file, "no-reason"_id, "it is not said why it is withdrawn",
                         "say it with --reason WORDS")};
    if (kind == Step::Kind::evidence && o.lots.empty() && o.files.empty() && !o.hours && trim(o.note).empty())
        return {error_in(on.revision().file, "absent-evidence"_id, "no evidence is given",
                         "give it with --lot FILE, --keep FILE, --hours HOURS or --note WORDS")};
    return {};
}

/// What would let a refused approval be given.
std::string next_when_refused(const SpecsOptions& options, const OnShelf& on,
                              const std::vector<record::Refusal>& refused) {
    using Kind = record::Refusal::Kind;
    const auto is_among = [&](Kind kind) {
        return std::any_of(refused.begin(), refused.end(), [&](const auto& each) { return each.kind == kind; });
    };
    const std::string address = on.shelf.address.text();
    const std::string inspect = TypedCommand("inspect")
                                    .name(on.revision().file)
                                    .open("SAMPLES")
                                    .option("--wire-file", options.wire_file)
                                    .text();
    if (is_among(Kind::altered))
        return "put the file back as it was frozen; " + specs_command(options, "verify").name(address).text() +
               " tells what it was.";
    if (is_among(Kind::own_limit) && on.revision().state == State::draft)
        return "change the spring or the limit in " + on.revision().file + ", or " +
               specs_command(options, "withdraw").name(address).open("--reason WORDS --by NAME --date DATE").text() +
               ".";
    if (is_among(Kind::own_limit))
        return specs_command(options, "revise").name(address).open("--reason WORDS --by NAME --date DATE").text() +
               " makes a draft of a new revision, in which the spring or the limit can be changed.";
    if (is_among(Kind::rejected))
        return "have another lot made or this one reworked, inspect that with " + inspect +
               " and give its record with --lot FILE: a lot that is accepted after a rejected one counts in its place. "
               "No --without-inspection answers for a lot that was rejected.";
    if (is_among(Kind::strange_lot))
        return "inspect a lot of this very spec with " + inspect + " and give its record with --lot FILE.";
    return "inspect a lot with " + inspect +
           " and give its record with --lot FILE; what can be answered for without one is said with "
           "--without-inspection REASON.";
}

/// Judges whether it may be approved, and works out what is kept of the approval.
void judge(const io::SpecLibrary& library, const OnShelf& on, const SpecsOptions& options, const Evidence& evidence,
           const References& references, Step& step, Taken& taken) {
    const record::KeptSpec& kept = on.revision().kept;
    const wire::Grade& grade = grade_of(kept.spec, references.wires);
    const auto evaluation =
        check::evaluate(kept.spec.spring, grade, record::requirement_of(kept.spec), references.tolerances);
    if (!evaluation) {
        taken.wrong = placed(evaluation.error(), on.revision().file);
        return;
    }
    auto lots = all_lots(library, options, on.shelf.address, kept.history, evidence);
    if (!lots) {
        taken.wrong = lots.error();
        return;
    }
    const std::string whole = sha256_hex(io::write_kept_spec(kept.content, kept.history));
    const record::ApprovalGround ground{std::move(lots).value(), whole, options.step.without_inspection};
    step.conditions = record::conditions_of(kept, ground);
    taken.refused = record::approval_refusals(kept, *evaluation, ground);
    taken.next = next_when_refused(options, on, taken.refused);
    step.results = record::key_results({*evaluation, kept.spec, grade, references.tolerances}, program_name());
}

/// A lot of another part must not become evidence of this one, whatever its verdict.
Diagnostics strange_lots(const OnShelf& on, const Evidence& evidence) {
    const record::KeptSpec& kept = on.revision().kept;
    const std::string whole = sha256_hex(io::write_kept_spec(kept.content, kept.history));
    Diagnostics wrong;
    for (const EvidenceFile& file : evidence.lots) {
        const auto lot = io::read_lot(file.bytes, file.path);
        if (const std::string why = record::not_of_this_spec(*lot, kept, whole); !why.empty())
            wrong.push_back(error_in(file.path, "wrong-spring"_id, why,
                                     "give the record of a lot that was inspected by this revision"));
    }
    return wrong;
}

/// What the state lets be done, once evidence was kept.
std::string next_with_evidence(const SpecsOptions& options, const OnShelf& on) {
    const std::string listed = specs_command(options, "show")
                                   .name(on.shelf.address.text())
                                   .option("--revision", on.is_latest() ? "" : on.revision().index())
                                   .text() +
                               " shows all that is kept of it";
    const std::string next = next_command(options, on.shelf, on.revision());
    switch (on.revision().state) {
        case State::draft:
            return listed + "; " + next + " freezes it, for springs to be made and tried.";
        case State::trial:
            return listed + "; " + next + " puts it in force when a lot was inspected and is good.";
        case State::approved:
            return listed + "; " + next + " writes the papers to order it with.";
        default:
            return listed + '.';
    }
}

/// What may be done next, once the step is taken; empty when nothing more is.
std::string next_words(const SpecsOptions& options, const OnShelf& on, Step::Kind kind) {
    const std::string address = on.shelf.address.text();
    switch (kind) {
        case Step::Kind::trial:
            return order_command(options, on.shelf, on.revision()) +
                   " writes the papers of the trial springs; approve it once a lot was inspected and is good.";
        case Step::Kind::approved:
            return specs_command(options, "order").name(address).open("--quantity PIECES").text() +
                   " writes the papers to order it with.";
        case Step::Kind::withdrawn:
            return specs_command(options, "revise").name(address).open("--reason WORDS --by NAME --date DATE").text() +
                   " makes a draft to follow it.";
        default:
            return next_with_evidence(options, on);
    }
}

Taken refused(const Diagnostics& wrong) {
    Taken taken;
    taken.wrong = wrong;
    return taken;
}

Taken take_step(const SpecsOptions& options, const References& references) {
    Taken taken;
    const Step::Kind kind = kind_of(options.action);
    const auto evidence = read_evidence(options.step);
    if (!evidence) return refused(evidence.error());
    const auto library = io::SpecLibrary::open(options.library, io::SpecLibrary::For::writing);
    if (!library) return refused(library.error());
    const auto on = find_on_shelf(*library, options, references.wires, options.specs.front(), options.revision);
    if (!on) return refused(on.error());
    taken.address = on->shelf.address;
    taken.index = on->revision().index();
    taken.file = on->revision().file;
    taken.wrong = not_from_here(options, *on, kind);
    if (taken.wrong.empty()) taken.wrong = foreign_line(on->revision(), Severity::error);
    if (taken.wrong.empty()) taken.wrong = nothing_said(*on, kind, options.step);
    if (taken.wrong.empty() && (kind == Step::Kind::trial || kind == Step::Kind::approved))
        taken.wrong = not_to_be_drawn(on->revision().kept.spec, taken.file, references);
    if (taken.wrong.empty())
        taken.wrong = lots_kept_before(options, taken.address, on->revision().kept.history, *evidence);
    if (!taken.wrong.empty()) return taken;
    auto told = told_step(options.step, kind, on->revision().kept.history);
    if (!told) return refused(told.error());
    Step step = std::move(told).value();
    step.sha256 = on->revision().kept.sha256;
    if (kind == Step::Kind::approved)
        judge(*library, *on, options, *evidence, references, step, taken);
    else
        taken.wrong = strange_lots(*on, *evidence);
    if (!taken.wrong.empty() || !taken.refused.empty()) return taken;
    taken.wrong = keep_evidence(*library, taken.address, *evidence, step);
    if (taken.wrong.empty()) taken.wrong = write_step(*library, *on, step, references.wires);
    if (kind == Step::Kind::trial || kind == Step::Kind::approved)
        taken.said = doubts_on_lean(on->revision(), references);
    OnShelf now = *on;
    if (kind == Step::Kind::evidence) now.shelf.revisions[now.at].kept.history.push_back(step);
    taken.next = next_words(options, now, kind);
    taken.conditions = step.conditions;
    taken.state = kind == Step::Kind::evidence ? on->revision().state : record::state_of(record::History{step});
    return taken;
}

int tell_refusal(const SpecsOptions& options, const Taken& taken, std::ostream& out) {
    const int width = options.width;
    out << wrapped("", taken.address.text() + ", revision " + taken.index + ": not approved, because", width, 2);
    for (const record::Refusal& refusal : taken.refused) out << wrapped("  - ", refusal.why + ".", width, 4);
    out << wrapped("  Next: ", taken.next, width, 4);
    return kNothingFits;
}

}  // namespace

int run_specs_step(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const Taken taken = take_step(options, references);
    if (!taken.wrong.empty()) return refuse(taken.wrong, err);
    if (!taken.refused.empty()) return tell_refusal(options, taken, out);
    const Step::Kind kind = kind_of(options.action);
    out << taken.address.text() << ", revision " << taken.index << ": "
        << (kind == Step::Kind::evidence ? "evidence kept; still " : "") << word(taken.state) << '\n';
    if (!taken.conditions.empty())
        out << wrapped("  On condition that ",
                       join(taken.conditions, " and ") +
                           ", which was not measured: measure it on five pieces before any is fitted, and keep the "
                           "record of it as evidence.",
                       options.width, 4);
    if (!taken.next.empty()) out << wrapped("  Next: ", taken.next, options.width, 4);
    out << std::flush;
    complain(taken.said, err);
    return kDone;
}

}  // namespace seatload::cli
