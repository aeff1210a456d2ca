// SPDX-License-Identifier: MIT
// Fatigue lines: ours, and those of textbooks worked out here from our stresses.
#include <stdexcept>

#include <seatload/spring/fatigue.hpp>
#include <seatload/spring/stress.hpp>

#include "published/inputs.hpp"

namespace seatload::published {
namespace {

Force amplitude_load(const Inputs& in) {
    return 0.5 * (in.get<Force>("largest_load") - in.get<Force>("smallest_load"));
}
Force mean_load(const Inputs& in) { return 0.5 * (in.get<Force>("largest_load") + in.get<Force>("smallest_load")); }

/// Corrected stress under a load, with the factor named under a key or, failing that, under "factor".
Stress stress_under(const Inputs& in, Force load, const std::string& key) {
    Inputs one = in;
    one.state("factor", in.has(key) ? in.word(key) : in.word("factor"));
    const Length d = in.get<Length>("wire_diameter");
    return one.number("stress_factor") * spring::stress(load, d, in.get<Length>("mean_diameter"));
}
Stress amplitude(const Inputs& in) { return in.get<Stress>("stress_amplitude"); }
Stress mean(const Inputs& in) { return in.get<Stress>("mean_stress"); }
Stress shear_strength(const Inputs& in) { return in.get<Stress>("shear_strength"); }

spring::EnduranceStress<double> zimmerli(const Inputs& in) {
    const std::string surface = in.word("surface");
    if (surface != "peened" && surface != "unpeened")
        throw std::runtime_error("no surface is called \"" + surface + "\"");
    return spring::zimmerli_mpa(surface == "peened");
}
spring::EnduranceStress<Stress> point(const Inputs& in) {
    return {in.get<Stress>("endurance_amplitude"), in.get<Stress>("endurance_mean")};
}

double goodman_factor(const Inputs& in) {
    return spring::goodman_factor(amplitude(in), mean(in), point(in), shear_strength(in));
}
double gerber_factor(const Inputs& in) {
    return spring::gerber_factor(amplitude(in), mean(in), point(in), shear_strength(in));
}

/// The line from (Sse/2, Sse/2) to (Ssy, 0) of several textbooks, Sse for a load from zero to a maximum.
double pulsating_line_factor(const Inputs& in) {
    const Stress yield = in.get<Stress>("yield_stress");
    const Stress endured = in.get<Stress>("pulsating_endurance");
    const double slope = (2.0 * yield - endured) / endured;
    return yield / (mean(in) + slope * amplitude(in));
}

/// S = (tau_u0 + 0.75 tau_min)/tau_max, GB/T 23935.
double pulsating_strength_factor(const Inputs& in) {
    const Stress lowest = stress_under(in, in.get<Force>("smallest_load"), "factor");
    const Stress highest = stress_under(in, in.get<Force>("largest_load"), "factor");
    return (in.get<Stress>("pulsating_endurance") + 0.75 * lowest) / highest;
}

Stress pulsating_endurance(const Inputs& in) {
    return in.number("pulsating_share") * in.get<Stress>("tensile_strength");
}

}  // namespace

Quantities fatigue_quantities() {
    return {
        {"surface", given_word()},
        {"amplitude_factor", given_word()},
        {"mean_factor", given_word()},
        {"smallest_load", given<Force>()},
        {"largest_load", given<Force>()},
        {"pulsating_share", given_number()},
        {"shear_strength_share", given_number()},
        {"load_ratio", plain([](const Inputs& in) -> double { return amplitude_load(in) / mean_load(in); })},
        {"amplitude_load", worked_out<Force>(amplitude_load)},
        {"stress_amplitude",
         worked_out<Stress>([](const Inputs& in) { return stress_under(in, amplitude_load(in), "amplitude_factor"); })},
        {"mean_stress",
         worked_out<Stress>([](const Inputs& in) { return stress_under(in, mean_load(in), "mean_factor"); })},
        {"smallest_stress", worked_out<Stress>([](const Inputs& in) {
             return stress_under(in, in.get<Force>("smallest_load"), "mean_factor");
         })},
        {"shear_strength", worked_out<Stress>([](const Inputs& in) {
             return spring::kShearStrengthShare * in.get<Stress>("tensile_strength");
         })},
        {"endurance_amplitude", worked_out<Stress>([](const Inputs& in) { return zimmerli(in).amplitude * MPa; })},
        {"endurance_mean", worked_out<Stress>([](const Inputs& in) { return zimmerli(in).mean * MPa; })},
        {"pulsating_endurance", worked_out<Stress>(pulsating_endurance)},
        {"goodman_endurance",
         worked_out<Stress>([](const Inputs& in) { return spring::goodman_endurance(point(in), shear_strength(in)); })},
        {"gerber_endurance",
         worked_out<Stress>([](const Inputs& in) { return spring::gerber_endurance(point(in), shear_strength(in)); })},
        {"goodman_amplitude", worked_out<Stress>([](const Inputs& in) { return goodman_factor(in) * amplitude(in); })},
        {"gerber_amplitude", worked_out<Stress>([](const Inputs& in) {
             return spring::gerber_amplitude(in.number("load_ratio"), point(in), shear_strength(in));
         })},
        {"goodman_factor", plain(goodman_factor)},
        {"gerber_factor", plain(gerber_factor)},
        {"sines_factor", plain([](const Inputs& in) { return spring::sines_factor(amplitude(in), point(in)); })},
        {"pulsating_line_factor", plain(pulsating_line_factor)},
        {"pulsating_strength_factor", plain(pulsating_strength_factor)},
    };
}

}  // namespace seatload::published
