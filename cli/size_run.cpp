// SPDX-License-Identifier: MIT
#include <cli/size_run.hpp>

#include <algorithm>
#include <chrono>

#include <seatload/core/append.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/record/spec_outlook.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/report.hpp>
#include <seatload/sheet/spring_sheet.hpp>

#include <cli/progress_bar.hpp>
#include <cli/replaced_papers.hpp>
#include <cli/reply_paper.hpp>
#include <cli/spec_seal.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

void search(SizeRun& run, const References& refs, const SizeOptions& options, std::ostream& err) {
    const auto start = std::chrono::steady_clock::now();
    sizing::SearchOptions how = search_options(options);
    ProgressBar bar(err);
    if (options.progress) how.progress = [&](double share) { bar.show(share); };
    run.census = sizing::search(run.space, refs.tolerances, how);
    run.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

}  // namespace

sizing::SearchOptions search_options(const SizeOptions& options) {
    sizing::SearchOptions how;
    how.threads = options.threads;
    return how;
}

const wire::Grade& grade_of(const SizeRun& run, const sizing::Candidate& candidate) {
    return run.space.grades[run.space.wires[candidate.wire].grade];
}

Offer make_offer(const SizeRun& run, const sizing::Alternative& alternative, const References& refs,
                 const SizeOptions& options) {
    const std::string letter(1, static_cast<char>('A' + static_cast<char>(run.offers.size())));
    record::Spec spec = record::specify(run.requirement, run.space, alternative, letter);
    const wire::Grade& grade = grade_of(run, alternative.candidate);
    auto evaluation = check::evaluate(spec.spring, grade, run.requirement, refs.tolerances);
    // The search and the evaluation run the same rules on the same numbers; a difference would be a fault of ours.
    SEATLOAD_ASSERT(evaluation.has_value() && evaluation->fits());
    record::order_tips(spec, *evaluation);
    sizing::OutlookOptions how;
    how.threads = options.threads;
    auto outlook = record::spec_outlook(spec, grade, record::requirement_of(spec), refs.tolerances, how);
    return {alternative, std::move(evaluation).value(), std::move(spec), std::move(outlook)};
}

SizeRun size_one(const std::string& file, const demand::Requirement& requirement, const References& refs,
                 const SizeOptions& options, std::ostream& err) {
    SizeRun run{file, requirement, sizing::search_space(requirement, refs.wires), {}, 0.0, {}, {}, {}};
    search(run, refs, options, err);
    const int count = options.alternatives != 0 ? options.alternatives : requirement.alternatives;
    for (const auto& alternative : sizing::spread(run.space, run.census, static_cast<std::size_t>(count)))
        run.offers.push_back(make_offer(run, alternative, refs, options));
    return run;
}

void explain(SizeRun& run, const References& refs, const SizeOptions& options) {
    const sizing::SearchOptions how = search_options(options);
    if (sizing::are_few(run.census))
        run.tight = sizing::tight_limits(run.requirement, run.census, {refs.wires, refs.tolerances, how});
    if (!run.offers.empty()) return;
    run.held_seat = sizing::held_seat(run.requirement, refs.wires, refs.tolerances, how);
    run.shortfall = sizing::shortfall(run.requirement, {refs.wires, refs.tolerances, how});
}

std::string paper_stem(const demand::Requirement& requirement) {
    constexpr std::size_t kLongestStem = 80;  // room for an ending in the 100 of an attachment's name
    std::string stem = file_stem(requirement.identity.engine + ' ' + requirement.identity.position);
    stem.resize(std::min(stem.size(), kLongestStem));
    while (stem.ends_with('-')) stem.pop_back();
    return stem;
}

std::vector<Paper> size_papers(const SizeRun& run, const std::string& stem, const References& refs,
                               const SizeOptions& options, Diagnostics& said,
                               const std::vector<sheet::SameWire>& same_wire) {
    const std::filesystem::path folder = options.output;
    const demand::Requirement& requirement = run.requirement;
    std::vector<Paper> papers;
    std::vector<sheet::EnquiryAlternative> offered;
    std::vector<sheet::ReportAlternative> reckoned;
    const auto keep = [&](const std::string& name, Result<std::string> bytes) {
        append(said, placed(bytes.error(), (folder / name).string()));
        if (bytes) papers.push_back({folder / name, std::move(bytes).value()});
    };
    for (const Offer& offer : run.offers) {
        const wire::Grade& grade = grade_of(run, offer.alternative.candidate);
        const std::string name = stem + '-' + lower(offer.spec.alternative);
        const std::string copy = io::write_spec(record::makers_copy(offer.spec));
        offered.push_back({offer.spec, grade, copy});
        reckoned.push_back({offer.spec, grade, offer.outlook ? &*offer.outlook : nullptr});
        if (!options.overwrite) append(said, edits_in_the_way(folder / (name + ".toml")));
        keep(name + ".toml", sealed(io::write_spec(offer.spec)));
        keep(name + ".pdf", sheet::spring_sheet_pdf({offer.spec, grade, refs.tolerances, refs.paper, 1, 1, copy}));
    }
    const std::string form = stem + "-reply.toml";
    const sheet::EnquiryLetter letter{requirement.correspondence, form, reply_form(offered, requirement.correspondence),
                                      same_wire};
    keep(stem + "-enquiry.pdf", sheet::enquiry_pdf(offered, refs.tolerances, refs.paper, letter));
    keep(stem + "-calculation.pdf",
         sheet::calculation_report_pdf({reckoned, refs.tolerances, refs.wires.sources, refs.english,
                                        sheet::ReportSizing{run.space, run.census}, refs.paper.size}));
    append(said, answers_in_the_way(folder / form));
    papers.push_back({folder / form, letter.form});
    if (!has_error(said)) append(said, replaced_papers(papers, folder / form, requirement.identity));
    return papers;
}

std::optional<demand::Budget> contradicted_plunger(const demand::Requirement& requirement) {
    if (!requirement.plunger) return std::nullopt;
    demand::Budget budget = demand::plunger_budget(*requirement.plunger);
    if (budget.is_possible()) return std::nullopt;
    return budget;
}

/// The enquiry among the papers; of several, none is meant more than another.
TypedCommand quotes_command(const std::vector<Paper>& papers, const std::string& wire_file) {
    std::vector<std::string> found;
    for (const Paper& paper : papers)
        if (paper.path.filename().string().ends_with("-enquiry.pdf")) found.push_back(paper.path.string());
    TypedCommand quotes("quotes");
    if (found.size() == 1)
        quotes.name(found.front());
    else
        quotes.open("ENQUIRY");
    return quotes.open("REPLY...").option("--wire-file", wire_file);
}

std::string papers_text(const std::vector<Paper>& papers, const std::vector<std::filesystem::path>& stale,
                        const SizeOptions& options) {
    std::string text;
    if (!papers.empty()) text += "\nPapers written:\n";
    for (const Paper& paper : papers) text += "  " + paper.path.string() + '\n';
    if (!stale.empty()) text += "\nLeft there by an earlier run, not of this one:\n";
    for (const auto& path : stale) text += "  " + path.string() + '\n';
    if (papers.empty()) return text;
    return text + next_text(
                      "look the sheets through and send the makers the enquiry, in which the form for the reply "
                      "lies; " +
                          quotes_command(papers, options.wire_file).text() +
                          " judges what they answer. Specs and calculation are for yourself.",
                      options.width);
}

}  // namespace seatload::cli
