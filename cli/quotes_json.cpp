// SPDX-License-Identifier: MIT

#include <nlohmann/json.hpp>
#include <seatload/spring/ends.hpp>

#include <cli/json_words.hpp>
#include <cli/quotes_view.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;
using record::Exact;
using record::lot_text;

Json cost(const record::LandedCost& c) {
    return {{"pieces", c.pieces},
            {"price_of", c.priced_as},
            {"each", record::piece_text(c.each())},
            {"total", lot_text(c.total)},
            {"next_lot", lot_text(c.again)},
            {"price", lot_text(c.price)},
            {"set_up", lot_text(c.set_up)},
            {"tooling", lot_text(c.tooling)},
            {"certificate", lot_text(c.certificate)},
            {"packing", lot_text(c.packing)},
            {"carriage", lot_text(c.carriage)},
            {"duty", lot_text(c.duty)},
            {"tax", lot_text(c.tax)},
            {"lead_time_days", c.lead_time ? Json(record::calendar_days(*c.lead_time)) : Json()},
            {"not_stated", c.open}};
}

Json quantity(const record::QuantityCost& q) {
    Json json = cost(q.cost);
    json["can_be_ordered_alone"] = !q.missed.is_stated();
    return json;
}

Json differences(const std::vector<record::Difference>& all) {
    Json json = Json::array();
    for (const record::Difference& each : all)
        json.push_back({{"what", each.name}, {"now", each.now}, {"before", each.before}});
    return json;
}

Json failures(const std::vector<record::Failure>& all) {
    Json json = Json::array();
    for (const record::Failure& each : all) json.push_back({{"rule", each.rule}, {"reason", each.reason}});
    return json;
}

Json spring(const record::CounterOffer& s) {
    const spring::Spring& coil = s.spec.spring;
    return {{"fit", record::word(s.fit)},
            {"tolerance_room", finite_or_null(s.merit.tolerance_room)},
            {"tolerance_room_as_enquired", finite_or_null(s.enquired.tolerance_room)},
            {"asked", differences(s.asked)},
            {"adjusted", differences(s.adjusted)},
            {"missing", s.missing},
            {"failures", failures(s.failures)},
            {"remarks", s.remarks},
            {"may_rub", s.lean.may_rub},
            {"lean", text_or_null(s.lean.words)},
            {"wire", s.spec.wire_grade},
            {"wire_diameter_mm", in_mm(coil.wire_diameter)},
            {"mean_diameter_mm", in_mm(coil.mean_diameter)},
            {"total_coils", coil.total_coils},
            {"free_length_mm", in_mm(coil.free_length)},
            {"ends", spring::word(coil.ends)}};
}

Json offer(const record::Comparison& all, const record::JudgedOffer& o) {
    const record::NamedReply& from = all.reply_of(o);
    const record::Maker& maker = from.reply.maker;
    Json json{{"rank", o.rank == 0 ? Json() : Json(o.rank)},
              {"maker", from.name},
              {"alternative", o.offer.alternative},
              {"quotation", text_or_null(maker.quotation)},
              {"standing", record::word(o.standing)},
              {"valid_until", text_or_null(maker.valid_until)},
              {"late", o.is_late},
              {"here_by", text_or_null(o.here_by)},
              {"currency", text_or_null(maker.currency)},
              {"certificates", text_or_null(maker.certificates)}};
    json["purchase"] = o.purchase ? cost(*o.purchase) : Json();
    json["quantities"] = Json::array();
    for (const record::QuantityCost& each : o.quantities) json["quantities"].push_back(quantity(each));
    json["spring"] = spring(o.spring);
    json["not_stated"] = o.not_stated;
    json["questions"] = o.questions;
    json["reasons"] = o.reasons;
    return json;
}

}  // namespace

Json quotes_json(const record::Comparison& all, const std::string& file) {
    Json json{{"file", file},
              {"number", text_or_null(all.enquiry.number)},
              {"revision", text_or_null(all.enquiry.revision)},
              {"need", all.terms.need},
              {"date", text_or_null(all.terms.date)},
              {"currency", all.terms.exchange.home},
              {"tax_got_back", all.terms.reclaims_tax}};
    json["rates"] = Json::object();
    for (const record::ExchangeRate& rate : all.terms.exchange.rates) json["rates"][rate.currency] = rate.text;
    json["offers"] = Json::array();
    for (const record::JudgedOffer& each : all.offers) json["offers"].push_back(offer(all, each));
    return json;
}

}  // namespace seatload::cli
