// SPDX-License-Identifier: MIT
#include <seatload/sheet/adjustment.hpp>

#include <fmt/format.h>

#include <limits>

#include <seatload/sheet/figures.hpp>
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

}  // namespace

std::string adjustable_quantities(const Facts& facts) {
    const std::string coils = "coils " + symbol("n", "t");
    std::string ways;
    if (facts.wire_is_adjustable()) ways = coils + " and wire diameter d";
    if (facts.diameter_is_adjustable()) {
        if (!ways.empty()) ways = "either " + ways + ", or ";
        ways += coils + " and coil diameter " + coil_symbol(facts);
    }
    return "free length " + symbol("L", "0") + ", and " + ways;
}

std::string kept_bounds(const Facts& facts) {
    const check::Evaluation& e = facts.values;
    std::vector<std::string> bounds;
    if (e.smallest_length <= facts.spec.full_travel.length)
        bounds.push_back(symbol("L", "n") + " at or below " + symbol("L", "2"));
    if (stress_at_limit(facts) <= facts.permissible_stress)
        bounds.push_back(limited_stress(facts) + " within its limit");
    if (facts.longest_free_length && *facts.longest_free_length < longest_by_loads(facts.spec))
        bounds.push_back(symbol("L", "0") + " at or below " + number(*facts.longest_free_length) + " mm");
    if (facts.keeps_half_turn())
        bounds.push_back(fmt::format("{} half a turn over a whole number, within {}", symbol("n", "t"),
                                     trimmed(facts.spec.limits.half_turn_slack, 2)));
    if (facts.diameter_is_adjustable() && facts.diameter_tolerance) {
        const bool bore = facts.spec.bore_rules;
        const Length tolerance = facts.diameter_tolerance->value;
        const Length limit =
            bore ? facts.spec.spring.outside_diameter() + tolerance : facts.spec.spring.inside_diameter() - tolerance;
        bounds.push_back(fmt::format("{} at or {} {} mm", coil_symbol(facts), bore ? "below" : "above", number(limit)));
    }
    if (facts.spec.duty.is_dynamic())
        bounds.push_back(symbol("τ", "k2") + " and " + symbol("τ", "kh") + " no higher than given here");
    return listed(bounds);
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
    switch (facts.spec.limits.stress_factor) {
        case demand::StressFactor::bergstraesser:
            return symbol("τ", "k") + " at " + symbol("L", at);
        case demand::StressFactor::wahl:
            return "Wahl's τ at " + symbol("L", at);
        default:
            return "τ at " + symbol("L", at);
    }
}

std::string quantities_as_made(const Facts& facts) {
    return std::string("d, ") + symbol("n", "t") + ", " + coil_symbol(facts) + " and " + symbol("L", "0");
}

}  // namespace seatload::sheet
