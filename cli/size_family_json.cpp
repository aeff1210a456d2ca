// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>

#include <cli/size_family_view.hpp>
#include <cli/size_shortfall.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;

Json springs_json(const FamilyView& v, const std::vector<Offer>& springs) {
    Json array = Json::array();
    for (std::size_t i = 0; i < springs.size(); ++i) {
        const Offer& o = springs[i];
        const spring::Spring& s = o.evaluation.spring;
        const sizing::Merit& merit = o.alternative.candidate.merit;
        array.push_back({{"requirement", v.members[i].run.file},
                         {"alternative", o.spec.alternative.empty() ? Json(nullptr) : Json(o.spec.alternative)},
                         {"ends", spring::word(s.ends)},
                         {"outside_diameter_mm", in_mm(s.outside_diameter())},
                         {"mean_diameter_mm", in_mm(s.mean_diameter)},
                         {"total_coils", s.total_coils},
                         {"free_length_mm", in_mm(s.free_length)},
                         {"seated_load_n", in_newton(o.evaluation.seated->load)},
                         {"full_travel_load_n", in_newton(o.evaluation.full_travel->load)},
                         {"tolerance_room", merit.tolerance_room},
                         {"stress_margin", merit.stress_margin}});
    }
    return array;
}

Json lots_json(const FamilyView& v, const std::vector<Offer>& springs) {
    Json array = Json::array();
    for (const FamilyLot& lot : lots_of(v, springs))
        array.push_back(
            {{"pieces", lot.pieces}, {"wire_length_mm", in_mm(lot.wire_length)}, {"mass_g", in_gram(lot.mass)}});
    return array;
}

Json wire_json(const FamilyView& v, const FamilyWire& wire) {
    return {{"grade", wire.grade},
            {"wire_diameter_mm", in_mm(wire.diameter)},
            {"tolerance_room", wire.merit.tolerance_room},
            {"stress_margin", wire.merit.stress_margin},
            {"springs", springs_json(v, wire.springs)},
            {"lots", lots_json(v, wire.springs)}};
}

Json common_json(const FamilyView& v) {
    Json json{{"count", v.wires_that_serve_all}, {"best", Json::array()}, {"closest", nullptr}};
    for (const FamilyWire& wire : v.wires) json["best"].push_back(wire_json(v, wire));
    if (!v.near) return json;
    Json lacks = Json::array();
    for (const sizing::WireLack& lack : v.near->lacks)
        lacks.push_back({{"requirement", v.members[lack.member].run.file}, {"shortfall", shortfall_json(lack.why)}});
    json["closest"] = {
        {"grade", v.near->grade}, {"wire_diameter_mm", in_mm(v.near->diameter)}, {"lacks", std::move(lacks)}};
    return json;
}

Json apart_json(sizing::Apart apart) {
    switch (apart) {
        case sizing::Apart::hand:
            return "hand";
        case sizing::Apart::wire:
            return "wire";
        case sizing::Apart::ends:
            return "ends";
        case sizing::Apart::mean_diameter:
            return "mean_diameter";
        case sizing::Apart::total_coils:
            return "total_coils";
        case sizing::Apart::free_length:
            return "free_length";
        case sizing::Apart::nothing:
            break;
    }
    return nullptr;
}

Json shared_json(const FamilyView& v) {
    Json json{
        {"looked_at", v.shared.looked_at}, {"fit", v.shared.fit}, {"nothing_in_common", apart_json(v.shared.apart)}};
    json["best"] = v.shared_spring ? wire_json(v, *v.shared_spring) : Json(nullptr);
    json["contradiction"] = Json::array();
    for (const sizing::MemberRule& limit : v.conflict)
        json["contradiction"].push_back(
            {{"requirement", v.members[limit.member].run.file}, {"rule", check::rules()[limit.rule].id}});
    return json;
}

}  // namespace

Json family_json(const FamilyView& v) {
    Json json{{"requirements", Json::array()}};
    for (const FamilyMember& member : v.members)
        json["requirements"].push_back(member.contradicted ? contradicted_json(member.run.file, *member.contradicted)
                                                           : size_json(member.run.view()));
    json["common_wires"] = v.all_served() ? common_json(v) : Json(nullptr);
    json["shared_springs"] = v.all_served() ? shared_json(v) : Json(nullptr);
    return json;
}

}  // namespace seatload::cli
