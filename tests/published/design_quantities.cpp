// SPDX-License-Identifier: MIT
// What textbooks solve for: the wire, the index or the coils that meet a stress or a rate. Each is found by halving
// until our mechanics give the value wanted, so that the closed forms of the books are checked, not repeated.
#include <cmath>

#include <seatload/spring/rate.hpp>
#include <seatload/spring/stress.hpp>

#include "published/inputs.hpp"
#include "support/solve.hpp"

namespace seatload::published {
namespace {

Length d(const Inputs& in) { return in.get<Length>("wire_diameter"); }
Length deflection(const Inputs& in) { return in.get<Length>("deflection"); }

/// Residual of the corrected stress under the load designed for against the permitted one.
double over_stress(const Inputs& in) {
    const Inputs loaded = in.has("design_load") ? in.with("load", in.number("design_load")) : in;
    return loaded.number("corrected_stress") - in.number("permitted_stress");
}

constexpr double kSmallestIndex = 1.01;
constexpr double kLargestIndex = 100.0;
constexpr double kThinnest = 0.02;  // mm
constexpr double kThickest = 90.0;  // mm

double index_for_stress(const Inputs& in) {
    return test::root_between(kSmallestIndex + 1.0, kLargestIndex,
                              [&](double w) { return over_stress(in.with("index", w)); });
}

template <class F>
Length wire_for(const Inputs& in, F residual) {
    return test::root_between(kThinnest, kThickest,
                              [&](double d_mm) { return residual(in.with("wire_diameter", d_mm)); }) *
           mm;
}

Length wire_for_stress(const Inputs& in) {
    return wire_for(in, [](const Inputs& tried) { return -over_stress(tried); });
}
Length wire_for_rate(const Inputs& in) {
    return wire_for(in, [&](const Inputs& tried) { return tried.number("rate") - in.number("wanted_rate"); });
}
Length wire_for_fatigue(const Inputs& in) {
    return wire_for(
        in, [&](const Inputs& tried) { return tried.number("pulsating_line_factor") - in.number("safety_factor"); });
}

Length mean_diameter_for_stress(const Inputs& in) {
    const Length trial = 1.0 * mm;
    return trial * (spring::force_for_stress(in.get<Stress>("permitted_stress"), d(in), trial) / in.get<Force>("load"));
}

/// All coils active and touching at the solid length; the coil as wide as the stress allows; the wire from the rate.
Inputs touching(const Inputs& in) {
    return in.with("mean_diameter", in_mm(mean_diameter_for_stress(in)))
        .with("active_coils", in.number("solid_length") / in.number("wire_diameter"));
}
Length wire_for_rate_and_solid(const Inputs& in) {
    return wire_for(in, [&](const Inputs& tried) { return in.number("wanted_rate") - touching(tried).number("rate"); });
}

/// A coil inside another, as wide as the wire leaves room for.
Length wire_inside_for_rate(const Inputs& in) {
    const double room = in.number("room_diameter");
    return test::root_between(
               0.05 * room, 0.9 * room,
               [&](double d_mm) {
                   return in.with("wire_diameter", d_mm).with("mean_diameter", room - d_mm).number("rate") -
                          in.number("wanted_rate");
               }) *
           mm;
}

double coils_for_rate(const Inputs& in) {
    return spring::active_coils_for_rate(in.get<Stress>("shear_modulus"), d(in), in.get<Length>("mean_diameter"),
                                         in.get<Rate>("wanted_rate"));
}

Length with_clash(const Inputs& in) {
    return in.get<Length>("solid_length") + (1.0 + in.number("clash_share")) * deflection(in);
}
Length with_gaps(const Inputs& in) {
    return in.get<Length>("solid_length") + (in.number("total_coils") - 1.0) * in.get<Length>("gap_between_coils") +
           deflection(in);
}

/// Force of the spring's own weight density times wire volume, for a spring of wire and coils just found.
Force weight(const Inputs& in) {
    constexpr double kNewtonPerPound = 4.4482216152605;
    constexpr double kGramPerPound = 453.59237;
    return in_gram(in.get<Mass>("active_mass")) / kGramPerPound * kNewtonPerPound * newton;
}

}  // namespace

Quantities design_quantities() {
    return {
        {"design_load", given<Force>()},
        {"room_diameter", given<Length>()},
        {"reference_rate", given<Rate>()},
        {"reference_index", given_number()},
        {"reference_active_coils", given_number()},
        {"index_for_stress", plain(index_for_stress)},
        {"mean_diameter_for_stress", worked_out<Length>(mean_diameter_for_stress)},
        {"wire_for_stress", worked_out<Length>(wire_for_stress)},
        {"wire_for_rate", worked_out<Length>(wire_for_rate)},
        {"wire_for_fatigue", worked_out<Length>(wire_for_fatigue)},
        {"wire_for_rate_and_solid", worked_out<Length>(wire_for_rate_and_solid)},
        {"coils_for_rate_and_solid",
         plain([](const Inputs& in) { return in.number("solid_length") / in_mm(wire_for_rate_and_solid(in)); })},
        {"mean_diameter_for_rate_and_solid", worked_out<Length>([](const Inputs& in) {
             return mean_diameter_for_stress(in.with("wire_diameter", in_mm(wire_for_rate_and_solid(in))));
         })},
        {"mean_radius_for_rate_and_solid",
         worked_out<Length>([](const Inputs& in) { return 0.5 * in.get<Length>("mean_diameter_for_rate_and_solid"); })},
        {"wire_inside_for_rate", worked_out<Length>(wire_inside_for_rate)},
        {"coils_for_rate", plain(coils_for_rate)},
        {"coils_for_rate_rounded_up", plain([](const Inputs& in) { return std::ceil(coils_for_rate(in)); })},
        {"free_length_from_solid", worked_out<Length>([](const Inputs& in) {
             return in.get<Length>("solid_length") + in.get<Force>("solid_force") / in.get<Rate>("rate");
         })},
        {"free_length_with_clash", worked_out<Length>(with_clash)},
        {"free_length_with_gaps", worked_out<Length>(with_gaps)},
        {"weight", worked_out<Force>(weight)},
        {"rate_by_scaling",  // another spring of the same wire, from a measured one
         worked_out<Rate>([](const Inputs& in) {
             const double ours = spring::rate(1.0, 1.0, in.number("index"), in.number("active_coils"));
             const double measured =
                 spring::rate(1.0, 1.0, in.number("reference_index"), in.number("reference_active_coils"));
             return in.get<Rate>("reference_rate") * (ours / measured);
         })},
    };
}

}  // namespace seatload::published
