// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>
#include <seatload/spring/ends.hpp>

#include <cli/json_words.hpp>
#include <cli/reply_view.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;

Json amount_or_null(const std::optional<record::Money>& money) {
    return money ? Json(record::money_text(*money)) : Json();
}
Json share(const std::optional<Share>& part) { return part ? Json(part->value) : Json(); }
Json millimetres(const std::optional<Length>& length) { return length ? Json(in_mm(*length)) : Json(); }

template <class T>
Json plain(const std::optional<T>& value) {
    return value ? Json(*value) : Json();
}

Json enquiry(const record::Enquired& e) {
    return {{"number", text_or_null(e.number)}, {"revision", text_or_null(e.revision)},
            {"title", text_or_null(e.title)},   {"alternatives", e.alternatives},
            {"quantities", e.quantities},       {"mark", text_or_null(e.mark)}};
}

Json maker(const record::Maker& m) {
    return {{"firm", text_or_null(m.firm)},
            {"person", text_or_null(m.person)},
            {"quotation", text_or_null(m.quotation)},
            {"date", text_or_null(m.date)},
            {"valid_until", text_or_null(m.valid_until)},
            {"currency", text_or_null(m.currency)},
            {"delivery_terms", text_or_null(m.delivery_terms)},
            {"certificates", text_or_null(m.certificates)}};
}

Json charges(const record::Charges& c) {
    return {{"packing", amount_or_null(c.packing)},
            {"carriage", amount_or_null(c.carriage)},
            {"certificate", amount_or_null(c.certificate)},
            {"least_order", amount_or_null(c.least_order)},
            {"duty", share(c.duty)},
            {"tax", share(c.tax)}};
}

Json price(const record::Price& p) {
    return {{"quantity", p.quantity},
            {"unit_price", amount_or_null(p.unit_price)},
            {"lot_charge", amount_or_null(p.lot_charge)},
            {"lead_time_days", p.lead_time ? Json(record::calendar_days(*p.lead_time)) : Json()}};
}

Json offer(const record::Offer& o) {
    const auto& rm = o.wire.tensile_strength;
    const record::AskedChanges& c = o.changes;
    Json json{{"alternative", o.alternative}, {"quoted", o.is_quoted()}, {"tooling", amount_or_null(o.tooling)}};
    json["least_pieces"] = plain(o.least_pieces);
    json["prices"] = Json::array();
    for (const record::Price& each : o.prices) json["prices"].push_back(price(each));
    json["wire"] = {{"grade", text_or_null(o.wire.grade)},
                    {"diameter_mm", millimetres(o.wire.diameter)},
                    {"tensile_strength_mpa", rm ? Json(in_mpa(*rm)) : Json()}};
    json["changes"] = {{"outside_diameter_mm", millimetres(c.outside_diameter)},
                       {"total_coils", plain(c.total_coils)},
                       {"free_length_mm", millimetres(c.free_length)},
                       {"ends", c.ends ? Json(spring::word(*c.ends)) : Json()},
                       {"load_grade", plain(c.load_grade)},
                       {"diameter_grade", plain(c.diameter_grade)},
                       {"tips_degrees", plain(c.tips_degrees)},
                       {"note", text_or_null(c.note)}};
    return json;
}

}  // namespace

Json reply_json(const ReplyView& view) {
    const record::Reply& reply = view.reply;
    Json json{{"file", view.file}, {"quoted", reply.is_quoted()}};
    json["enquiry"] = enquiry(reply.enquiry);
    json["maker"] = maker(reply.maker);
    json["charges"] = charges(reply.charges);
    json["offers"] = Json::array();
    for (const record::Offer& each : reply.offers) json["offers"].push_back(offer(each));
    return json;
}

}  // namespace seatload::cli
