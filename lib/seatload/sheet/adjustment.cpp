// SPDX-License-Identifier: MIT
#include <seatload/sheet/adjustment.hpp>

#include <limits>

#include <seatload/sheet/terms.hpp>
#include <seatload/spring/stress.hpp>

namespace seatload::sheet {
namespace {

/// Where the static stress is judged.
const check::AtLength& judged(const Facts& facts) {
    const check::Evaluation& e = facts.values;
    switch (facts.spec.limits.stress_length) {
        case demand::StressLength::smallest_permissible:
            return e.at_smallest_length;
        case demand::StressLength::full_travel:
            if (e.full_travel) return *e.full_travel;
            [[fallthrough]];
        default:
            return e.at_solid;
    }
}

/// The free length of the softest spring whose loads still pass: a bound beyond it need not be named.
Length longest_by_loads(const record::Spec& spec) {
    const Force first = spec.seated.nominal + spec.seated.plus;
    const Force second = spec.full_travel.nominal - spec.full_travel.minus;
    if (second <= first) return std::numeric_limits<double>::infinity() * mm;
    const Rate softest = (second - first) / (spec.seated.length - spec.full_travel.length);
    return spec.seated.length + first / softest;
}

std::string free_length_bound(const Facts& facts, const std::string& length) {
    const auto closer = longest_with_closer_tips(facts);
    if (!closer) return facts.say("keep.free_length", {{"length", length}});
    return facts.say(
        "keep.free_length_by_tips",
        {{"length", length}, {"longer", with_unit(*closer)}, {"slack", tip_degrees(facts, facts.closer_tips->turns)}});
}

}  // namespace

std::string adjustable_quantities(const Facts& facts) {
    const std::string diameter = coil_symbol(facts);
    const bool wire = facts.wire_is_adjustable() && facts.wire_range;  // what must be asked for is not his to adjust
    if (!facts.diameter_is_adjustable()) return facts.say(wire ? "adjust.wire" : "adjust.coils");
    return wire ? facts.say("adjust.wire_or_diameter", {{"diameter", diameter}})
                : facts.say("adjust.diameter", {{"diameter", diameter}});
}

std::optional<Amount> longest_free_length(const Facts& facts) {
    if (!facts.longest_free_length || *facts.longest_free_length >= longest_by_loads(facts.spec)) return std::nullopt;
    return facts.figures().length(*facts.longest_free_length, {3}, Rounding::down);
}

Amount drawn_free_length(const Facts& facts, Decimals decimals) {
    const Figures figures = facts.figures();
    const Rounding rounding = longest_free_length(facts) ? Rounding::down : Rounding::nearest;
    return figures.length(facts.spec.spring.free_length, decimals, rounding);
}

std::optional<Amount> longest_with_closer_tips(const Facts& facts) {
    if (!facts.closer_tips || !longest_free_length(facts)) return std::nullopt;
    return facts.figures().length(facts.closer_tips->longest_free_length, {3}, Rounding::down);
}

std::optional<Amount> coil_diameter_bound(const Facts& facts) {
    if (!facts.diameter_is_adjustable() || !facts.diameter_tolerance) return std::nullopt;
    const Length tolerance = facts.diameter_tolerance->value;
    const spring::Spring& s = facts.spec.spring;
    return facts.spec.bore_rules ? facts.figures().length(s.outside_diameter() + tolerance, {3}, Rounding::down)
                                 : facts.figures().length(s.inside_diameter() - tolerance, {3}, Rounding::up);
}

std::string kept_bounds(const Facts& facts) {
    const check::Evaluation& e = facts.values;
    std::vector<std::string> bounds;
    if (e.smallest_length <= facts.spec.full_travel.length) bounds.push_back(facts.say("keep.smallest_length"));
    if (stress_at_limit(facts) <= facts.permissible_stress)
        bounds.push_back(facts.say("keep.stress", {{"stress", limited_stress(facts)}}));
    if (const auto longest = longest_free_length(facts))
        bounds.push_back(free_length_bound(facts, with_unit(*longest)));
    if (facts.half_turn_tolerance()) bounds.push_back(facts.say("keep.half_turn"));
    if (const auto bound = coil_diameter_bound(facts))
        bounds.push_back(facts.spec.bore_rules ? facts.say("keep.outside_diameter", {{"diameter", with_unit(*bound)}})
                                               : facts.say("keep.inside_diameter", {{"diameter", with_unit(*bound)}}));
    if (facts.spec.duty.is_dynamic()) bounds.push_back(facts.say("keep.stress_range"));
    return listed(bounds, facts.paper.words);
}

Stress stress_at_limit(const Facts& facts) {
    const check::AtLength& at = judged(facts);
    switch (facts.spec.limits.stress_factor) {
        case demand::StressFactor::bergstraesser:
            return at.corrected_stress;
        case demand::StressFactor::wahl:
            return spring::wahl_factor(facts.values.index) * at.stress;
        default:
            return at.stress;
    }
}

std::string limited_stress(const Facts& facts) {
    std::string_view at = "c";
    if (facts.spec.limits.stress_length == demand::StressLength::smallest_permissible) at = "n";
    if (facts.spec.limits.stress_length == demand::StressLength::full_travel) at = "2";
    const std::string length = symbol("L", at);
    switch (facts.spec.limits.stress_factor) {
        case demand::StressFactor::bergstraesser:
            return facts.say("stress.corrected", {{"length", length}});
        case demand::StressFactor::wahl:
            return facts.say("stress.by_wahl", {{"length", length}});
        default:
            return facts.say("stress.plain", {{"length", length}});
    }
}

}  // namespace seatload::sheet
