// SPDX-License-Identifier: MIT
#include <seatload/sheet/enquiry.hpp>

#include <algorithm>
#include <array>
#include <optional>
#include <tuple>

#include <seatload/core/append.hpp>
#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/adjustment.hpp>
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

/// Heights of rows that a hand writes in [mm].
struct WritingRoom {
    double number;
    double sentence;
    double box;  ///< for words alone in a small table
};
constexpr std::array kWritingRooms{
    WritingRoom{10.0, 16.0, 12.0}, WritingRoom{9.0, 14.0, 11.0}, WritingRoom{9.0, 12.0, 10.0},
    WritingRoom{8.0, 11.0, 9.0},   WritingRoom{8.0, 9.5, 8.0},   WritingRoom{8.0, 8.0, 8.0},
    WritingRoom{8.0, 7.6, 7.4},    WritingRoom{6.4, 7.4, 7.4},   WritingRoom{6.0, 6.4, 6.4}};
constexpr double kFullEnough = 0.6;  ///< of a page that is left for a new one

/// "A to E", "A", or "1 to 3".
std::string letters(std::span<const Facts> alternatives) {
    std::string first = letter(alternatives, 0);
    if (alternatives.size() == 1) return first;
    return alternatives.front().say("enquiry.range",
                                    {{"first", first}, {"last", letter(alternatives, alternatives.size() - 1)}});
}

/// Who asks, and where: the pieces that are known.
std::string asker(const record::Spec& spec, const demand::Correspondence& known, const std::string& between) {
    std::string out;
    for (const std::string& piece : {spec.identity.owner, known.address, known.contact})
        if (!piece.empty()) out += (out.empty() ? "" : between) + piece;
    return out;
}

/// By when and where to the maker answers, and where he delivers; a day or an address that is not known is left open
/// for a hand to fill in.
void add_correspondence(PageFlow& flow, const Facts& facts, const demand::Correspondence& known) {
    constexpr double kForAHand = 14.0;
    const bool is_complete = !known.reply_by.empty() && !known.address.empty();
    const std::string delivery = !known.deliver_to.empty() ? known.deliver_to
                                 : known.address.empty()   ? std::string{}
                                                           : facts.say("enquiry.same_address");
    const double day = 28.0;
    const double delivered = 62.0;
    RuledTable table{{day, flow.width() - day - delivered, delivered},
                     {{facts.say("enquiry.reply_by"), facts.say("enquiry.reply_to"), facts.say("enquiry.deliver_to")},
                      {known.reply_by, asker(facts.spec, known, "\n"), delivery}}};
    if (!is_complete) table.least_row_height = kForAHand;
    flow.table(table);
}

void add_request(PageFlow& flow, std::span<const Facts> alternatives, const EnquiryLetter& letter) {
    const Facts& facts = alternatives.front();
    const record::Spec& spec = facts.spec;
    flow.heading(facts.say("enquiry.heading", {{"title", title(spec, facts.paper.words)}}));
    std::string words = facts.say("enquiry.please_quote");
    if (!spec.identity.number.empty()) words += " " + facts.say("enquiry.number", {{"number", spec.identity.number}});
    if (!spec.quantities.empty()) words += " " + facts.say("order.lots", {{"lots", quantities(spec)}});
    if (alternatives.size() > 1) words += " " + facts.say("enquiry.any_will_do", {{"letters", letters(alternatives)}});
    flow.paragraph(words);
    words = facts.say("enquiry.sheets_follow");
    if (!letter.form_name.empty()) words += " " + facts.say("enquiry.form_attached", {{"file", letter.form_name}});
    flow.paragraph(words);
    for (const SameWire& same : letter.same_wire)
        if (const std::string shared = same_wire_words(alternatives, same); !shared.empty()) flow.paragraph(shared);
    add_correspondence(flow, facts, letter.correspondence);
}

void add_comparison(PageFlow& flow, std::span<const Facts> alternatives) {
    const Facts& facts = alternatives.front();
    const std::vector<RuledTable> tables = comparison_tables(alternatives, flow.width());
    flow.headed_table(alternatives.size() > 1 ? facts.say("compare.heading") : facts.say("compare.heading_of_one"),
                      tables.front());
    for (std::size_t i = 1; i < tables.size(); ++i) flow.table(tables[i]);
    const std::string common = common_words(alternatives);
    std::string words = common.empty() ? "" : facts.say("compare.alike", {{"values", common}}) + " ";
    words += facts.say("compare.remark", {{"temperature", facts.figures().temperature({20.0})}});
    if (facts.figures().has_inches()) words += " " + facts.say("compare.inches");
    flow.paragraph(words);
}

/// "A, C": the alternatives of which the maker may adjust the same.
std::string letters_that_may_adjust(std::span<const Facts> alternatives, const std::string& quantities) {
    std::string out;
    for (std::size_t i = 0; i < alternatives.size(); ++i)
        if (adjustable_quantities(alternatives[i]) == quantities)
            out += (out.empty() ? "" : ", ") + letter(alternatives, i);
    return out;
}

void add_freedom(PageFlow& flow, std::span<const Facts> alternatives) {
    const Facts& front = alternatives.front();
    flow.heading(front.say("freedom.heading"));
    const bool alike = std::all_of(alternatives.begin(), alternatives.end(), [&](const Facts& facts) {
        return adjustable_quantities(facts) == adjustable_quantities(front);
    });
    if (alike) flow.point(front.say("freedom.loads", {{"quantities", adjustable_quantities(front)}}));
    std::vector<std::string> told;
    for (std::size_t i = 0; !alike && i < alternatives.size(); ++i) {
        const std::string quantities = adjustable_quantities(alternatives[i]);
        if (std::find(told.begin(), told.end(), quantities) != told.end()) continue;
        told.push_back(quantities);
        flow.point(front.say("freedom.loads_of_one", {{"letter", letters_that_may_adjust(alternatives, quantities)},
                                                      {"quantities", quantities}}));
    }
    flow.point(front.say("freedom.process"));
    flow.point(front.say("freedom.else"));
}

/// "3.1"; "3.1/2.2" when the sheets ask for different ones.
std::string certificate_types(std::span<const Facts> alternatives) {
    std::vector<std::string> types;
    for (const Facts& facts : alternatives)
        if (const std::string type = certificate_type(facts.spec);
            std::find(types.begin(), types.end(), type) == types.end())
            types.push_back(type);
    std::string out;
    for (const std::string& type : types) out += (out.empty() ? "" : "/") + type;
    return out;
}

void add_acceptance(PageFlow& flow, std::span<const Facts> alternatives) {
    const Facts& facts = alternatives.front();
    flow.heading(facts.say("acceptance.heading"));
    const bool alike = std::all_of(alternatives.begin(), alternatives.end(),
                                   [&](const Facts& f) { return test_sequence(f) == test_sequence(facts); });
    flow.point(facts.say("acceptance.where"));
    flow.point(alike ? test_sequence(facts) : facts.say("acceptance.by_sheet"));
    flow.point(inspected_pieces(facts) + " " + facts.say("acceptance.brackets"));
    flow.point(facts.say("inspection.decision"));
    flow.point(facts.say("acceptance.with_lot",
                         {{"type", certificate_types(alternatives)}, {"diameter", coil_symbol(facts)}}));
    flow.point(facts.say("acceptance.packing"));
}

void add_caution(PageFlow& flow, const Wording& words) {
    flow.headed_paragraph(words.say("caution.heading"), words.say("caution.words"));
}

void add_reply(PageFlow& flow, std::span<const Facts> alternatives, const EnquiryLetter& letter,
               const WritingRoom& room) {
    const Facts& facts = alternatives.front();
    const double width = flow.width();
    const demand::Correspondence& known = letter.correspondence;
    flow.heading(known.reply_by.empty() ? facts.say("reply.heading")
                                        : facts.say("reply.heading_by", {{"date", known.reply_by}}));
    if (!known.address.empty()) flow.paragraph(facts.say("reply.to", {{"asker", asker(facts.spec, known, ", ")}}));
    flow.paragraph(facts.say("reply.how"));
    flow.table({{width - 122.0, 36.0, 34.0, 22.0, 30.0},
                {{facts.say("reply.firm"), facts.say("reply.quotation"), facts.say("reply.dated"),
                  facts.say("reply.currency"), facts.say("reply.valid_until")},
                 {"", "", "", "", ""}},
                room.box});
    flow.table({{0.5 * width, 0.5 * width},
                {{facts.say("reply.delivery_terms"), facts.say("reply.certificates")}, {"", ""}},
                room.box});
    for (const RuledTable& table : price_tables(alternatives, width, room.number)) flow.table(table);
    flow.table(charges_table(facts, width, room.box));
    flow.headed_table(facts.say("reply.wire_and_changes"), change_table(alternatives, width, room.sentence));
    flow.table(
        {{0.5 * width, 0.5 * width}, {{facts.say("reply.name"), facts.say("reply.signature")}, {"", ""}}, room.box});
}

/// The reply form on as few pages as can be; then on a page of its own rather than broken, and the last page as full as
/// rows of other heights make it.
PageFlow with_reply(const PageFlow& before, std::span<const Facts> alternatives, const EnquiryLetter& letter) {
    std::optional<PageFlow> best;
    std::tuple<std::size_t, std::size_t, double> least{};
    for (const bool on_new_page : {false, true})
        for (const WritingRoom& room : kWritingRooms) {
            PageFlow flow = before;
            if (on_new_page) flow.new_page();
            const std::size_t first = flow.pages().size();
            add_reply(flow, alternatives, letter, room);
            const std::tuple cost{flow.pages().size(), flow.pages().size() - first, -flow.fullness()};
            if (best && cost >= least) continue;
            best = std::move(flow);
            least = cost;
        }
    return *best;
}

TitleBlock cover_block(std::span<const Facts> alternatives, int sheet, int sheets) {
    const Facts& facts = alternatives.front();
    const record::Spec& spec = facts.spec;
    TitleBlock block = title_block_of(spec.identity);
    block.title = title(spec, facts.paper.words);
    block.supplementary_title = alternatives.size() > 1
                                    ? facts.say("document.alternatives", {{"letters", letters(alternatives)}})
                                    : facts.say("document.alternative", {{"letter", letters(alternatives)}});
    block.document_type = facts.say("document.enquiry");
    block.sheet = sheet;
    block.sheets = sheets;
    return block;
}

/// The pages before the sheets, their lines so far apart.
std::vector<Drawing> cover_set(std::span<const Facts> alternatives, const EnquiryLetter& letter, double pitch) {
    const Paper& paper = alternatives.front().paper;
    PageFlow flow(paper.size, pitch);
    add_request(flow, alternatives, letter);
    add_comparison(flow, alternatives);
    add_freedom(flow, alternatives);
    add_acceptance(flow, alternatives);
    // On the first page when it has room, else above the reply form: never on a page of its own.
    const bool early = flow.has_room_for(paper.words.say("caution.words"));
    if (early) add_caution(flow, paper.words);
    if (flow.fullness() >= kFullEnough) flow.new_page();
    if (!early) add_caution(flow, paper.words);
    return std::move(with_reply(flow, alternatives, letter).pages());
}

/// The pages before the sheets, without their title blocks: how many there are is known only now. Lines stand closer
/// where that spares a page.
std::vector<Drawing> cover(std::span<const Facts> alternatives, const EnquiryLetter& letter) {
    std::vector<Drawing> pages = cover_set(alternatives, letter, kFlowPitch);
    std::vector<Drawing> close = cover_set(alternatives, letter, kCloseFlowPitch);
    return close.size() < pages.size() ? close : pages;
}

std::vector<Attachment> spec_attachments(std::span<const EnquiryAlternative> alternatives, const Wording& words) {
    std::vector<Attachment> attached;
    for (const EnquiryAlternative& alternative : alternatives)
        if (!alternative.spec_text.empty())
            attached.push_back(spec_attachment(alternative.spec, alternative.spec_text, words));
    make_names_differ(attached);
    return attached;
}

}  // namespace

Result<std::vector<Drawing>> enquiry(std::span<const EnquiryAlternative> alternatives,
                                     const tolerance::Tables& tolerances, const Paper& paper,
                                     const EnquiryLetter& letter) {
    if (alternatives.empty()) return error("bad-pdf"_id, "an enquiry needs at least one alternative");
    std::vector<Facts> known;
    Diagnostics diagnostics;
    for (const EnquiryAlternative& alternative : alternatives) {
        auto one = facts(alternative.spec, alternative.grade, tolerances, paper);
        append(diagnostics, one.error());
        if (one) known.push_back(std::move(one).value());
    }
    EnquiryLetter clean = letter;
    clean.correspondence = printable(letter.correspondence, diagnostics);
    for (SameWire& same : clean.same_wire)
        for (record::Spec& other : same.others) other = printable(other, diagnostics);
    if (has_error(diagnostics)) return diagnostics;

    std::vector<Drawing> pages = cover(known, clean);
    const int sheets = static_cast<int>(pages.size() + alternatives.size());
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const Box space = drawing_space(pages[i].width(), pages[i].height());
        draw_title_block(pages[i], {space.right, space.bottom}, cover_block(known, static_cast<int>(i) + 1, sheets),
                         paper.words);
    }
    for (const EnquiryAlternative& alternative : alternatives) {
        auto sheet = spring_sheet({alternative.spec, alternative.grade, tolerances, paper,
                                   static_cast<int>(pages.size()) + 1, sheets, alternative.spec_text});
        if (!sheet) return sheet.error();
        pages.push_back(std::move(sheet).value());
    }
    return {std::move(pages), std::move(diagnostics)};
}

Result<std::string> enquiry_pdf(std::span<const EnquiryAlternative> alternatives, const tolerance::Tables& tolerances,
                                const Paper& paper, const EnquiryLetter& letter) {
    const auto pages = enquiry(alternatives, tolerances, paper, letter);
    if (!pages) return pages.error();
    Diagnostics ignored;  // the same texts were complained of by enquiry()
    const record::Spec spec = printable(alternatives.front().spec, ignored);
    const Wording& words = paper.words;
    std::vector<Attachment> attached = spec_attachments(alternatives, words);
    const std::string marks = marks_of(attached);
    if (!letter.form_name.empty())
        attached.push_back(toml_attachment(letter.form_name, letter.form, words.say("reply.attached_form")));
    const std::string heading = words.say("enquiry.heading", {{"title", title(spec, words)}});
    auto bytes =
        write_pdf(*pages, {heading, spec.identity.owner, words.say("document.enquiry_subject"), marks}, attached);
    if (!bytes) return bytes.error();
    return {std::move(bytes).value(), pages.error()};
}

}  // namespace seatload::sheet
