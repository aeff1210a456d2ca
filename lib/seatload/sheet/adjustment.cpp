// SPDX-License-Identifier: MIT
#include <seatload/sheet/adjustment.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

#include <seatload/sheet/fatigue_limits.hpp>
#include <seatload/sheet/terms.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/tolerance/en15800.hpp>

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

/// The shortest free length at which a spring of the drawn rate gives both loads: its maker comes near to that rate
/// only, since coils move by whole turns and wire in its range.
Length shortest_by_loads(const Facts& facts) {
    const auto shortest = [&](const record::LoadAtLength& load) {
        return load.length + (load.nominal - load.minus) / facts.values.rate;
    };
    return std::max(shortest(facts.spec.seated), shortest(facts.spec.full_travel));
}

/// What 99 of 100 pieces stray upwards by at EN 15800 grade 1 at the most (its tolerance of L0 is from memory, and that
/// it is three standard deviations wide an estimate).
Length stray_of_free_length(const Facts& facts) {
    constexpr double kMostStray = 0.86;
    const spring::Spring& s = facts.spec.spring;
    return kMostStray * tolerance::free_length_tolerance(s.wire_diameter, s.mean_diameter, facts.values.active_coils,
                                                         facts.values.rate, 1);
}

std::string fatigue_bound(const Facts& facts) {
    const FatigueLimits limits = fatigue_limits(facts);
    const auto words = [&](Stress stress) {
        return with_unit(facts.figures().amount(Unit::mpa, in_mpa(stress), {0}, Rounding::down));
    };
    return facts.say("keep.stress_range", {{"upper", words(limits.upper)}, {"range", words(limits.range)}});
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

std::string longest_free_length_words(const Facts& facts) {
    std::string length = with_unit(*longest_free_length(facts));
    const auto closer = longest_with_closer_tips(facts);
    if (!closer) return length;
    return facts.say(
        "coil.longest_by_tips",
        {{"length", length}, {"longer", with_unit(*closer)}, {"slack", tip_degrees(facts, facts.closer_tips->turns)}});
}

std::optional<Length> aimed_free_length(const Facts& facts) {
    if (!longest_free_length(facts) || !facts.may_adjust(record::Adjustable::free_length)) return std::nullopt;
    constexpr Length kStep = 0.1 * mm;
    const Length longest = *facts.longest_free_length;
    // No lower than half way to the shortest that the loads let in, so that pieces may stray downwards too.
    const Length shortest = shortest_by_loads(facts);
    const Length middle = 0.5 * (shortest + longest);
    const Length aim = std::max(longest - stray_of_free_length(facts), middle);
    const Length rounded = std::floor(aim / kStep + 1e-6) * kStep;
    return rounded >= shortest && rounded < facts.spec.spring.free_length ? std::optional(rounded) : std::nullopt;
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
    if (longest_free_length(facts)) bounds.push_back(facts.say("keep.free_length"));
    if (facts.half_turn_tolerance()) bounds.push_back(facts.say("keep.half_turn"));
    if (const auto bound = coil_diameter_bound(facts))
        bounds.push_back(facts.spec.bore_rules ? facts.say("keep.outside_diameter", {{"diameter", with_unit(*bound)}})
                                               : facts.say("keep.inside_diameter", {{"diameter", with_unit(*bound)}}));
    if (facts.spec.duty.is_dynamic()) bounds.push_back(fatigue_bound(facts));
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
