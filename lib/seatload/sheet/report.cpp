// SPDX-License-Identifier: MIT
#include <seatload/sheet/report.hpp>

#include <seatload/core/append.hpp>
#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/own_title.hpp>
#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/page_parts.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/report_overview.hpp>
#include <seatload/sheet/report_part.hpp>
#include <seatload/sheet/report_steps.hpp>
#include <seatload/sheet/report_subject.hpp>

namespace seatload::sheet {
namespace {

constexpr const char* kDocument = "calculation report";
constexpr double kPartStartsUpTo = 0.55;  ///< share of a page that is written on where a part still begins on it

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
        append(diagnostics, one.error());
        if (!one) continue;
        subjects.push_back(std::move(one).value());
        if (alternative.outlook != nullptr) subjects.back().outlook = *alternative.outlook;
    }
    if (has_error(diagnostics)) return diagnostics;
    return {std::move(subjects), std::move(diagnostics)};
}

/// Begins a part on the present page, which then tells of two, or on a new one where that is written on already.
void begin_part(PageFlow& flow, std::vector<PagePart>& parts, const std::string& words) {
    if (flow.fullness() > kPartStartsUpTo) flow.new_page();
    if (flow.fullness() == 0.0) return;
    PagePart& before = parts.back();
    const PagePart shared{before.end, before.words + "; " + words};
    --before.end;
    parts.push_back(shared);
}

}  // namespace

Result<std::vector<Drawing>> calculation_report(const ReportInput& input) {
    if (input.alternatives.empty()) return error("bad-pdf"_id, "a calculation report needs at least one spring");
    auto known = subjects_of(input);
    if (!known) return known.error();
    const std::vector<ReportSubject>& subjects = *known;

    PageFlow flow(input.size);
    std::vector<PagePart> parts;
    const auto end_part = [&](std::string words) { parts.push_back({flow.pages().size(), std::move(words)}); };
    add_overview(flow, subjects);
    const auto demand = common_demand(subjects);
    if (demand) add_steps(flow, *demand);
    if (input.sizing) add_map(flow, subjects, *input.sizing);
    end_part("Overview");
    for (std::size_t i = 0; i < subjects.size(); ++i) {
        const std::string words = part_words(subjects[i], i, subjects.size());
        begin_part(flow, parts, words);
        add_report_part(flow, subjects[i], words, {demand.has_value(), i > 0});
        end_part(words);
    }
    add_sources(flow, subjects, input.sources);
    parts.back().end = flow.pages().size();

    std::vector<Drawing> pages = std::move(flow.pages());
    draw_title_blocks(pages, parts, own_title_block(subjects.front().spec, kDocument, "not for the maker"),
                      input.words);
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
