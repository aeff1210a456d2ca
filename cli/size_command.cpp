// SPDX-License-Identifier: MIT
#include <cli/size_command.hpp>

#include <nlohmann/json.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/sheet/what_if_sheet.hpp>

#include <cli/budget_view.hpp>
#include <cli/papers.hpp>
#include <cli/progress_bar.hpp>
#include <cli/session.hpp>
#include <cli/size_family.hpp>
#include <cli/size_next.hpp>
#include <cli/size_run.hpp>
#include <cli/size_what_if.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

/// Says why no spring was looked for.
void tell_contradiction(const demand::Budget& budget, const SizeOptions& options, std::ostream& out) {
    if (options.json)
        out << contradicted_json(options.requirements.front(), budget).dump(2) << '\n';
    else
        out << wrapped("", options.requirements.front() + ": no spring can do what its plunger asks.", options.width, 2)
            << contradictions_text(budget, options.width) << contradicted_next(options.requirements.front(), options);
}

/// Writes the picture of a what-if, when something fits and papers are wanted; its path, or what went wrong.
Result<std::filesystem::path> write_what_if(const WhatIfView& view, const References& refs,
                                            const SizeOptions& options) {
    const std::filesystem::path path =
        std::filesystem::path(options.output) / (paper_stem(view.requirement) + "-what-if.pdf");
    auto bytes = sheet::what_if_sheet_pdf({view.requirement, view.question, view.rows, refs.english, refs.paper.size});
    if (!bytes) return placed(bytes.error(), view.file);
    if (const Diagnostics wrong = write_papers(options.output, {{path, std::move(bytes).value()}}); has_error(wrong))
        return wrong;
    return path;
}

/// What to do with an answer that names a value that serves.
std::string what_if_next(const SizeOptions& options, bool any_fits) {
    if (!any_fits) return {};
    return '\n' + next_text("state the value that serves in the requirement, and " +
                                TypedCommand("size").name(options.requirements.front()).text() +
                                " finds its springs and writes their papers.",
                            options.width);
}

/// Tells what fits at other values of one number, and draws it; writes no other papers.
int answer_what_if(const demand::Requirement& requirement, const References& refs, const SizeOptions& options,
                   std::ostream& out, std::ostream& err) {
    const auto question = sizing::read_what_if(options.what_if, requirement);
    if (!question) return refuse(question.error(), err);
    std::vector<sizing::WhatIfRow> rows;
    {
        sizing::SearchOptions how = search_options(options);
        ProgressBar bar(err);
        if (options.progress) how.progress = [&](double share) { bar.show(share); };
        rows = sizing::what_if(requirement, *question, {refs.wires, refs.tolerances, how});
    }
    const WhatIfView view{options.requirements.front(), requirement, *question, rows};
    std::string written;
    if (options.papers && sizing::lets_in_any(rows)) {
        const auto path = write_what_if(view, refs, options);
        if (!path) return refuse(path.error(), err);
        written = "\nPaper written:\n  " + path->string() + '\n';
    }
    if (options.json)
        out << what_if_json(view).dump(2) << '\n';
    else
        out << what_if_text(view, options.width) << written << what_if_next(options, sizing::lets_in_any(rows));
    return sizing::lets_in_any(rows) ? kDone : kNothingFits;
}

}  // namespace

int run_size(const SizeOptions& options, std::ostream& out, std::ostream& err) {
    if (options.requirements.size() > 1) return run_size_family(options, out, err);
    const auto references = load_references(options.wire_file, options.look, options.maker_file);
    if (!references) return refuse(references.error(), err);
    const auto requirement =
        read_file(options.requirements.front(), [&](std::string_view text, const std::string& name) {
            return io::read_requirement(text, name, references->wires, references->makers);
        });
    if (!requirement) return refuse(requirement.error(), err);

    if (const auto contradicted = contradicted_plunger(*requirement)) {
        complain(requirement.error(), err);
        tell_contradiction(*contradicted, options, out);
        return kNothingFits;
    }
    if (!options.what_if.empty()) {
        complain(requirement.error(), err);
        return answer_what_if(*requirement, *references, options, out, err);
    }
    SizeRun run = size_one(options.requirements.front(), *requirement, *references, options, err);
    const std::string stem = paper_stem(*requirement);
    std::vector<Paper> papers;
    Diagnostics said = requirement.error();
    if (options.papers && !run.offers.empty()) papers = size_papers(run, stem, *references, options, said);
    complain(said, err);
    if (has_error(said)) return kBadInput;
    if (!papers.empty())
        if (const Diagnostics wrong = write_papers(options.output, papers); !wrong.empty()) return refuse(wrong, err);

    explain(run, *references, options);
    if (options.json) {
        out << size_json(run.view()).dump(2) << '\n';
    } else {
        const auto stale =
            options.papers ? stale_papers(options.output, stem, papers) : std::vector<std::filesystem::path>{};
        out << size_text(run.view(), run.seconds, options.width) << papers_text(papers, stale, options);
        if (papers.empty()) out << size_next(run, options);
    }
    return run.offers.empty() ? kNothingFits : kDone;
}

}  // namespace seatload::cli
