// SPDX-License-Identifier: MIT
#include <numbers>

#include <nlohmann/json.hpp>
#include <seatload/io/wire_words.hpp>

#include <cli/budget_view.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;
using demand::Interval;

Json band(const demand::LoadBand& b) {
    Json json{{"at_least_n", nullptr}, {"at_most_n", nullptr}};
    if (b.at_least) json["at_least_n"] = in_newton(*b.at_least);
    if (b.at_most) json["at_most_n"] = in_newton(*b.at_most);
    return json;
}

Json ends(double low, double high) { return {low, high}; }
Json ends(const Interval<Stress>& r) { return ends(in_bar(r.low), in_bar(r.high)); }
Json ends(const Interval<Force>& r) { return ends(in_newton(r.low), in_newton(r.high)); }
Json ends(const Interval<double>& r) { return ends(r.low, r.high); }

Json term(const demand::BudgetTerm& t) {
    return {{"symbol", t.symbol}, {"what", t.words}, {"value_n", in_newton(t.value)}, {"share", t.share}};
}

Json corner(const demand::CornerValue& c) {
    Json json{{"symbol", c.symbol}, {"what", c.words}, {"value", c.text}, {"end", nullptr}};
    if (c.is_range) json["end"] = c.is_high ? "highest" : "lowest";
    return json;
}

Json limit(const demand::BudgetLimit& l) {
    Json json{{"limit", l.id},
              {"title", l.title},
              {"load", l.place == demand::LoadPlace::seated ? "seated" : "full travel"},
              {"sense", l.bound == demand::Bound::at_least ? "at least" : "at most"},
              {"value_n", in_newton(l.value)},
              {"bites", l.bites},
              {"formula", l.formula},
              {"numbers", l.numbers},
              {"where", l.where},
              {"source", l.source},
              {"evidence", io::Form<wire::Evidence>::text(l.evidence)}};
    json["terms"] = Json::array();
    for (const auto& each : l.terms) json["terms"].push_back(term(each));
    json["corner"] = Json::array();
    for (const auto& each : l.corner) json["corner"].push_back(corner(each));
    return json;
}

Json behaviour(const demand::PlungerBehaviour& b) {
    Json json{{"with", b.words},
              {"seated_n", ends(b.loads.seated)},
              {"full_travel_n", ends(b.loads.full_travel)},
              {"crack_bar", ends(b.crack)},
              {"fully_open_bar", ends(b.fully_open)},
              {"return_start_bar", ends(b.return_start)},
              {"reseat_bar", ends(b.reseat)},
              {"blowdown", ends(b.blowdown)},
              {"area_ratio", ends(b.area_ratio)},
              {"load_ratio", ends(b.load_ratio)},
              {"least_annulus_share", ends(b.least_share)},
              {"snaps", b.always_snaps  ? "always"
                        : b.never_snaps ? "never"
                                        : "sometimes"},
              {"cold_return_s", nullptr}};
    if (b.cold_return) json["cold_return_s"] = ends(in_second(b.cold_return->low), in_second(b.cold_return->high));
    return json;
}

}  // namespace

Json contradictions_json(const demand::Budget& budget) {
    Json array = Json::array();
    for (const demand::Contradiction& each : budget.contradictions)
        array.push_back({{"words", each.words},
                         {"ways_out", each.ways_out},
                         {"lower", budget.limits[each.lower].id},
                         {"upper", budget.limits[each.upper].id}});
    return array;
}

Json budget_json(const BudgetView& v) {
    Json json{{"plunger", v.file}, {"possible", v.budget.is_possible()}};
    json["seated"] = band(v.budget.seated_rounded);
    json["full_travel"] = band(v.budget.full_travel_rounded);
    json["seated_exact"] = band(v.budget.seated);
    json["full_travel_exact"] = band(v.budget.full_travel);
    json["contradictions"] = contradictions_json(v.budget);
    json["leak_bar"] = v.budget.leak_pressure ? ends(*v.budget.leak_pressure) : Json(nullptr);
    json["self_holding_deg"] = nullptr;
    if (const auto& angle = v.budget.self_holding) {
        constexpr double kDegrees = 180.0 / std::numbers::pi;
        json["self_holding_deg"] = ends(in_base_unit(angle->low) * kDegrees, in_base_unit(angle->high) * kDegrees);
    }
    json["limits"] = Json::array();
    for (const auto& each : v.budget.limits) json["limits"].push_back(limit(each));
    json["behaviours"] = Json::array();
    for (const auto& each : v.budget.behaviours) json["behaviours"].push_back(behaviour(each));
    if (v.plunger.spring) json["spring_breaks"] = broken_titles(v);
    return json;
}

}  // namespace seatload::cli
