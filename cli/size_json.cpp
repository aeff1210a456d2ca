// SPDX-License-Identifier: MIT
#include <cmath>

#include <nlohmann/json.hpp>
#include <seatload/sizing/best_at.hpp>

#include <cli/budget_view.hpp>
#include <cli/evaluation_view.hpp>
#include <cli/outlook_view.hpp>
#include <cli/size_shortfall.hpp>
#include <cli/size_tight.hpp>
#include <cli/size_view.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;

Json rejections(const sizing::Census& census) {
    Json array = Json::array();
    const auto rules = check::rules();
    for (std::size_t i = 0; i < rules.size(); ++i)
        array.push_back({{"rule", rules[i].id},
                         {"name", rules[i].name},
                         {"rejects", census.rejections[i].all ? Json(*census.rejections[i].all) : Json(nullptr)},
                         {"only_it_rejects", census.rejections[i].alone}});
    return array;
}

Json best_at(const sizing::Alternative& alternative) {
    Json array = Json::array();
    for (const demand::Criterion criterion : alternative.best_at) array.push_back(sizing::word(criterion));
    return array;
}

Json offer(const SizeView& v, const Offer& o) {
    const auto& grade = v.space.grades[v.space.wires[o.alternative.candidate.wire].grade];
    const sizing::Merit& merit = o.alternative.candidate.merit;
    Json json{{"alternative", o.spec.alternative},
              {"why", o.spec.why},
              {"tolerance_room", merit.tolerance_room},
              {"stress_margin", merit.stress_margin},
              {"wire_cost", std::isfinite(merit.cost) ? Json(1e6 * merit.cost) : Json(nullptr)},
              {"release_force_n", v.space.demand.release_counts ? Json(merit.release_n) : Json(nullptr)},
              {"best_at", best_at(o.alternative)},
              {"in_pareto_set", o.alternative.is_on_front}};
    json["spring"] = evaluation_json({v.file, "", grade, v.requirement, o.evaluation, Judge::requirement});
    json["tolerances"] = o.outlook ? outlook_json(*o.outlook) : Json(nullptr);
    return json;
}

}  // namespace

Json size_json(const SizeView& v) {
    Json json{{"requirement", v.file}, {"looked_at", v.census.looked_at}, {"fit", v.census.fit}};
    json["grid"] = {{"mean_diameter_step_mm", in_mm(v.requirement.grid.mean_diameter_step)},
                    {"total_coils_step", v.requirement.grid.total_coils_step},
                    {"free_length_step_mm", in_mm(v.requirement.grid.free_length_step)},
                    {"wires", v.space.wires.size()},
                    {"total_coils", v.space.total_coils.count},
                    {"free_lengths", v.space.free_lengths.count}};
    json["rejections"] = rejections(v.census);
    json["rejects_counted"] = v.census.counts_all_rejections();
    json["left_out"] = Json::array();
    for (const auto& grade : v.space.left_out)
        json["left_out"].push_back({{"grade", grade.grade}, {"reason", grade.reason}});
    json["fit_if_seat_held"] = v.held_seat ? Json(v.held_seat->fit) : Json(nullptr);
    json["shortfall"] = v.shortfall ? shortfall_json(*v.shortfall) : Json(nullptr);
    json["front"] = v.census.front.size();
    json["maker"] = v.requirement.maker;
    json["alternatives"] = Json::array();
    for (const Offer& each : v.offers) json["alternatives"].push_back(offer(v, each));
    json["tight_limits"] = v.tight ? tight_json(*v.tight) : Json(nullptr);
    return json;
}

Json contradicted_json(const std::string& file, const demand::Budget& budget) {
    return {{"requirement", file},
            {"looked_at", 0},
            {"fit", 0},
            {"contradictions", contradictions_json(budget)},
            {"alternatives", Json::array()}};
}

}  // namespace seatload::cli
