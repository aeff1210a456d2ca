// SPDX-License-Identifier: MIT
#include <seatload/sheet/purchase.hpp>

#include <array>
#include <span>
#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/enquiry_tables.hpp>
#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/frame.hpp>
#include <seatload/sheet/page_flow.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/printable.hpp>
#include <seatload/sheet/tamper_mark.hpp>
#include <seatload/sheet/terms.hpp>
#include <seatload/sheet/title_block.hpp>

namespace seatload::sheet {
namespace {

/// How close a page of an order is set [mm].
struct Setting {
    double pitch;    ///< from line to line; letters are 2.5 mm high
    double by_hand;  ///< height of a row to be written in
    double address;  ///< the same for names and addresses, in two lines by hand
    bool has_caution_heading = true;
};
constexpr std::array kSettings{Setting{kFlowPitch, 7.6, 9.2}, Setting{kCloseFlowPitch, 7.6, 9.2},
                               Setting{3.4, 7.6, 9.2},        Setting{3.4, 6.6, 8.2},
                               Setting{3.4, 6.6, 8.2, false}, Setting{3.4, 6.2, 7.6, false},
                               Setting{3.4, 5.8, 7.2, false}, Setting{3.4, 5.4, 6.8, false}};

void add_order(PageFlow& flow, const Facts& facts, const Purchase& purchase, const Setting& setting) {
    flow.heading(facts.say("purchase.heading", {{"title", title(facts.spec, facts.paper.words)}}));
    flow.paragraph(facts.say("purchase.please_supply",
                             {{"number", drawing_number(facts.spec)}, {"revision", facts.spec.identity.revision}}));
    if (purchase.state == record::State::trial) flow.paragraph(facts.say("purchase.on_trial"));
    if (purchase.state == record::State::draft) flow.paragraph(facts.say("purchase.is_draft"));
    const double pieces = 20.0, letter = 24.0, fifth = (flow.width() - pieces - letter) / 4.0;
    flow.table({{pieces, fifth, fifth, fifth, fifth, letter},
                {{facts.say("purchase.pieces"), facts.say("purchase.number"), facts.say("purchase.date"),
                  facts.say("purchase.wanted_by"), facts.say("reply.quotation"), facts.say("compare.alternative")},
                 {purchase.pieces ? std::to_string(*purchase.pieces) : "", purchase.number, purchase.date, "",
                  purchase.quotation, purchase.alternative}},
                setting.by_hand});
    const double price = 44.0, third = (flow.width() - price) / 3.0;
    flow.table({{third, third, third, price},
                {{facts.say("purchase.maker"), facts.say("purchase.buyer"), facts.say("purchase.deliver_to"),
                  facts.say("purchase.price")},
                 {"", facts.spec.identity.owner, "", ""}},
                setting.address});
}

/// The spring in two halves side by side, its names in columns of a share of the width; units stand with the names or
/// with the values.
RuledTable spring_table(const Facts& facts, const std::vector<ComparedRow>& all, double width, double name_share,
                        bool are_units_with_names) {
    const double name = name_share * width, value = (0.5 - name_share) * width;
    const std::string quantity = facts.say("purchase.quantity"), amount = facts.say("purchase.value");
    RuledTable table{{name, value, name, value}, {{quantity, amount, quantity, amount}}};
    table.naming = {0, 2};
    const std::size_t half = (all.size() + 1) / 2;
    for (std::size_t i = 0; i < half; ++i) {
        std::vector<std::string> row;
        for (const std::size_t at : {i, i + half}) {
            const bool is_there = at < all.size();
            if (!is_there) {
                row.insert(row.end(), {"", ""});
                continue;
            }
            const ComparedRow& compared = all[at];
            const bool has_unit = are_units_with_names && !compared.unit.empty();
            row.push_back(has_unit ? compared.name + ", " + compared.unit : compared.name);
            row.push_back(are_units_with_names ? compared.values.front() : compared.first_with_unit);
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

/// What the maker finds at a glance, as low as can be; the sheet holds.
void add_spring(PageFlow& flow, const Facts& facts) {
    const std::vector<ComparedRow> all = comparisons(std::span<const Facts>(&facts, 1));
    RuledTable best = spring_table(facts, all, flow.width(), 0.23, true);
    for (const bool are_units_with_names : {true, false})
        for (const double share : {0.21, 0.23, 0.25, 0.27, 0.29}) {
            RuledTable table = spring_table(facts, all, flow.width(), share, are_units_with_names);
            if (has_room_for_words(table) && height(table) < height(best)) best = std::move(table);
        }
    flow.headed_table(facts.say("compare.heading_of_one"), best);
    flow.paragraph(facts.say("purchase.remark", {{"temperature", facts.figures().temperature({20.0})}}));
}

void add_terms(PageFlow& flow, const Facts& facts, const std::string& spec_text) {
    flow.heading(facts.say("purchase.what_binds"));
    flow.point(facts.say("purchase.sheet_holds"));
    flow.point(facts.say("purchase.mark", {{"mark", tamper_mark(spec_text)}}));
    flow.point(facts.say("purchase.no_change"));
    flow.point(facts.say("purchase.no_other_revision", {{"revision", facts.spec.identity.revision}}));
}

void add_acceptance(PageFlow& flow, const Facts& facts) {
    flow.heading(facts.say("acceptance.heading"));
    flow.point(facts.say("acceptance.where"));
    flow.point(test_sequence(facts));
    flow.point(inspected_pieces(facts) + " " + facts.say("acceptance.brackets"));
    flow.point(facts.say("inspection.decision"));
    flow.point(
        facts.say("acceptance.with_lot", {{"type", certificate_type(facts.spec)}, {"diameter", coil_symbol(facts)}}));
    flow.point(facts.say("acceptance.packing"));
}

void add_signatures(PageFlow& flow, const Facts& facts, double row_height) {
    const double who = 50.0, date = 26.0, signature = 54.0;
    flow.table({{who, flow.width() - who - date - signature, date, signature},
                {{"", facts.say("reply.name"), facts.say("reply.date"), facts.say("reply.signature")},
                 {facts.say("purchase.ordered"), "", "", ""},
                 {facts.say("purchase.confirmed"), "", "", ""}},
                row_height});
}

std::vector<Drawing> laid_out(const Facts& facts, const Purchase& purchase, const std::string& spec_text,
                              const Setting& setting) {
    PageFlow flow(facts.paper.size, setting.pitch);
    add_order(flow, facts, purchase, setting);
    add_spring(flow, facts);
    add_terms(flow, facts, spec_text);
    add_acceptance(flow, facts);
    if (setting.has_caution_heading) {
        flow.headed_paragraph(facts.say("caution.heading"), facts.say("caution.words"));
    } else {
        constexpr double kAfterPoints = 0.6;
        flow.room(kAfterPoints);
        flow.paragraph(facts.say("caution.heading") + ": " + facts.say("caution.words"));
    }
    add_signatures(flow, facts, setting.by_hand);
    return std::move(flow.pages());
}

TitleBlock block_of(const Facts& facts, int sheet, int sheets) {
    const record::Spec& spec = facts.spec;
    TitleBlock block = title_block_of(spec.identity);
    block.title = title(spec, facts.paper.words);
    block.supplementary_title = supplementary_title(spec, facts.paper.words);
    block.document_type = facts.say("document.purchase");
    block.sheet = sheet;
    block.sheets = sheets;
    return block;
}

}  // namespace

Result<std::vector<Drawing>> purchase_order(const record::Spec& spec, const wire::Grade& grade,
                                            const tolerance::Tables& tables, const Paper& paper,
                                            const Purchase& purchase, const std::string& spec_text) {
    const auto known = facts(spec, grade, tables, paper);
    if (!known) return Diagnostics(known.error());
    Diagnostics said = known.error();
    const Purchase clean = printable(purchase, said);
    if (has_error(said)) return said;
    std::vector<Drawing> pages = laid_out(*known, clean, spec_text, kSettings.front());
    for (const Setting& setting : kSettings) {
        if (pages.size() == 1) break;
        std::vector<Drawing> close = laid_out(*known, clean, spec_text, setting);
        if (close.size() < pages.size()) pages = std::move(close);
    }
    const int sheets = static_cast<int>(pages.size());
    for (int i = 0; i < sheets; ++i) {
        Drawing& page = pages[static_cast<std::size_t>(i)];
        const Box space = drawing_space(page.width(), page.height());
        draw_title_block(page, {space.right, space.bottom}, block_of(*known, i + 1, sheets), paper.words);
    }
    return {std::move(pages), std::move(said)};
}

Result<std::string> purchase_order_pdf(const record::Spec& spec, const wire::Grade& grade,
                                       const tolerance::Tables& tables, const Paper& paper, const Purchase& purchase,
                                       const std::string& spec_text) {
    const auto pages = purchase_order(spec, grade, tables, paper, purchase, spec_text);
    if (!pages) return Diagnostics(pages.error());
    const Diagnostics& said = pages.error();
    const auto known = facts(spec, grade, tables, paper);
    const Wording& words = paper.words;
    const std::string heading = words.say("purchase.heading", {{"title", title(known->spec, words)}});
    auto bytes = write_pdf(*pages, {heading, known->spec.identity.owner, words.say("document.purchase_subject"), {}});
    if (!bytes) return Diagnostics(bytes.error());
    return {std::move(bytes).value(), said};
}

}  // namespace seatload::sheet
