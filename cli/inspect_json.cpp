// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>
#include <seatload/inspection/protection.hpp>
#include <seatload/inspection/sentences.hpp>
#include <seatload/inspection/set_loss.hpp>
#include <seatload/record/lot.hpp>

#include <cli/inspect_view.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;
using inspection::Finding;
using inspection::Judged;
using inspection::LotInspection;

Json number_or_null(const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); }

Json limits(const inspection::Limits& limits) {
    return {{"least", number_or_null(limits.least)}, {"most", number_or_null(limits.most)}};
}

std::string word(Finding finding) {
    return finding == Finding::inside ? "inside" : finding == Finding::outside ? "outside" : "unproven";
}

Json summary(const Judged& j) {
    const inspection::Summary& s = *j.summary;
    Json json{{"count", s.count},
              {"mean", s.mean},
              {"mean_within", s.count > 1 ? Json(s.mean_within) : Json(nullptr)},
              {"deviation", s.count > 1 ? Json(s.deviation) : Json(nullptr)},
              {"least", s.least},
              {"most", s.most},
              {"tolerance_factor", s.factor > 0.0 ? Json(s.factor) : Json(nullptr)},
              {"tolerance_interval", limits(s.interval)},
              {"cpk_at_least", s.capability ? Json(s.capability->at_least) : Json(nullptr)},
              {"cpk_estimate", s.capability ? Json(s.capability->estimate) : Json(nullptr)}};
    if (j.sequence)
        json["order"] = {{"runs", j.sequence->runs},
                         {"chance_of_so_few_runs", j.sequence->few},
                         {"rising_less_falling_pairs", j.sequence->s},
                         {"chance_of_such_a_trend", j.sequence->trend}};
    return json;
}

Json characteristic(const Judged& j) {
    const auto kind = j.characteristic.kind;
    Json json{{"name", key(kind)},
              {"unit", unit(kind)},
              {"decides", j.decides()},
              {"nominal", j.characteristic.nominal},
              {"limits", limits(j.characteristic.limits)},
              {"uncertainty", j.expanded},
              {"wanted", j.wanted},
              {"measured", j.measured()},
              {"inside", j.inside},
              {"unproven", j.unproven},
              {"outside", j.outside},
              {"verdict", word(j.verdict)},
              {"why", j.why}};
    if (const auto& further = j.characteristic.further_by_tips)
        json["further_by_tips"] = {
            {"most", further->most}, {"degrees", further->degrees}, {"pieces", j.by_tips}, {"open", j.want_tips}};
    if (j.summary) json["statistics"] = summary(j);
    return json;
}

Json piece(const LotInspection& lot, std::size_t place) {
    const inspection::Piece& p = lot.samples.pieces[place];
    Json json{{"piece", p.name}, {"values", Json::object()}, {"after", Json::object()}};
    for (const Judged& j : lot.characteristics) {
        const auto kind = j.characteristic.kind;
        const std::string name(key(kind));
        if (const auto value = p.values.find(kind); value != p.values.end())
            json["values"][name] = {{"value", value->second}, {"finding", word(*j.findings[place])}};
        if (const auto value = p.after.find(kind); value != p.after.end()) json["after"][name] = value->second;
    }
    return json;
}

/// The chance that lots of some bad shares pass.
Json passing(const LotInspection& lot) {
    Json json = Json::array();
    const int size = std::min(lot.plan.size, lot.samples.lot_size);
    for (const int percent : {1, 2, 5, 10, 20, 30}) {
        const int bad = lot.samples.lot_size * percent / 100;
        if (bad == 0 || (!json.empty() && json.back()["bad"] == bad)) continue;
        json.push_back(
            {{"bad", bad},
             {"chance", inspection::chance_of_acceptance(lot.samples.lot_size, bad, size, lot.plan.accept)}});
    }
    return json;
}

Json plan(const LotInspection& lot) {
    Json json{{"words", record::plan_words(lot.plan)},
              {"every_piece", lot.plan.every_piece},
              {"size", lot.plan.size},
              {"accept", lot.plan.accept},
              {"reject", lot.plan.reject}};
    if (lot.plan.sampling) {
        json["code_letter"] = std::string(1, lot.plan.sampling->letter);
        json["letter_used"] = std::string(1, lot.plan.sampling->used);
    }
    json["bad_lots_that_pass"] = passing(lot);
    json["fewest_bad_found_out_with_90_percent"] =
        inspection::fewest_found_out(lot.samples.lot_size, lot.plan.size, lot.plan.accept, 0.1);
    return json;
}

Json forecast(const inspection::Forecast& f) {
    Json json{{"loads", Json::array()}, {"share_good", f.share_good}, {"load_loss", number_or_null(f.load_loss)}};
    for (const inspection::LoadForecast& load : f.loads)
        json["loads"].push_back({{"mean_n", load.mean},
                                 {"deviation_within_lot_n", load.within_lot},
                                 {"deviation_any_lot_n", load.any_lot}});
    return json;
}

Json losses(const inspection::Samples& samples) {
    Json json = Json::array();
    for (const inspection::SetLoss& loss : inspection::set_losses(samples))
        json.push_back({{"name", key(loss.kind)},
                        {"count", loss.count},
                        {"mean_share", loss.mean},
                        {"largest_share", loss.largest},
                        {"piece", loss.piece}});
    return json;
}

}  // namespace

Json inspect_json(const InspectView& view) {
    const LotInspection& lot = view.lot;
    const inspection::Samples& s = lot.samples;
    Json json{{"file", view.file},
              {"spec",
               {{"number", view.spec.identity.number},
                {"revision", view.spec.identity.revision},
                {"sha256", view.spec_sha256}}},
              {"lot",
               {{"name", s.name},
                {"date", s.date},
                {"maker", s.maker},
                {"pieces", s.lot_size},
                {"inspected", s.pieces.size()}}},
              {"plan", plan(lot)},
              {"verdict", word(lot.verdict)},
              {"conditions", lot.conditions},
              {"reasons", lot.reasons},
              {"next", inspection::next_sentence(lot)},
              {"remarks", lot.remarks},
              {"characteristics", Json::array()},
              {"pieces", Json::array()}};
    for (const Judged& j : lot.characteristics)
        if (j.measured() > 0 || j.wanted > 0) json["characteristics"].push_back(characteristic(j));
    for (std::size_t i = 0; i < s.pieces.size(); ++i) json["pieces"].push_back(piece(lot, i));
    json["foretold"] = view.forecast ? forecast(*view.forecast) : Json(nullptr);
    json["set"] = {{"treatment", s.treatment}, {"conditions", s.conditions}, {"losses", losses(s)}};
    return json;
}

}  // namespace seatload::cli
