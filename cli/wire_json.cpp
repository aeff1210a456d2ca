// SPDX-License-Identifier: MIT
#include <cmath>

#include <nlohmann/json.hpp>

#include <seatload/io/wire_words.hpp>
#include <seatload/wire/strength.hpp>

#include <cli/wire_view.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;

template <class Value>
Json or_null(const std::optional<Value>& value) {
    return value ? Json(*value) : Json(nullptr);
}

Json finite_mm(Length length) { return std::isinf(in_mm(length)) ? Json(nullptr) : Json(in_mm(length)); }

Json mpa_or_null(const std::optional<Stress>& stress) { return stress ? Json(in_mpa(*stress)) : Json(nullptr); }

template <class Value>
std::string text_of(Value value) {
    return std::string(io::Form<Value>::text(value));
}

Json strength_json(const wire::StrengthTable& table) {
    Json rows = Json::array();
    for (const wire::StrengthRow& row : table.rows)
        rows.push_back({{"wire_diameter_mm", in_mm(row.diameter)},
                        {"minimum_mpa", in_mpa(row.minimum)},
                        {"maximum_mpa", mpa_or_null(row.maximum)},
                        {"evidence", text_of(row.evidence)}});
    return {{"kind", "table"}, {"lookup", text_of(table.lookup)}, {"rows", std::move(rows)}};
}

Json strength_json(const wire::StrengthLaw& law) {
    return {{"kind", "law"}, {"a_mpa", law.a_mpa}, {"exponent", law.exponent}};
}

Json strength_json(const wire::StrengthGiven& given) {
    return {{"kind", "given"}, {"minimum_mpa", in_mpa(given.minimum)}};
}

Json strength_json(const wire::Grade& grade) {
    Json json = std::visit([](const auto& strength) { return strength_json(strength); }, grade.strength);
    const wire::DiameterRange range = wire::strength_range(grade);
    json["smallest_diameter_mm"] = in_mm(range.smallest);
    json["largest_diameter_mm"] = finite_mm(range.largest);
    json["weakest_evidence"] = text_of(wire::strength_evidence(grade));
    return json;
}

Json moduli_json(const wire::Grade& grade) {
    Json rows = Json::array();
    for (const wire::ModuliRow& row : grade.moduli)
        rows.push_back({{"up_to_mm", finite_mm(row.up_to)},
                        {"shear_modulus_mpa", in_mpa(row.shear)},
                        {"young_modulus_mpa", in_mpa(row.young)}});
    return rows;
}

Json tolerance_json(const wire::Grade& grade) {
    Json rows = Json::array();
    for (const wire::ToleranceRow& row : grade.diameter_tolerance)
        rows.push_back({{"up_to_mm", in_mm(row.up_to)},
                        {"plus_minus_mm", in_mm(row.plus_minus)},
                        {"evidence", text_of(row.evidence)}});
    return rows;
}

Json load_loss_json(const wire::Grade& grade) {
    if (!grade.load_loss) return nullptr;
    Json points = Json::array();
    for (const auto& [at, share] : grade.load_loss->points)
        points.push_back({{"temperature_c", at.degrees}, {"share", share ? Json(share->value) : Json(nullptr)}});
    return {{"row", grade.load_loss->material}, {"analogy", grade.load_loss->analogy},
            {"basis", grade.load_loss->basis},  {"evidence", text_of(grade.load_loss->evidence)},
            {"warning", kLoadLossWarning},      {"points", std::move(points)}};
}

Json stress_relief_json(const wire::Grade& grade) {
    if (!grade.stress_relief) return nullptr;
    const wire::StressRelief& relief = *grade.stress_relief;
    return {{"row", relief.material},
            {"remark", relief.analogy},
            {"temperature", relief.temperature},
            {"time", relief.time},
            {"evidence", text_of(relief.evidence)}};
}

Json at_diameter_json(const wire::Grade& grade, Length diameter) {
    const auto strength = wire::strength_at(grade, diameter);
    const wire::Moduli moduli = wire::moduli_at(grade, diameter);
    const auto tolerance = wire::diameter_tolerance_at(grade, diameter);
    return {{"wire_diameter_mm", in_mm(diameter)},
            {"minimum_mpa", in_mpa(strength->minimum)},
            {"maximum_mpa", mpa_or_null(strength->maximum)},
            {"evidence", text_of(strength->evidence)},
            {"shear_modulus_mpa", in_mpa(moduli.shear)},
            {"young_modulus_mpa", in_mpa(moduli.young)},
            {"diameter_tolerance_mm", tolerance ? Json(in_mm(*tolerance)) : Json(nullptr)}};
}

Json stock_json(const WireView& view, const wire::Grade& grade) {
    Json sizes = Json::array();
    for (const wire::StockSize& size : wire::stock_sizes(view.catalogue, grade, view.series)) {
        Json entry{{"name", size.name}, {"size_evidence", text_of(size.evidence)}};
        entry.update(at_diameter_json(grade, size.diameter));
        sizes.push_back(std::move(entry));
    }
    const bool is_held = !view.catalogue.holdings.empty();
    return {
        {"series", is_held ? Json(nullptr) : Json(view.series)}, {"is_holding", is_held}, {"sizes", std::move(sizes)}};
}

Json provenance_json(const wire::Grade& grade) {
    Json entries = Json::array();
    for (const wire::Provenance& p : grade.provenance)
        entries.push_back({{"property", p.property}, {"evidence", text_of(p.evidence)}, {"source", p.source}});
    return entries;
}

Json head_json(const wire::Grade& grade) {
    return {{"id", grade.id},
            {"standard", grade.standard},
            {"designation", grade.designation},
            {"family", text_of(grade.family)},
            {"family_text", grade.family_text},
            {"material_number", grade.material_number}};
}

Json grade_json(const WireView& view, const wire::Grade& grade) {
    const wire::TorsionalYield yield = wire::torsional_yield(grade.family);
    Json json = head_json(grade);
    json["strength"] = strength_json(grade);
    json["moduli"] = moduli_json(grade);
    json["density_kg_per_m3"] = in_kg_per_m3(grade.density);
    json["shear_modulus_loss_per_kelvin"] = grade.shear_modulus_loss_per_kelvin;
    json["service_limit_c"] = grade.service_limit.degrees;
    json["static_duty_only"] = grade.static_duty_only;
    json["torsional_yield"] = {{"share_of_rm", yield.share.value}, {"evidence", text_of(yield.evidence)}};
    json["relative_cost"] = or_null(grade.relative_cost);
    json["diameter_tolerance"] = tolerance_json(grade);
    json["stress_relief"] = stress_relief_json(grade);
    json["load_loss"] = load_loss_json(grade);
    json["stock"] = stock_json(view, grade);
    json["note"] = grade.note;
    json["provenance"] = provenance_json(grade);
    json["sources"] = Json::array();
    for (const wire::Source* source : sources_of(view.catalogue, grade))
        json["sources"].push_back({{"key", source->key}, {"kind", source->kind}, {"title", source->title}});
    return json;
}

Json list_json(const WireView& view) {
    Json grades = Json::array();
    for (const wire::Grade& grade : view.catalogue.grades) {
        if (view.diameter && !wire::strength_at(grade, *view.diameter)) continue;
        const wire::DiameterRange range = wire::strength_range(grade);
        Json json = head_json(grade);
        json["smallest_diameter_mm"] = in_mm(range.smallest);
        json["largest_diameter_mm"] = finite_mm(range.largest);
        json["service_limit_c"] = grade.service_limit.degrees;
        json["weakest_evidence"] = text_of(wire::strength_evidence(grade));
        if (view.diameter) json["at"] = at_diameter_json(grade, *view.diameter);
        grades.push_back(std::move(json));
    }
    return {{"grades", std::move(grades)}, {"series", view.catalogue.series_ids()}};
}

}  // namespace

std::string wire_json(const WireView& view) {
    Json json;
    if (view.grade == nullptr) {
        json = list_json(view);
    } else if (view.diameter) {
        json = head_json(*view.grade);
        json["at"] = at_diameter_json(*view.grade, *view.diameter);
    } else {
        json = grade_json(view, *view.grade);
    }
    return json.dump(2) + '\n';
}

}  // namespace seatload::cli
