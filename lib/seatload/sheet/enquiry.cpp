// SPDX-License-Identifier: MIT
#include <seatload/sheet/enquiry.hpp>

#include <fmt/format.h>

#include <algorithm>

#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/complaint.hpp>
#include <seatload/sheet/enquiry_tables.hpp>
#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/frame.hpp>
#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/printable.hpp>
#include <seatload/sheet/spec_attachment.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <seatload/sheet/terms.hpp>
#include <seatload/sheet/title_block.hpp>

namespace seatload::sheet {
namespace {

constexpr double kWidth = 174.0;  ///< of tables on upright A4, inside the padding of PageFlow

/// "A to E", "A", or "1 to 3".
std::string letters(std::span<const Facts> alternatives) {
    const std::string first = letter(alternatives, 0);
    return alternatives.size() == 1 ? first : first + " to " + letter(alternatives, alternatives.size() - 1);
}

void add_request(PageFlow& flow, std::span<const Facts> alternatives) {
    const record::Spec& spec = alternatives.front().spec;
    flow.heading("Enquiry: " + title(spec));
    const std::string number = spec.identity.number.empty() ? "" : ", our number " + spec.identity.number;
    const std::string pieces = spec.quantities.empty() ? "" : "; lots to quote: " + quantities(spec) + " pieces";
    flow.paragraph("Please quote the cold-coiled compression spring described here" + number + pieces + ".");
    if (alternatives.size() > 1)
        flow.paragraph("Any one of the alternatives " + letters(alternatives) +
                       " will do. Quote those that suit the wire you hold and your tooling; you need not quote all.");
    flow.paragraph("A sheet for each alternative follows. Where this cover and a sheet differ, the sheet holds.");
}

void add_comparison(PageFlow& flow, std::span<const Facts> alternatives) {
    flow.heading(alternatives.size() > 1 ? "What differs between the alternatives" : "The spring");
    for (const RuledTable& table : comparison_tables(alternatives, kWidth)) flow.table(table);
    const std::string common = common_words(alternatives);
    if (!common.empty()) flow.paragraph("Alike in all: " + common + ".");
    flow.paragraph(
        "Values in brackets are for reference, or yours to adjust as said below. Loads are those of the new spring at "
        "20\u00a0°C.");
}

void add_freedom(PageFlow& flow, std::span<const Facts> alternatives) {
    flow.heading("What you may change without asking");
    std::vector<std::string> said;
    for (const Facts& facts : alternatives) {
        const std::string words = adjustable_quantities(facts);
        if (std::find(said.begin(), said.end(), words) == said.end()) said.push_back(words);
    }
    const bool alike = said.size() == 1;
    for (std::size_t i = 0; i < (alike ? 1 : alternatives.size()); ++i)
        flow.point((alike ? "To bring both loads in: " : letter(alternatives, i) + ": ") +
                   adjustable_quantities(alternatives[i]) + ", within the bounds on its sheet.");
    flow.point("Wire surface; whether and how you preset, as long as the loads hold afterwards.");
    flow.point(
        "Anything else, such as another wire you hold or other ends: write it under changes you ask for; it will be "
        "checked and answered.");
}

void add_acceptance(PageFlow& flow, std::span<const Facts> alternatives) {
    const Facts& facts = alternatives.front();
    flow.heading("How the lot will be accepted");
    bool alike = true;
    for (const Facts& f : alternatives) alike = alike && test_sequence(f) == test_sequence(facts);
    flow.point("We measure it when it arrives; what you test before sending is your choice.");
    flow.point(alike ? test_sequence(facts) : std::string("In the order and to the lengths that its sheet names."));
    flow.point(std::string(tests_every_piece(facts.spec) ? "Loads: every piece, at both lengths."
                                                         : "Loads: by a sampling plan to be agreed.") +
               " Dimensions in brackets are not inspected.");
    flow.point(decision_rule());
    flow.point("With the lot: mill certificate of the wire (grade, d, " + symbol("R", "m") + "), and " +
               quantities_as_made(facts) + " as made.");
    flow.point(
        "Packed so that pieces neither tangle nor rust; labelled with the number on the sheet, revision, pieces "
        "and lot of wire.");
}

void add_caution(PageFlow& flow) {
    flow.heading("Caution");
    flow.paragraph(caution());
}

void add_reply(PageFlow& flow, std::span<const Facts> alternatives) {
    flow.heading("Your reply");
    flow.paragraph("Leave a line empty where you do not quote. Tooling that is paid once: write it once.");
    flow.table(
        {{70.0, 30.0, 30.0, 44.0}, {{"firm", "currency", "valid until", "delivery terms"}, {"", "", "", ""}}, 11.0});
    std::vector<int> lots = alternatives.front().spec.quantities;
    if (lots.empty()) flow.headed_table("Prices", price_table(alternatives, kWidth));
    for (const int lot : lots) flow.headed_table(fmt::format("For {} pieces", lot), price_table(alternatives, kWidth));
    flow.headed_table("Wire and changes", change_table(alternatives, kWidth));
    flow.headed_table("Offered by", {{70.0, 30.0, 74.0}, {{"name", "date", "signature"}, {"", "", ""}}, 11.0});
}

TitleBlock cover_block(const record::Spec& spec, std::span<const Facts> alternatives, int sheet, int sheets) {
    TitleBlock block;
    block.legal_owner = spec.identity.owner;
    block.title = title(spec);
    block.supplementary_title = (alternatives.size() > 1 ? "Alternatives " : "Alternative ") + letters(alternatives);
    block.identification_number = spec.identity.number;
    block.revision = spec.identity.revision;
    block.date_of_issue = spec.identity.date;
    block.creator = spec.identity.creator;
    block.approver = spec.identity.approver;
    block.document_type = "enquiry";
    block.sheet = sheet;
    block.sheets = sheets;
    return block;
}

/// The pages before the sheets, without their title blocks: how many there are is known only now.
std::vector<Drawing> cover(std::span<const Facts> alternatives) {
    PageFlow flow;
    add_request(flow, alternatives);
    add_comparison(flow, alternatives);
    add_freedom(flow, alternatives);
    add_acceptance(flow, alternatives);
    // On the first page when it has room, else above the reply form: never on a page of its own.
    const bool early = flow.has_room_for(caution());
    if (early) add_caution(flow);
    flow.new_page();
    if (!early) add_caution(flow);
    add_reply(flow, alternatives);
    return std::move(flow.pages());
}

std::vector<Attachment> spec_attachments(std::span<const EnquiryAlternative> alternatives) {
    std::vector<Attachment> attached;
    for (const EnquiryAlternative& alternative : alternatives)
        if (!alternative.spec_text.empty())
            attached.push_back(spec_attachment(alternative.spec, alternative.spec_text));
    make_names_differ(attached);
    return attached;
}

}  // namespace

Result<std::vector<Drawing>> enquiry(std::span<const EnquiryAlternative> alternatives,
                                     const tolerance::Tables& tolerances, const Paper& paper) {
    if (alternatives.empty()) return error("an enquiry needs at least one alternative");
    std::vector<Facts> known;
    Diagnostics diagnostics;
    for (const EnquiryAlternative& alternative : alternatives) {
        auto one = facts(alternative.spec, alternative.grade, tolerances, paper);
        diagnostics.insert(diagnostics.end(), one.error().begin(), one.error().end());
        if (one) known.push_back(std::move(one).value());
    }
    if (has_error(diagnostics)) return diagnostics;

    std::vector<Drawing> pages = cover(known);
    const int sheets = static_cast<int>(pages.size() + alternatives.size());
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const Box space = drawing_space(pages[i].width(), pages[i].height());
        draw_title_block(pages[i], {space.right, space.bottom},
                         cover_block(known.front().spec, known, static_cast<int>(i) + 1, sheets));
    }
    for (const EnquiryAlternative& alternative : alternatives) {
        auto sheet =
            spring_sheet({alternative.spec, alternative.grade, tolerances, paper, static_cast<int>(pages.size()) + 1,
                          sheets, alternative.spec_text});
        if (!sheet) return sheet.error();
        pages.push_back(std::move(sheet).value());
    }
    return {std::move(pages), std::move(diagnostics)};
}

Result<std::string> enquiry_pdf(std::span<const EnquiryAlternative> alternatives, const tolerance::Tables& tolerances,
                                const Paper& paper, std::span<const Attachment> more) {
    const auto pages = enquiry(alternatives, tolerances, paper);
    if (!pages) return pages.error();
    Diagnostics ignored;  // the same texts were complained of by enquiry()
    const record::Spec spec = printable(alternatives.front().spec, ignored);
    std::vector<Attachment> attached = spec_attachments(alternatives);
    const std::string marks = marks_of(attached);
    attached.insert(attached.end(), more.begin(), more.end());
    auto bytes = write_pdf(
        *pages, {"Enquiry: " + title(spec), spec.identity.owner, "Enquiry to a spring maker", marks}, attached);
    if (!bytes) return bytes.error();
    return {std::move(bytes).value(), pages.error()};
}

}  // namespace seatload::sheet
