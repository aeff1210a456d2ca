// SPDX-License-Identifier: MIT
#include <seatload/sizing/easing.hpp>

#include <algorithm>
#include <cmath>

namespace seatload::sizing {
namespace {

using demand::Requirement;
using Number = std::optional<double>;

template <class Q>
Number plain(const std::optional<Q>& quantity) {
    return quantity ? Number(quantity->value()) : std::nullopt;
}

/// A load or another number that cannot be eased when it is nothing.
Number positive(Number number) { return number && *number > 0.0 ? number : std::nullopt; }

Number above(double number, double least) { return number > least ? Number(number) : std::nullopt; }

double travel(const Requirement& r) { return in_mm(r.space.seated_height - r.space.full_travel_height); }

/// Moves both limits of a bore or rod so that the one that counts becomes `value` mm.
void shift(demand::Fit& fit, Length counts, double value) {
    const Length by = value * mm - counts;
    fit.smallest += by;
    fit.largest += by;
    fit.nominal += by;
}

// How far each is tried: as far as a person would still call it the same mechanism, or as the limit makes sense.

const std::vector<Easing>& table() {
    static const std::vector<Easing> easings{
        // ---- loads -------------------------------------------------------------------------------------------------
        {"load.seated.at_least",
         "seated load",
         "at least",
         "N",
         false,
         true,
         {"seated_load_least"},
         false,
         [](const Requirement& r) { return positive(plain(r.seated_load.at_least)); },
         [](const Requirement& r) { return 0.1 * r.seated_load.at_least->value(); },
         [](Requirement& r, double v) { r.seated_load.at_least = v * newton; }},
        {"load.seated.at_most",
         "seated load",
         "at most",
         "N",
         false,
         true,
         {"seated_load_most"},
         false,
         [](const Requirement& r) { return positive(plain(r.seated_load.at_most)); },
         [](const Requirement& r) { return 4.0 * r.seated_load.at_most->value(); },
         [](Requirement& r, double v) { r.seated_load.at_most = v * newton; }},
        {"load.full_travel.at_least",
         "full-travel load",
         "at least",
         "N",
         false,
         true,
         {"full_travel_load_least"},
         false,
         [](const Requirement& r) { return positive(plain(r.full_travel_load.at_least)); },
         [](const Requirement& r) { return 0.1 * r.full_travel_load.at_least->value(); },
         [](Requirement& r, double v) { r.full_travel_load.at_least = v * newton; }},
        {"load.full_travel.at_most",
         "full-travel load",
         "at most",
         "N",
         false,
         true,
         {"full_travel_load_most"},
         false,
         [](const Requirement& r) { return positive(plain(r.full_travel_load.at_most)); },
         [](const Requirement& r) { return 4.0 * r.full_travel_load.at_most->value(); },
         [](Requirement& r, double v) { r.full_travel_load.at_most = v * newton; }},
        // ---- room --------------------------------------------------------------------------------------------------
        {"space.seated_height.at_least",
         "seated height",
         "at least",
         "mm",
         false,
         false,
         {"seated_load_most", "seats_flat"},
         false,
         [](const Requirement& r) { return Number(in_mm(r.space.seated_height)); },
         [](const Requirement& r) { return 1.5 * in_mm(r.space.seated_height); },
         [](Requirement& r, double v) { r.space.seated_height = v * mm; }},
        {"space.seated_height.at_most",
         "seated height",
         "at most",
         "mm",
         false,
         false,
         {"reach", "seated_load_least", "fatigue", "seats_flat"},
         false,
         [](const Requirement& r) { return Number(in_mm(r.space.seated_height)); },
         [](const Requirement& r) { return in_mm(r.space.full_travel_height) + 0.05 * travel(r); },
         [](Requirement& r, double v) { r.space.seated_height = v * mm; }},
        {"space.full_travel_height.at_least",
         "full-travel height",
         "at least",
         "mm",
         false,
         false,
         {"full_travel_load_most", "gap_to_solid", "stress", "buckling", "sideways_stiffness", "seats_flat", "fatigue"},
         false,
         [](const Requirement& r) { return Number(in_mm(r.space.full_travel_height)); },
         [](const Requirement& r) { return in_mm(r.space.seated_height) - 0.05 * travel(r); },
         [](Requirement& r, double v) { r.space.full_travel_height = v * mm; }},
        {"space.full_travel_height.at_most",
         "full-travel height",
         "at most",
         "mm",
         false,
         false,
         {"full_travel_load_least"},
         false,
         [](const Requirement& r) { return Number(in_mm(r.space.full_travel_height)); },
         [](const Requirement& r) { return 0.67 * in_mm(r.space.full_travel_height); },
         [](Requirement& r, double v) { r.space.full_travel_height = v * mm; }},
        {"space.bore.at_least",
         "bore",
         "at least",
         "mm",
         false,
         false,
         {"bore_clearance"},
         false,
         [](const Requirement& r) { return r.space.bore ? Number(in_mm(r.space.bore->smallest)) : std::nullopt; },
         [](const Requirement& r) { return 1.25 * in_mm(r.space.bore->smallest); },
         [](Requirement& r, double v) { shift(*r.space.bore, r.space.bore->smallest, v); }},
        {"space.rod.at_most",
         "rod",
         "at most",
         "mm",
         false,
         true,
         {"rod_clearance"},
         false,
         [](const Requirement& r) { return r.space.rod ? Number(in_mm(r.space.rod->largest)) : std::nullopt; },
         [](const Requirement& r) { return in_mm(r.space.rod->largest) - 0.25 * in_mm(r.space.rod->smallest); },
         [](Requirement& r, double v) { shift(*r.space.rod, r.space.rod->largest, v); }},
        {"space.free_length.at_least",
         "free length",
         "at least",
         "mm",
         false,
         true,
         {"free_length_shortest"},
         false,
         [](const Requirement& r) {
             return r.space.free_length ? Number(in_mm(r.space.free_length->smallest)) : std::nullopt;
         },
         [](const Requirement& r) {
             return std::min(in_mm(r.space.free_length->smallest), in_mm(r.space.seated_height));
         },
         [](Requirement& r, double v) { r.space.free_length->smallest = v * mm; }},
        {"space.free_length.at_most",
         "free length",
         "at most",
         "mm",
         false,
         true,
         {"free_length_longest"},
         false,
         [](const Requirement& r) {
             return r.space.free_length ? Number(in_mm(r.space.free_length->largest)) : std::nullopt;
         },
         [](const Requirement& r) {
             return std::max(in_mm(r.space.free_length->largest), 3.0 * in_mm(r.space.seated_height));
         },
         [](Requirement& r, double v) { r.space.free_length->largest = v * mm; }},
        {"space.sideways_play.at_most",
         "sideways play of the seat",
         "at most",
         "mm",
         false,
         true,
         {"seats_flat"},
         false,
         [](const Requirement& r) { return positive(plain(r.space.sideways_play)); },
         [](const Requirement&) { return 0.0; },
         [](Requirement& r, double v) { r.space.sideways_play = v * mm; }},
        // ---- surroundings ------------------------------------------------------------------------------------------
        {"surroundings.temperature.at_most",
         "temperature",
         "at most",
         "°C",
         false,
         true,
         {"service_temperature", "seated_load_least", "full_travel_load_least"},
         true,
         [](const Requirement& r) { return above(r.surroundings.temperature.degrees, 20.0); },
         [](const Requirement&) { return 20.0; },
         [](Requirement& r, double v) { r.surroundings.temperature.degrees = v; }},
        // ---- limits ------------------------------------------------------------------------------------------------
        {"limits.stress_share.at_least",
         "permissible stress",
         "at least",
         "of Rm",
         true,
         true,
         {"stress"},
         false,
         [](const Requirement& r) { return r.limits.stress_share; },
         [](const Requirement& r) { return 1.25 * *r.limits.stress_share; },
         [](Requirement& r, double v) { r.limits.stress_share = v; }},
        {"limits.stress_safety.at_most",
         "safety against yielding",
         "at most",
         "",
         true,
         true,
         {"stress"},
         false,
         [](const Requirement& r) { return above(r.limits.stress_safety, 1.0); },
         [](const Requirement&) { return 1.0; },
         [](Requirement& r, double v) { r.limits.stress_safety = v; }},
        {"limits.gap_share.at_most",
         "share of the travel left above solid",
         "at most",
         "",
         true,
         true,
         {"gap_to_solid"},
         false,
         [](const Requirement& r) {
             return r.limits.gap_rule == demand::GapRule::share_of_travel ? above(r.limits.gap_share, 0.0)
                                                                          : std::nullopt;
         },
         [](const Requirement&) { return 0.0; },
         [](Requirement& r, double v) { r.limits.gap_share = v; }},
        {"limits.seating_coefficient.at_most",
         "seating coefficient",
         "at most",
         "",
         true,
         true,
         {"buckling"},
         false,
         [](const Requirement& r) { return r.limits.seating_coefficient; },
         [](const Requirement& r) { return 0.5 * *r.limits.seating_coefficient; },
         [](Requirement& r, double v) { r.limits.seating_coefficient = v; }},
        {"limits.buckling_margin.at_most",
         "margin against buckling",
         "at most",
         "",
         true,
         true,
         {"buckling"},
         false,
         [](const Requirement& r) { return above(r.limits.buckling_margin, 1.0); },
         [](const Requirement&) { return 1.0; },
         [](Requirement& r, double v) { r.limits.buckling_margin = v; }},
        {"limits.smallest_index.at_most",
         "smallest spring index",
         "at most",
         "",
         true,
         true,
         {"index_smallest"},
         false,
         [](const Requirement& r) { return above(r.limits.smallest_index, 3.0); },
         [](const Requirement&) { return 3.0; },
         [](Requirement& r, double v) { r.limits.smallest_index = v; }},
        {"limits.largest_index.at_least",
         "largest spring index",
         "at least",
         "",
         true,
         true,
         {"index_largest"},
         false,
         [](const Requirement& r) { return Number(r.limits.largest_index); },
         [](const Requirement& r) { return std::max(25.0, r.limits.largest_index); },
         [](Requirement& r, double v) { r.limits.largest_index = v; }},
        {"limits.fewest_active_coils.at_most",
         "fewest active coils",
         "at most",
         "",
         true,
         true,
         {"coils_fewest"},
         false,
         [](const Requirement& r) { return above(r.limits.fewest_active_coils, 1.0); },
         [](const Requirement&) { return 1.0; },
         [](Requirement& r, double v) { r.limits.fewest_active_coils = v; }},
        {"limits.most_active_coils.at_least",
         "most active coils",
         "at least",
         "",
         true,
         true,
         {"coils_most"},
         false,
         [](const Requirement& r) { return Number(r.limits.most_active_coils); },
         [](const Requirement& r) { return 3.0 * r.limits.most_active_coils; },
         [](Requirement& r, double v) { r.limits.most_active_coils = v; }},
        {"limits.half_turn_slack.at_least",
         "turns that the active coils may be off a half turn over",
         "at least",
         "",
         true,
         true,
         {"half_turn"},
         false,
         [](const Requirement& r) { return Number(r.limits.half_turn_slack); },
         [](const Requirement& r) { return std::max(0.5, r.limits.half_turn_slack); },
         [](Requirement& r, double v) { r.limits.half_turn_slack = v; }},
        {"limits.bore_clearance.at_most",
         "clearance in the bore",
         "at most",
         "mm",
         true,
         true,
         {"bore_clearance"},
         false,
         [](const Requirement& r) { return above(in_mm(r.limits.bore_clearance), 0.0); },
         [](const Requirement&) { return 0.0; },
         [](Requirement& r, double v) { r.limits.bore_clearance = v * mm; }},
        {"limits.rod_clearance.at_most",
         "clearance over the rod",
         "at most",
         "mm",
         true,
         true,
         {"rod_clearance"},
         false,
         [](const Requirement& r) { return above(in_mm(r.limits.rod_clearance), 0.0); },
         [](const Requirement&) { return 0.0; },
         [](Requirement& r, double v) { r.limits.rod_clearance = v * mm; }},
        {"limits.smallest_surge_ratio.at_most",
         "natural frequency over that of the motion",
         "at most",
         "",
         true,
         true,
         {"surge"},
         false,
         [](const Requirement& r) { return above(r.limits.smallest_surge_ratio, 0.0); },
         [](const Requirement& r) { return 0.25 * r.limits.smallest_surge_ratio; },
         [](Requirement& r, double v) { r.limits.smallest_surge_ratio = v; }},
        {"limits.fatigue_factor.at_most",
         "fatigue factor",
         "at most",
         "",
         true,
         true,
         {"fatigue"},
         false,
         [](const Requirement& r) { return above(r.limits.fatigue_factor, 1.0); },
         [](const Requirement&) { return 1.0; },
         [](Requirement& r, double v) { r.limits.fatigue_factor = v; }},
        {"limits.smallest_ground_wire.at_most",
         "thinnest wire that is ground",
         "at most",
         "mm",
         true,
         true,
         {"ground_wire"},
         false,
         [](const Requirement& r) { return above(in_mm(r.limits.smallest_ground_wire), 0.0); },
         [](const Requirement& r) { return 0.25 * in_mm(r.limits.smallest_ground_wire); },
         [](Requirement& r, double v) { r.limits.smallest_ground_wire = v * mm; }},
        {"limits.largest_ground_index.at_least",
         "largest spring index that is ground",
         "at least",
         "",
         true,
         true,
         {"ground_index"},
         false,
         [](const Requirement& r) { return Number(r.limits.largest_ground_index); },
         [](const Requirement& r) { return std::max(25.0, r.limits.largest_ground_index); },
         [](Requirement& r, double v) { r.limits.largest_ground_index = v; }},
        {"limits.load_loss.at_most",
         "share of the load lost in service",
         "at most",
         "",
         true,
         true,
         {"seated_load_least", "full_travel_load_least"},
         false,
         [](const Requirement& r) { return r.limits.load_loss ? above(r.limits.load_loss->value, 0.0) : std::nullopt; },
         [](const Requirement&) { return 0.0; },
         [](Requirement& r, double v) { r.limits.load_loss = Share{v}; }},
        {"limits.largest_mass.at_least",
         "mass allowed",
         "at least",
         "g",
         false,
         true,
         {"mass"},
         false,
         [](const Requirement& r) {
             return r.limits.largest_mass ? Number(in_gram(*r.limits.largest_mass)) : std::nullopt;
         },
         [](const Requirement& r) { return 4.0 * in_gram(*r.limits.largest_mass); },
         [](Requirement& r, double v) { r.limits.largest_mass = v * gram; }},
    };
    return easings;
}

/// What a share of a change is a share of.
double whole(double now, double farthest) { return now != 0.0 ? std::abs(now) : std::abs(farthest - now); }

/// The largest of 1, 2 and 5 times a power of ten that is not above a number.
double round_step(double most) {
    const double power = std::pow(10.0, std::floor(std::log10(most)));
    for (const double factor : {5.0, 2.0})
        if (factor * power <= most) return factor * power;
    return power;
}

}  // namespace

std::span<const Easing> easings() { return table(); }

double eased(const Easing& easing, const Requirement& r, double share) {
    const double now = *easing.now(r), farthest = easing.farthest(r);
    const double by = std::min(share * whole(now, farthest), std::abs(farthest - now));
    return farthest > now ? now + by : now - by;
}

double farthest_share(const Easing& easing, const Requirement& r) {
    const double now = *easing.now(r), farthest = easing.farthest(r);
    return farthest == now ? 0.0 : std::abs(farthest - now) / whole(now, farthest);
}

double rounded(const Easing& easing, const Requirement& r, double edge, int finer) {
    const double now = *easing.now(r), farthest = easing.farthest(r);
    if (edge == now) return edge;
    constexpr double kCoarsest = 0.02;
    const double step =
        round_step(std::min(kCoarsest * whole(now, farthest), 0.5 * std::abs(edge - now))) * std::pow(10.0, -finer);
    constexpr double kSlack = 1e-6;  // of a step: a number that is a multiple but for rounding stays
    const double multiple = farthest > now ? std::ceil(edge / step - kSlack) : std::floor(edge / step + kSlack);
    const double value = std::round(multiple * step * 1e9) / 1e9;  // cleared of the noise in the last digits
    return farthest > now ? std::min(value, farthest) : std::max(value, farthest);
}

}  // namespace seatload::sizing
