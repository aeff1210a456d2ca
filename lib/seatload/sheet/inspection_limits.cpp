// SPDX-License-Identifier: MIT
#include <seatload/sheet/inspection_limits.hpp>

#include <charconv>
#include <cmath>

#include <seatload/core/assert.hpp>
#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/terms.hpp>
#include <seatload/spring/ends.hpp>

namespace seatload::sheet {
namespace {

using inspection::Characteristic;
using inspection::Kind;
using inspection::Limits;
using inspection::Role;

/// What measuring may be uncertain by, of the whole tolerance of a load (common practice, no source).
constexpr double kUncertaintyShare = 0.1;

/// The number at the start of printed words.
double number_at(std::string_view words) {
    double value = 0.0;
    const auto [end, fault] = std::from_chars(words.data(), words.data() + words.size(), value);
    SEATLOAD_ASSERT(fault == std::errc{});
    return value;
}

double printed(const Amount& amount) { return number_at(amount.metric); }

/// A sum of two printed numbers, without the last bits that the sum of doubles leaves.
double sum(double a, double b) {
    constexpr double kSteps = 1e6;  // finer than anything printed
    return std::round((a + b) * kSteps) / kSteps;
}

/// The limits of "8.45 ± 0.30"; none of a number alone.
Limits printed_limits(const Amount& amount) {
    constexpr std::string_view kSign = " ± ";
    const auto at = amount.metric.find(kSign);
    if (at == std::string::npos) return {};
    const double nominal = printed(amount);
    const double room = number_at(std::string_view(amount.metric).substr(at + kSign.size()));
    return {sum(nominal, -room), sum(nominal, room)};
}

Characteristic load(const Facts& facts, Kind kind, const record::LoadAtLength& at) {
    const LoadLimits limits = facts.figures().limits(at);
    return {kind, Role::load, printed(limits.nominal), {printed(limits.least), printed(limits.most)}, false};
}

Characteristic coil(const Facts& facts) {
    const Amount amount = coil_diameter(facts);
    Characteristic c{facts.spec.bore_rules ? Kind::outside_diameter : Kind::inside_diameter, Role::dimension,
                     printed(amount), printed_limits(amount), false};
    if (!facts.diameter_is_adjustable()) return c;
    const auto bound = coil_diameter_bound(facts);
    c.limits = {};
    if (!bound)
        c.role = Role::noted;
    else
        (facts.spec.bore_rules ? c.limits.most : c.limits.least) = printed(*bound);
    return c;
}

/// The other diameter follows from the first and the wire.
Characteristic other_coil(const Facts& facts) {
    const spring::Spring& s = facts.spec.spring;
    const Length nominal = facts.spec.bore_rules ? s.inside_diameter() : s.outside_diameter();
    return {
        facts.spec.bore_rules ? Kind::inside_diameter : Kind::outside_diameter, Role::noted, in_mm(nominal), {}, false};
}

Characteristic free_length(const Facts& facts) {
    Characteristic c{Kind::free_length, Role::noted, printed(drawn_free_length(facts)), {}, false};
    if (const auto longest = longest_free_length(facts)) {
        c.role = Role::condition;
        c.limits.most = printed(*longest);
        if (const auto longer = longest_with_closer_tips(facts)) {
            c.further_by_tips = {printed(*longer), 360.0 * facts.closer_tips->turns};
        }
    }
    return c;
}

/// Wire that the maker may alter must stay in its range; other wire as drawn, where the standard's tolerance is known.
Characteristic wire(const Facts& facts) {
    const Amount amount = wire_diameter(facts);
    Characteristic c{Kind::wire_diameter, Role::noted, printed(amount), {}, false};
    if (facts.wire_is_adjustable() && facts.wire_range) {
        c.role = Role::bound;
        c.limits = {printed(facts.figures().wire(facts.wire_range->smallest, 3)),
                    printed(facts.figures().wire(facts.wire_range->largest, 3))};
    } else if (!facts.wire_is_adjustable() && facts.wire_tolerance && facts.wire_tolerance->is_firm()) {
        c.role = Role::bound;
        c.limits = printed_limits(amount);
    }
    return c;
}

Characteristic coils(const Facts& facts) {
    const double nominal = facts.spec.spring.total_coils;
    Characteristic c{Kind::total_coils, Role::noted, nominal, {}, false};
    const auto turns = facts.half_turn_tolerance();
    if (!turns) return c;
    // Active coils stay half a turn over a whole number; end coils are whole, so that all coils share the part.
    const double half_turn = nominal - facts.values.active_coils + std::floor(facts.values.active_coils) + 0.5;
    c.role = Role::condition;
    c.nominal = half_turn;
    c.limits = {sum(half_turn, -*turns), sum(half_turn, *turns)};
    c.whole_turns_free = true;
    return c;
}

Characteristic end(Kind kind, const Facts& facts, Length limit) {
    return {kind, Role::dimension, 0.0, {std::nullopt, printed(end_limit(facts, limit))}, false};
}

}  // namespace

Amount allowed_uncertainty(const Facts& facts, const record::LoadAtLength& load) {
    const double room = kUncertaintyShare * in_newton(load.plus + load.minus);
    return facts.figures().significant(Unit::newton, room, 2, Rounding::down);
}

Amount end_limit(const Facts& facts, Length limit) { return facts.figures().length(limit, {2}, Rounding::down); }

std::vector<Characteristic> inspected(const Facts& facts) {
    SEATLOAD_ASSERT(!facts.figures().has_inches());
    std::vector<Characteristic> all{load(facts, Kind::seated_load, facts.spec.seated),
                                    load(facts, Kind::full_travel_load, facts.spec.full_travel),
                                    coil(facts),
                                    other_coil(facts),
                                    free_length(facts),
                                    wire(facts),
                                    coils(facts)};
    if (spring::are_ground(facts.spec.spring.ends)) {
        all.push_back(end(Kind::squareness, facts, facts.squareness));
        all.push_back(end(Kind::parallelism, facts, facts.parallelism));
    } else {
        all.push_back({Kind::squareness, Role::noted, 0.0, {}, false});
        all.push_back({Kind::parallelism, Role::noted, 0.0, {}, false});
    }
    return all;
}

inspection::PlanChoice usual_plan(const record::Spec& spec, int lot_size) {
    inspection::PlanChoice choice;  // level II, AQL 1.0: what the sheet offers
    choice.every_piece = tests_every_piece(spec) || lot_size <= kLargestFullyTested;
    return choice;
}

}  // namespace seatload::sheet
