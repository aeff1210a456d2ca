// SPDX-License-Identifier: MIT
#include <cli/size_command.hpp>

#include <chrono>

#include <nlohmann/json.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/report.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <seatload/sheet/what_if_sheet.hpp>

#include <cli/budget_view.hpp>
#include <cli/papers.hpp>
#include <cli/progress_bar.hpp>
#include <cli/reply_paper.hpp>
#include <cli/session.hpp>
#include <cli/size_view.hpp>
#include <cli/size_what_if.hpp>
#include <cli/spec_seal.hpp>
#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

struct Timed {
    sizing::Census census;
    double seconds = 0.0;
};

Timed timed_search(const sizing::Space& space, const References& refs, const SizeOptions& options, std::ostream& err) {
    const auto start = std::chrono::steady_clock::now();
    sizing::SearchOptions how;
    how.threads = options.threads;
    ProgressBar bar(err);
    if (options.progress) how.progress = [&](double share) { bar.show(share); };
    Timed result{sizing::search(space, refs.tolerances, how), 0.0};
    result.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    return result;
}

std::vector<Offer> make_offers(const demand::Requirement& requirement, const sizing::Space& space,
                               const sizing::Census& census, const References& refs, std::size_t count) {
    std::vector<Offer> offers;
    for (const sizing::Alternative& alternative : sizing::spread(space, census, count)) {
        const std::string letter(1, static_cast<char>('A' + static_cast<char>(offers.size())));
        record::Spec spec = record::specify(requirement, space, alternative, letter);
        const wire::Grade& grade = space.grades[space.wires[alternative.candidate.wire].grade];
        auto evaluation = check::evaluate(spec.spring, grade, requirement, refs.tolerances);
        // The search and the evaluation run the same rules on the same numbers; a difference would be a fault of ours.
        SEATLOAD_ASSERT(evaluation.has_value() && evaluation->fits());
        offers.push_back({alternative, std::move(evaluation).value(), std::move(spec)});
    }
    return offers;
}

std::string stem(const demand::Requirement& requirement) {
    return file_stem(requirement.identity.engine + ' ' + requirement.identity.position);
}

void add(Diagnostics& all, const Diagnostics& more) { all.insert(all.end(), more.begin(), more.end()); }

/// Specs, sheets, the enquiry and the calculation report, all in memory; what is said of them is added to `said`.
std::vector<Paper> make_papers(const demand::Requirement& requirement, const sizing::Space& space,
                               const sizing::Census& census, const std::vector<Offer>& offers, const References& refs,
                               const SizeOptions& options, Diagnostics& said) {
    const std::filesystem::path folder = options.output;
    std::vector<Paper> papers;
    std::vector<sheet::EnquiryAlternative> offered;
    std::vector<sheet::ReportAlternative> reckoned;
    const auto keep = [&](const std::string& name, Result<std::string> bytes) {
        add(said, placed(bytes.error(), (folder / name).string()));
        if (bytes) papers.push_back({folder / name, std::move(bytes).value()});
    };
    for (const Offer& offer : offers) {
        const wire::Grade& grade = space.grades[space.wires[offer.alternative.candidate.wire].grade];
        const std::string name = stem(requirement) + '-' + lower(offer.spec.alternative);
        const std::string copy = io::write_spec(record::makers_copy(offer.spec));
        offered.push_back({offer.spec, grade, copy});
        reckoned.push_back({offer.spec, grade});
        if (!options.overwrite) add(said, edits_in_the_way(folder / (name + ".toml")));
        keep(name + ".toml", sealed(io::write_spec(offer.spec)));
        keep(name + ".pdf", sheet::spring_sheet_pdf({offer.spec, grade, refs.tolerances, refs.paper, 1, 1, copy}));
    }
    const std::string form = stem(requirement) + "-reply.toml";
    const sheet::EnquiryLetter letter{requirement.correspondence, form,
                                      reply_form(offered, requirement.correspondence)};
    keep(stem(requirement) + "-enquiry.pdf", sheet::enquiry_pdf(offered, refs.tolerances, refs.paper, letter));
    keep(stem(requirement) + "-calculation.pdf",
         sheet::calculation_report_pdf({reckoned, refs.tolerances, refs.wires.sources, refs.english,
                                        sheet::ReportSizing{space, census}, refs.paper.size}));
    add(said, answers_in_the_way(folder / form));
    papers.push_back({folder / form, letter.form});
    return papers;
}

/// The budget of a requirement's plunger when no spring can keep it.
std::optional<demand::Budget> contradicted_plunger(const demand::Requirement& requirement) {
    if (!requirement.plunger) return std::nullopt;
    demand::Budget budget = demand::plunger_budget(*requirement.plunger);
    if (budget.is_possible()) return std::nullopt;
    return budget;
}

/// Says why no spring was looked for.
void tell_contradiction(const demand::Budget& budget, const SizeOptions& options, std::ostream& out) {
    if (options.json)
        out << contradicted_json(options.requirement, budget).dump(2) << '\n';
    else
        out << wrapped("", options.requirement + ": no spring can do what its plunger asks.", options.width, 2)
            << contradictions_text(budget, options.width);
}

/// Finds out why nothing fits.
void explain(SizeView& view, const References& refs, const SizeOptions& options) {
    sizing::SearchOptions how;
    how.threads = options.threads;
    view.held_seat = sizing::held_seat(view.requirement, refs.wires, refs.tolerances, how);
    view.shortfall = sizing::shortfall(view.requirement, {refs.wires, refs.tolerances, how});
}

/// Writes the picture of a what-if, when something fits and papers are wanted; its path, or what went wrong.
Result<std::filesystem::path> write_what_if(const WhatIfView& view, const References& refs,
                                            const SizeOptions& options) {
    const std::filesystem::path path =
        std::filesystem::path(options.output) / (stem(view.requirement) + "-what-if.pdf");
    auto bytes = sheet::what_if_sheet_pdf({view.requirement, view.question, view.rows, refs.english, refs.paper.size});
    if (!bytes) return placed(bytes.error(), view.file);
    if (const Diagnostics wrong = write_papers(options.output, {{path, std::move(bytes).value()}}); has_error(wrong))
        return wrong;
    return path;
}

/// Tells what fits at other values of one number, and draws it; writes no other papers.
int answer_what_if(const demand::Requirement& requirement, const References& refs, const SizeOptions& options,
                   std::ostream& out, std::ostream& err) {
    const auto question = sizing::read_what_if(options.what_if, requirement);
    if (!question) return refuse(question.error(), err);
    std::vector<sizing::WhatIfRow> rows;
    {
        sizing::SearchOptions how;
        how.threads = options.threads;
        ProgressBar bar(err);
        if (options.progress) how.progress = [&](double share) { bar.show(share); };
        rows = sizing::what_if(requirement, *question, {refs.wires, refs.tolerances, how});
    }
    const WhatIfView view{options.requirement, requirement, *question, rows};
    std::string written;
    if (options.papers && sizing::lets_in_any(rows)) {
        const auto path = write_what_if(view, refs, options);
        if (!path) return refuse(path.error(), err);
        written = "\nPaper written:\n  " + path->string() + '\n';
    }
    out << (options.json ? what_if_json(view).dump(2) + '\n' : what_if_text(view, options.width) + written);
    return sizing::lets_in_any(rows) ? kDone : kNothingFits;
}

}  // namespace

int run_size(const SizeOptions& options, std::ostream& out, std::ostream& err) {
    const auto references = load_references(options.wire_file, options.look);
    if (!references) return refuse(references.error(), err);
    const auto requirement = read_file(options.requirement, [&](std::string_view text, const std::string& name) {
        return io::read_requirement(text, name, references->wires);
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
    const sizing::Space space = sizing::search_space(*requirement, references->wires);
    const Timed found = timed_search(space, *references, options, err);
    const auto count =
        static_cast<std::size_t>(options.alternatives != 0 ? options.alternatives : requirement->alternatives);
    const std::vector<Offer> offers = make_offers(*requirement, space, found.census, *references, count);
    std::vector<Paper> papers;
    Diagnostics said = requirement.error();
    if (options.papers && !offers.empty())
        papers = make_papers(*requirement, space, found.census, offers, *references, options, said);
    complain(said, err);
    if (has_error(said)) return kBadInput;
    if (!papers.empty())
        if (const Diagnostics wrong = write_papers(options.output, papers); !wrong.empty()) return refuse(wrong, err);

    SizeView view{options.requirement, *requirement, space, found.census, offers, {}, {}};
    if (offers.empty()) explain(view, *references, options);
    if (options.json) {
        out << size_json(view).dump(2) << '\n';
    } else {
        out << size_text(view, found.seconds, options.width);
        if (!papers.empty()) out << "\nPapers written:\n";
        for (const Paper& paper : papers) out << "  " << paper.path.string() << '\n';
        const auto stale = options.papers ? stale_papers(options.output, stem(*requirement), papers)
                                          : std::vector<std::filesystem::path>{};
        if (!stale.empty()) out << "\nLeft there by an earlier run, not of this one:\n";
        for (const auto& path : stale) out << "  " << path.string() << '\n';
    }
    return offers.empty() ? kNothingFits : kDone;
}

}  // namespace seatload::cli
