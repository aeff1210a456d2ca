// SPDX-License-Identifier: MIT
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/reply_forms.hpp>
#include <seatload/spring/ends.hpp>

#include <cli/reply_view.hpp>
#include <cli/text_table.hpp>
#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

using record::Money;

std::string amount(const std::optional<Money>& money) { return money ? record::money_text(*money) : std::string("-"); }

std::string percent(const Share& share) { return significant(100.0 * share.value, 6) + " %"; }

/// The parts that say something, with commas between.
class Said {
  public:
    void add(const std::string& name, const std::string& value) {
        if (!value.empty()) parts_.push_back(name.empty() ? value : name + ' ' + value);
    }
    void add(const std::string& name, const std::optional<Money>& money) {
        if (money) add(name, record::money_text(*money));
    }
    void add(const std::string& name, const std::optional<Length>& length) {
        if (length) add(name, shortest(in_mm(*length)) + " mm");
    }
    void add(const std::string& name, const std::optional<Share>& share) {
        if (share) add(name, percent(*share));
    }
    std::string text() const { return join(parts_, ", "); }

  private:
    std::vector<std::string> parts_;
};

std::string head(const ReplyView& view, int width) {
    const record::Enquired& enquiry = view.reply.enquiry;
    const record::Maker& maker = view.reply.maker;
    Said said;
    said.add("", maker.firm.empty() ? std::string("firm not named") : cut_name(maker.firm, width));
    said.add("to enquiry", enquiry.number.empty() || enquiry.revision.empty()
                               ? enquiry.number
                               : enquiry.number + " revision " + enquiry.revision);
    said.add("quotation", cut_name(maker.quotation, width));
    said.add("of", maker.date);
    said.add("valid until", maker.valid_until);
    return wrapped(view.file + ": ", said.text(), width, 2);
}

std::string terms(const record::Reply& reply, int width) {
    Said said;
    said.add("delivery", reply.maker.delivery_terms);
    said.add("packing", reply.charges.packing);
    said.add("carriage", reply.charges.carriage);
    said.add("certificate", reply.charges.certificate);
    said.add("certificates:", reply.maker.certificates);
    said.add("least order", reply.charges.least_order);
    said.add("duty", reply.charges.duty);
    said.add("tax", reply.charges.tax);
    return said.text().empty() ? "" : wrapped("  Terms, amounts a lot: ", said.text() + ".", width, 4);
}

std::string lead_time(const std::optional<record::LeadTime>& time) {
    if (!time) return "-";
    const std::string quoted = io::Form<record::LeadTime>::write(*time);
    return quoted.substr(1, quoted.size() - 2);
}

std::string price_table(const record::Reply& reply) {
    using enum TextTable::Align;
    TextTable table({left, right, right, right, right, right});
    table.add({"", "pieces", "each", "a lot", "once", "lead time"});
    for (const record::Offer& offer : reply.offers) {
        if (!offer.is_quoted()) table.add({offer.alternative, "-", "-", "-", amount(offer.tooling), "-"});
        for (const record::Price& price : offer.prices)
            if (price.unit_price)
                table.add({offer.alternative, std::to_string(price.quantity), amount(price.unit_price),
                           amount(price.lot_charge), amount(offer.tooling), lead_time(price.lead_time)});
    }
    return table.text(2);
}

std::string wire(const record::HeldWire& held) {
    Said said;
    said.add("", held.grade);
    said.add("", held.diameter);
    if (held.tensile_strength) said.add("Rm", shortest(in_mpa(*held.tensile_strength)) + " MPa");
    return said.text();
}

std::string changes(const record::Offer& offer) {
    const record::AskedChanges& asked = offer.changes;
    Said said;
    said.add("wire", wire(offer.wire));
    said.add("De", asked.outside_diameter);
    if (asked.total_coils) said.add("nt", shortest(*asked.total_coils));
    said.add("L0", asked.free_length);
    if (asked.ends) said.add("ends", std::string(spring::word(*asked.ends)));
    if (asked.load_grade) said.add("loads to EN 15800 grade", std::to_string(*asked.load_grade));
    if (asked.diameter_grade) said.add("coil diameter to EN 15800 grade", std::to_string(*asked.diameter_grade));
    if (asked.tips_degrees) said.add("end tips 180° ±", shortest(*asked.tips_degrees) + "° apart");
    if (offer.least_pieces) said.add("at least", std::to_string(*offer.least_pieces) + " pieces");
    said.add("note:", asked.note);
    return said.text();
}

}  // namespace

std::string reply_text(const ReplyView& view, int width) {
    const record::Reply& reply = view.reply;
    std::string text = head(view, width) + terms(reply, width);
    if (!reply.is_quoted()) return text + "  Nothing is quoted yet.\n";
    text += "\nPrices in " + reply.maker.currency + "\n" + price_table(reply);
    std::string asked;
    for (const record::Offer& offer : reply.offers)
        if (const std::string words = changes(offer); !words.empty())
            asked += wrapped("  " + offer.alternative + ": ", words + ".", width, 5);
    return asked.empty() ? text : text + "\nOtherwise than on the sheet\n" + asked;
}

}  // namespace seatload::cli
