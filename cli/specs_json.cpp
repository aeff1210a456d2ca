// SPDX-License-Identifier: MIT
#include <cli/specs_json.hpp>

#include <cmath>

#include <nlohmann/json.hpp>
#include <seatload/spring/ends.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;

Json files_json(const std::vector<record::KeptFile>& files) {
    Json array = Json::array();
    for (const record::KeptFile& file : files) array.push_back({{"name", file.name}, {"sha256", file.sha256}});
    return array;
}

Json results_json(const record::KeyResults& results) {
    Json json{{"program", results.program}};
    const auto kinds = record::result_kinds();
    for (std::size_t i = 0; i < kinds.size(); ++i)
        if (!std::isnan(results.values[i]))
            json[std::string(kinds[i].key)] = record::shown(kinds[i], results.values[i]);
    return json;
}

}  // namespace

Json revision_json(const record::Shelf& shelf, const record::KeptRevision& revision) {
    const record::Spec& spec = revision.kept.spec;
    const record::Step& last = record::last_change(revision.kept.history);
    return {{"spec", shelf.address.text()},
            {"engine", spec.identity.engine},
            {"position", spec.identity.position},
            {"number", spec.identity.number},
            {"revision", revision.index()},
            {"state", word(revision.state)},
            {"in_force", &revision == shelf.in_force()},
            {"since", last.date},
            {"by", last.by},
            {"altered", revision.kept.is_altered()},
            {"sha256", revision.kept.sha256},
            {"file", revision.file},
            {"wire", spec.wire_grade},
            {"wire_diameter_mm", in_mm(spec.spring.wire_diameter)},
            {"mean_diameter_mm", in_mm(spec.spring.mean_diameter)},
            {"total_coils", spec.spring.total_coils},
            {"free_length_mm", in_mm(spec.spring.free_length)},
            {"ends", spring::word(spec.spring.ends)},
            {"seated_length_mm", in_mm(spec.seated.length)},
            {"seated_load_n", in_newton(spec.seated.nominal)},
            {"full_travel_length_mm", in_mm(spec.full_travel.length)},
            {"full_travel_load_n", in_newton(spec.full_travel.nominal)}};
}

Json history_json(const record::History& history) {
    Json array = Json::array();
    for (const record::Step& step : history) {
        Json json{{"is", word(step.kind)}, {"date", step.date}, {"by", step.by}, {"sha256", step.sha256}};
        if (!step.reason.empty()) json["reason"] = step.reason;
        if (!step.conditions.empty()) json["conditions"] = step.conditions;
        if (!step.note.empty()) json["note"] = step.note;
        if (step.trial_hours) json["trial_hours"] = *step.trial_hours;
        if (!step.lots.empty()) json["lots"] = files_json(step.lots);
        if (!step.files.empty()) json["files"] = files_json(step.files);
        if (step.results) json["results"] = results_json(*step.results);
        array.push_back(std::move(json));
    }
    return array;
}

}  // namespace seatload::cli
