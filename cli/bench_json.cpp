// SPDX-License-Identifier: MIT

#include <nlohmann/json.hpp>
#include <seatload/io/wire_words.hpp>

#include <cli/bench_view.hpp>
#include <cli/json_words.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;

/// A number, or null when it has no bound: JSON knows no infinity.
template <class Q>
Json estimate(const bench::Estimate<Q>& e, const std::string& unit) {
    Json json{{"value_" + unit, in_base_unit(e.value)},
              {"standard_" + unit, in_base_unit(e.standard)},
              {"expanded_" + unit, in_base_unit(e.expanded)},
              {"coverage_factor", e.coverage_factor},
              {"degrees_of_freedom", finite_or_null(e.degrees_of_freedom)},
              {"budget", Json::array()}};
    for (const bench::Contribution<Q>& c : e.budget)
        json["budget"].push_back({{"name", c.name},
                                  {"standard_" + unit, in_base_unit(c.standard)},
                                  {"share", c.share},
                                  {"degrees_of_freedom", finite_or_null(c.degrees_of_freedom)},
                                  {"common", c.common}});
    return json;
}

template <class Q>
Json difference(const bench::Difference<Q>& d, const std::string& unit) {
    Json json = estimate(d.estimate, unit);
    json["significant"] = d.significant;
    return json;
}

template <class Q>
Json difference(const std::optional<bench::Difference<Q>>& d, const std::string& unit) {
    return d ? difference(*d, unit) : Json(nullptr);
}

Json bracket(const std::optional<bench::Bracket>& b) {
    if (!b) return nullptr;
    return {{"above_mm", in_mm(b->above)}, {"below_mm", in_mm(b->below)}};
}

Json point(const bench::Point& p) {
    return {{"reading", p.reading + 1},
            {"set_mm", in_mm(p.stated_height)},
            {"height_mm", in_mm(p.height)},
            {"force_n", in_newton(p.force)},
            {"standard_height_mm", in_mm(p.u_height)},
            {"standard_force_n", in_newton(p.u_force)},
            {"use", bench::word(p.use)},
            {"why", p.why},
            {"residual_n", in_newton(p.residual)},
            {"sigmas", p.sigmas}};
}

std::string_view word(bench::Straightness verdict) {
    switch (verdict) {
        case bench::Straightness::as_stated:
            return "as stated";
        case bench::Straightness::too_large:
            return "too large";
        case bench::Straightness::too_small:
            return "too small";
        case bench::Straightness::not_judged:
            return "not judged";
    }
    return "";
}

Json chi_square(const bench::ChiSquare& c) {
    return {{"value", c.value},
            {"degrees_of_freedom", c.degrees_of_freedom},
            {"p", c.p},
            {"verdict", word(c.verdict)},
            {"text", c.text}};
}

Json hysteresis(const std::optional<bench::Hysteresis>& h) {
    if (!h) return nullptr;
    return {{"largest_n", in_newton(h->largest)},
            {"at_mm", in_mm(h->at)},
            {"mean_n", in_newton(h->mean)},
            {"heights", h->heights},
            {"share_of_largest_load", h->of_largest_load.value}};
}

Json wire(const bench::WireAnswer& answer) {
    if (!answer.wire) return {{"missing", answer.missing}};
    Json json{{"shear_modulus", estimate(answer.wire->shear_modulus, "mpa")},
              {"any_consistent", answer.wire->any_consistent},
              {"verdict", answer.wire->verdict},
              {"grades", Json::array()}};
    for (const bench::GradeMatch& match : answer.wire->matches)
        json["grades"].push_back({{"grade", match.grade},
                                  {"shear_modulus_mpa", in_mpa(match.shear_modulus)},
                                  {"shear_modulus_evidence", io::Form<wire::Evidence>::text(match.evidence)},
                                  {"expanded_away", match.expanded_away},
                                  {"consistent", match.consistent},
                                  {"in_range", match.in_range}});
    return json;
}

Json weakening(const bench::Weakening& w) {
    return {{"set", difference(w.set, "mm")},
            {"set_against", w.set_against},
            {"worn_wire", difference(w.worn_wire, "mm")},
            {"worn_against", w.worn_against}};
}

Json load(const bench::LoadAtHeight& l) {
    Json json{{"name", l.asked.name},
              {"height_mm", in_mm(l.asked.height.value)},
              {"height_plus_minus_mm", in_mm(l.asked.height.plus_minus)},
              {"outside_readings", l.outside}};
    json["load"] = estimate(l.force, "n");
    return json;
}

Json spring(const BenchedSpring& s) {
    const bench::MeasuredSpring& m = s.measured;
    Json json{{"name", s.run.name},
              {"role", bench::word(s.run.role)},
              {"rate", estimate(m.rate, "n_per_mm")},
              {"free_length", estimate(m.free_length, "mm")},
              {"contact", bracket(m.contact)},
              {"closing", bracket(m.closing)},
              {"loads", Json::array()},
              {"hysteresis", hysteresis(m.hysteresis)},
              {"chi_square", chi_square(m.chi_square)},
              {"repeatability_n", m.repeatability ? Json(in_newton(*m.repeatability)) : Json(nullptr)},
              {"remarks", m.remarks},
              {"wire", wire(s.wire)},
              {"weakenings", Json::array()},
              {"points", Json::array()}};
    for (const bench::LoadAtHeight& each : m.loads) json["loads"].push_back(load(each));
    for (const bench::Weakening& each : s.weakenings) json["weakenings"].push_back(weakening(each));
    for (const bench::Point& each : m.points) json["points"].push_back(point(each));
    return json;
}

Json comparison(const bench::Comparison& c) {
    Json json{{"first", c.first},
              {"second", c.second},
              {"rate", difference(c.rate, "n_per_mm")},
              {"free_length", difference(c.free_length, "mm")},
              {"loads", Json::array()}};
    for (const bench::LoadDifference& each : c.loads)
        json["loads"].push_back({{"name", each.asked.name},
                                 {"height_mm", in_mm(each.asked.height.value)},
                                 {"load", difference(each.load, "n")},
                                 {"rate_part_n", in_newton(each.rate_part)},
                                 {"free_length_part_n", in_newton(each.free_length_part)}});
    return json;
}

}  // namespace

Json bench_json(const BenchView& view) {
    Json json{{"file", view.file},
              {"title", view.session.title},
              {"date", view.session.date},
              {"springs", Json::array()},
              {"comparisons", Json::array()}};
    for (const BenchedSpring& each : view.springs) json["springs"].push_back(spring(each));
    for (const bench::Comparison& each : view.comparisons) json["comparisons"].push_back(comparison(each));
    return json;
}

}  // namespace seatload::cli
