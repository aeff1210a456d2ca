// SPDX-License-Identifier: MIT
#include <seatload/sheet/report.hpp>

#include <seatload/core/diagnostic.hpp>
#include <seatload/core/text.hpp>
#include <seatload/sheet/frame.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/report_overview.hpp>
#include <seatload/sheet/report_part.hpp>
#include <seatload/sheet/report_steps.hpp>
#include <seatload/sheet/report_subject.hpp>
#include <seatload/sheet/title_block.hpp>

namespace seatload::sheet {
namespace {

constexpr const char* kDocument = "calculation report";

std::string title_of(const record::Spec& spec) { return spec.title.empty() ? "Compression spring" : spec.title; }

/// Pages up to here tell of this.
struct Part {
    std::size_t end;
    std::string words;
};

TitleBlock title_block(const record::Spec& spec, const std::string& part, std::size_t sheet, std::size_t sheets) {
    TitleBlock block;
    block.legal_owner = spec.identity.owner;
    block.title = title_of(spec);
    block.supplementary_title = part;
    block.identification_number = spec.identity.number;
    block.revision = spec.identity.revision;
    block.date_of_issue = spec.identity.date;
    block.creator = spec.identity.creator;
    block.approver = spec.identity.approver;
    block.document_type = kDocument;
    block.document_status = "not for the maker";
    block.sheet = static_cast<int>(sheet);
    block.sheets = static_cast<int>(sheets);
    return block;
}

std::string part_words(const ReportSubject& subject, std::size_t index, std::size_t count) {
    return count == 1 && subject.spec.alternative.empty() ? "One spring"
                                                          : "Alternative " + report_letter(subject.spec, index);
}

/// What all the springs are asked for, when it is the same.
std::optional<StepGroup> common_demand(const std::vector<ReportSubject>& subjects) {
    const StepGroup first = report_steps(subjects.front()).front();
    for (const ReportSubject& subject : subjects)
        if (report_steps(subject).front() != first) return std::nullopt;
    return first;
}

Result<std::vector<ReportSubject>> subjects_of(const ReportInput& input) {
    std::vector<ReportSubject> subjects;
    Diagnostics diagnostics;
    for (const ReportAlternative& alternative : input.alternatives) {
        auto one = report_subject(alternative.spec, alternative.grade, input.tolerances);
        diagnostics.insert(diagnostics.end(), one.error().begin(), one.error().end());
        if (one) subjects.push_back(std::move(one).value());
    }
    if (has_error(diagnostics)) return diagnostics;
    return {std::move(subjects), std::move(diagnostics)};
}

}  // namespace

Result<std::vector<Drawing>> calculation_report(const ReportInput& input) {
    if (input.alternatives.empty()) return error("a calculation report needs at least one spring");
    auto known = subjects_of(input);
    if (!known) return known.error();
    const std::vector<ReportSubject>& subjects = *known;

    PageFlow flow(input.size);
    std::vector<Part> parts;
    const auto end_part = [&](std::string words) { parts.push_back({flow.pages().size(), std::move(words)}); };
    add_overview(flow, subjects);
    const auto demand = common_demand(subjects);
    if (demand) add_steps(flow, *demand);
    if (input.sizing) add_map(flow, subjects, *input.sizing);
    end_part("Overview");
    for (std::size_t i = 0; i < subjects.size(); ++i) {
        flow.new_page();
        add_report_part(flow, subjects[i], part_words(subjects[i], i, subjects.size()), !demand);
        end_part(part_words(subjects[i], i, subjects.size()));
    }
    add_sources(flow, subjects, input.sources);
    parts.back().end = flow.pages().size();

    std::vector<Drawing> pages = std::move(flow.pages());
    std::size_t part = 0;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        while (i >= parts[part].end) ++part;
        const Box space = drawing_space(pages[i].width(), pages[i].height());
        draw_title_block(pages[i], {space.right, space.bottom},
                         title_block(subjects.front().spec, parts[part].words, i + 1, pages.size()), input.words);
    }
    return {std::move(pages), known.error()};
}

Result<std::string> calculation_report_pdf(const ReportInput& input) {
    const auto pages = calculation_report(input);
    if (!pages) return pages.error();
    Diagnostics ignored;  // the same texts were complained of by calculation_report()
    const record::Spec& spec = input.alternatives.front().spec;
    auto bytes = write_pdf(*pages, {"Calculation report: " + readable(title_of(spec), "title", ignored),
                                    readable(spec.identity.owner, "owner", ignored), "Calculation of a spring"});
    if (!bytes) return bytes.error();
    return {std::move(bytes).value(), pages.error()};
}

}  // namespace seatload::sheet
