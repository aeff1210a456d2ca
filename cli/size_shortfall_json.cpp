// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>

#include <cli/size_shortfall.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;

Json json_of(const sizing::Proof& proof) {
    const spring::Spring& s = proof.spring;
    return {{"wire", proof.grade},
            {"wire_diameter_mm", in_mm(s.wire_diameter)},
            {"mean_diameter_mm", in_mm(s.mean_diameter)},
            {"outside_diameter_mm", in_mm(s.outside_diameter())},
            {"total_coils", s.total_coils},
            {"free_length_mm", in_mm(s.free_length)},
            {"ends", spring::word(s.ends)}};
}

Json json_of(const sizing::Relief& relief) {
    Json numbers = Json::array();
    for (const sizing::EasedNumber& n : relief.numbers)
        numbers.push_back({{"quantity", n.easing->id},
                           {"bound", n.easing->bound},
                           {"unit", n.easing->unit},
                           {"now", n.now},
                           {"needed", n.needed},
                           {"edge", n.edge},
                           {"guards_against_failure", n.easing->is_safeguard}});
    return {{"numbers", numbers}, {"change", relief.change}, {"spring", json_of(relief.proof)}};
}

Json json_of(const std::vector<sizing::Relief>& reliefs) {
    Json array = Json::array();
    for (const sizing::Relief& relief : reliefs) array.push_back(json_of(relief));
    return array;
}

}  // namespace

Json shortfall_json(const sizing::Shortfall& shortfall) {
    Json json{{"contradictions", Json::array()},
              {"one_number", json_of(shortfall.reliefs)},
              {"other_changes", Json::array()},
              {"numbers_together", json_of(shortfall.joint)}};
    for (const sizing::RuleSet set : shortfall.contradictions) {
        Json rules = Json::array();
        for (const std::size_t rule : sizing::indices(set)) rules.push_back(check::rules()[rule].id);
        json["contradictions"].push_back(rules);
    }
    for (const sizing::AlteredRelief& relief : shortfall.altered)
        json["other_changes"].push_back(
            {{"change", relief.id}, {"words", relief.words}, {"spring", json_of(relief.proof)}});
    return json;
}

}  // namespace seatload::cli
