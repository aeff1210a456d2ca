// SPDX-License-Identifier: MIT
#include <numbers>

#include <nlohmann/json.hpp>
#include <seatload/io/wire_words.hpp>

#include <cli/evaluation_view.hpp>
#include <cli/measured_view.hpp>
#include <cli/outlook_view.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;

Json at_length(const check::AtLength& at) {
    return {{"length_mm", in_mm(at.length)},
            {"deflection_mm", in_mm(at.deflection)},
            {"load_n", in_newton(at.load)},
            {"load_in_service_n", in_newton(at.load_in_service)},
            {"stress_mpa", in_mpa(at.stress)},
            {"corrected_stress_mpa", in_mpa(at.corrected_stress)},
            {"share_of_strength", at.share_of_strength}};
}

Json verdict(const check::Verdict& v) {
    return {{"rule", v.rule->id},       {"subject", v.rule->subject},
            {"unit", v.rule->unit},     {"value", v.measure.value},
            {"limit", v.measure.limit}, {"sense", v.rule->sense == check::Sense::at_least ? "at least" : "at most"},
            {"margin", v.margin},       {"passed", v.passed},
            {"source", v.source}};
}

Json sideways(const check::Sideways& s) {
    Json json{{"play_mm", in_mm(s.play)},
              {"stiffness_n_per_mm", nullptr},
              {"combined_stress_mpa", in_mpa(s.combined_stress)}};
    if (s.stiffness) json["stiffness_n_per_mm"] = in_newton_per_mm(*s.stiffness);
    return json;
}

void add_spring(Json& json, const spring::Spring& s) {
    json["wire_diameter_mm"] = in_mm(s.wire_diameter);
    json["mean_diameter_mm"] = in_mm(s.mean_diameter);
    json["outside_diameter_mm"] = in_mm(s.outside_diameter());
    json["inside_diameter_mm"] = in_mm(s.inside_diameter());
    json["total_coils"] = s.total_coils;
    json["free_length_mm"] = in_mm(s.free_length);
    json["ends"] = spring::word(s.ends);
    json["hand"] = spring::word(s.hand);
}

void add_mechanics(Json& json, const check::Evaluation& e) {
    json["tensile_strength_mpa"] = in_mpa(e.strength.minimum);
    json["tensile_strength_evidence"] = io::Form<wire::Evidence>::text(e.strength.evidence);
    json["shear_modulus_mpa"] = in_mpa(e.moduli.shear);
    json["young_modulus_mpa"] = in_mpa(e.moduli.young);
    json["index"] = e.index;
    json["active_coils"] = e.active_coils;
    json["stress_factor"] = e.stress_factor;
    json["rate_n_per_mm"] = in_newton_per_mm(e.rate);
    json["rate_in_service_n_per_mm"] = in_newton_per_mm(e.rate_hot);
    json["pitch_mm"] = in_mm(e.pitch);
    json["helix_angle_deg"] = in_base_unit(e.helix_angle) * 180.0 / std::numbers::pi;
    json["wire_length_mm"] = in_mm(e.wire_length);
    json["mass_g"] = in_gram(e.mass);
    json["solid_length_mm"] = in_mm(e.solid_length);
    json["smallest_gaps_mm"] = in_mm(e.smallest_gaps);
    json["smallest_length_mm"] = in_mm(e.smallest_length);
    json["growth_ends_free_mm"] = in_mm(e.growth_ends_free);
    json["growth_ends_held_mm"] = in_mm(e.growth_ends_held);
    json["seating_coefficient"] = e.seating_coefficient;
    json["stable_slenderness"] = e.stable_slenderness;
    json["buckling_deflection_mm"] = e.buckling_deflection ? Json(in_mm(*e.buckling_deflection)) : Json(nullptr);
    json["natural_frequency_hz"] = in_hertz(e.natural_frequency);
}

Json measured_verdict(const record::MeasuredVerdict& v) {
    const auto word = v.proof == record::Proof::kept ? "kept" : v.proof == record::Proof::broken ? "broken" : "unsure";
    return {{"name", v.name},
            {"load_n", in_newton(v.load.value)},
            {"plus_minus_n", in_newton(v.load.plus_minus)},
            {"limit_n", in_newton(v.limit)},
            {"sense", v.sense == check::Sense::at_least ? "at least" : "at most"},
            {"proof", word}};
}

Json tips_json(const check::Tips& t) {
    const auto degrees = [](double turns) { return 360.0 * turns; };
    return {{"usual_plus_minus_deg", degrees(t.usual)},
            {"ordered_plus_minus_deg", degrees(t.ordered)},
            {"room_left_up_to_deg", degrees(t.leaves_room)},
            {"lean_at_most_mm", std::isfinite(t.most_lean_mm) ? Json(t.most_lean_mm) : Json(nullptr)},
            {"room_mm", t.room_mm},
            {"is_enough", t.is_enough()}};
}

}  // namespace

Json evaluation_json(const EvaluationView& v) {
    const check::Evaluation& e = v.evaluation;
    Json json{{"file", v.file},
              {"name", v.name},
              {"fits", v.fits()},
              {"school", spring::word(v.requirement.limits.school)},
              {"wire_grade", v.grade.id}};
    add_spring(json, e.spring);
    add_mechanics(json, e);
    json["temperature_c"] =
        v.is_temperature_stated ? Json(v.requirement.surroundings.temperature.degrees) : Json(nullptr);
    json["load_loss_share"] = e.load_loss;
    json["seated"] = e.seated ? at_length(*e.seated) : Json(nullptr);
    json["full_travel"] = e.full_travel ? at_length(*e.full_travel) : Json(nullptr);
    json["at_smallest_length"] = at_length(e.at_smallest_length);
    json["at_solid_theoretical"] = at_length(e.at_solid);
    json["sideways"] = e.sideways ? sideways(*e.sideways) : Json(nullptr);
    json["tips"] = e.tips ? tips_json(*e.tips) : Json(nullptr);
    json["measured"] = v.measured != nullptr ? measured_json(*v.measured, e) : Json(nullptr);
    if (v.measured != nullptr) {
        json["measured"]["verdicts"] = Json::array();
        for (const record::MeasuredVerdict& each : v.measured_verdicts)
            json["measured"]["verdicts"].push_back(measured_verdict(each));
    }
    json["verdicts"] = Json::array();
    for (const check::Verdict& each : e.verdicts) json["verdicts"].push_back(verdict(each));
    if (v.outlook != nullptr) json["tolerances"] = outlook_json(*v.outlook);
    return json;
}

}  // namespace seatload::cli
