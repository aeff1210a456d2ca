// SPDX-License-Identifier: MIT
// Forces, deflections, stresses, strength, energy and vibration.
#include <numbers>
#include <stdexcept>

#include <seatload/demand/limits.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/spring/surge.hpp>
#include <seatload/spring/temperature.hpp>
#include <seatload/wire/strength.hpp>

#include "published/inputs.hpp"
#include "support/solve.hpp"

namespace seatload::published {
namespace {

using Speed = units_detail::Quantity<boost::units::velocity_dimension>;

Length d(const Inputs& in) { return in.get<Length>("wire_diameter"); }
Length D(const Inputs& in) { return in.get<Length>("mean_diameter"); }
double n(const Inputs& in) { return in.number("active_coils"); }
double w(const Inputs& in) { return in.number("index"); }
Stress G(const Inputs& in) { return in.get<Stress>("shear_modulus"); }
Force load(const Inputs& in) { return in.get<Force>("load"); }
Length deflection(const Inputs& in) { return in.get<Length>("deflection"); }
Rate rate(const Inputs& in) { return in.get<Rate>("rate"); }

Stress shear_modulus(const Inputs& in) {
    if (in.has("cold_shear_modulus"))
        return in.get<Stress>("cold_shear_modulus") *
               spring::modulus_share(in.number("loss_per_kelvin"), in.get<Celsius>("temperature").degrees);
    return in.get<Stress>("young_modulus") / (2.0 * (1.0 + in.number("poisson_ratio")));
}

/// The factor named under a key, at the index of the spring.
double named_factor(const Inputs& in, const std::string& name) {
    if (name == "none") return 1.0;
    if (name == "direct shear") return spring::direct_shear_factor(w(in));
    if (name == "Bergstraesser") return spring::bergstraesser_factor(w(in));
    if (name == "Wahl") return spring::wahl_factor(w(in));
    throw std::runtime_error("no stress factor is called \"" + name + "\"");
}
double stress_factor(const Inputs& in) { return named_factor(in, in.word("factor")); }

Stress stress(const Inputs& in, Force at) { return spring::stress(at, d(in), D(in)); }
Stress corrected_stress(const Inputs& in) { return in.number("stress_factor") * stress(in, load(in)); }

/// Rm = A/d^m as the wire module reads it; a coefficient in kpsi in^m is turned into MPa mm^m first.
Stress tensile_strength(const Inputs& in) {
    constexpr double kKsi = 6.894757293168361;
    const double exponent = in.number("strength_exponent");
    const double a_mpa = in.has("strength_coefficient_ksi")
                             ? in.number("strength_coefficient_ksi") * kKsi * std::pow(25.4, exponent)
                             : in.number("strength_coefficient_mpa");
    wire::Grade grade;
    grade.strength = wire::StrengthLaw{a_mpa, exponent, 0.01 * mm, 100.0 * mm};
    return wire::strength_at(grade, d(in)).value().minimum;
}

Force yield_force(const Inputs& in) {
    const double reduced = in.has("safety_factor") ? in.number("safety_factor") : 1.0;
    return spring::force_for_stress(in.get<Stress>("yield_stress") / in.number("stress_factor"), d(in), D(in)) /
           reduced;
}

Stress permitted_stress(const Inputs& in) {
    return in.get<Stress>(in.word("permitted_from", "yield_stress")) / in.number("safety_factor");
}
Stress yield_stress(const Inputs& in) { return in.number("yield_share") * in.get<Stress>("tensile_strength"); }

/// A weight that falls a height onto the spring and sinks with it: W (h + s) = work(R, s).
Length drop_deflection(const Inputs& in) {
    const double start = in_mm(load(in) / rate(in));
    return test::root_between(start, 1e3 * start,
                              [&](double s) -> double {
                                  const auto given_up = load(in) * (in.get<Length>("drop_height") + s * mm);
                                  return in_base_unit(spring::work(rate(in), s * mm) - given_up);
                              }) *
           mm;
}

/// Kinetic energy of a weight at a speed [N mm].
double kinetic_energy(const Inputs& in) {
    constexpr double kGravity = 9810.0;  // mm/s2, as textbooks round it
    const double v = in.number("speed_mm_per_s");
    return in_newton(load(in)) * v * v / (2.0 * kGravity);
}

double work(const Inputs& in) { return in_base_unit(spring::work(rate(in), deflection(in))); }

Quantities forces() {
    return {
        {"load", given<Force>()},
        {"force_itself", worked_out<Force>(load)},  // of a load stated in another unit
        {"initial_load", given<Force>()},
        {"pressure", given<Stress>()},
        {"drop_height", given<Length>()},
        {"pressed_diameter", given<Length>()},
        {"young_modulus", given<Stress>()},
        {"cold_shear_modulus", given<Stress>()},
        {"poisson_ratio", given_number()},
        {"loss_per_kelvin", given_number()},
        {"temperature", given<Celsius>()},
        {"speed_mm_per_s", given_number()},
        {"other_wire_diameter", given<Length>()},
        {"other_mean_diameter", given<Length>()},
        {"other_active_coils", given_number()},
        {"shear_modulus", worked_out<Stress>(shear_modulus)},
        {"rate", worked_out<Rate>([](const Inputs& in) { return spring::rate(G(in), d(in), D(in), n(in)); })},
        {"other_rate", worked_out<Rate>([](const Inputs& in) {
             return spring::rate(G(in), in.get<Length>("other_wire_diameter"), in.get<Length>("other_mean_diameter"),
                                 in.number("other_active_coils"));
         })},
        {"wanted_rate", worked_out<Rate>([](const Inputs& in) { return load(in) / deflection(in); })},
        {"deflection_from", given_word()},
        {"deflection", worked_out<Length>([](const Inputs& in) {
             return in.has("deflection_from") ? in.get<Length>(in.word("deflection_from")) : load(in) / rate(in);
         })},
        {"deflection_at_yield",
         worked_out<Length>([](const Inputs& in) { return in.get<Force>("yield_force") / rate(in); })},
        {"force_at_deflection",
         worked_out<Force>([](const Inputs& in) { return spring::force(rate(in), deflection(in)); })},
        {"length_under_load",
         worked_out<Length>([](const Inputs& in) { return in.get<Length>("free_length") - deflection(in); })},
        {"pressure_force", worked_out<Force>([](const Inputs& in) {
             const Length across = in.get<Length>("pressed_diameter");
             return in.get<Stress>("pressure") * across * across * (std::numbers::pi / 4.0);
         })},
        {"load_in_parallel", worked_out<Force>([](const Inputs& in) {
             return load(in) * (rate(in) / (rate(in) + in.get<Rate>("other_rate")));
         })},
        {"deflection_in_parallel",
         worked_out<Length>([](const Inputs& in) { return load(in) / (rate(in) + in.get<Rate>("other_rate")); })},
        {"drop_deflection", worked_out<Length>(drop_deflection)},
        {"work_n_mm", plain(work)},
        {"kinetic_energy_n_mm", plain(kinetic_energy)},
        {"springs_for_energy", plain([](const Inputs& in) { return kinetic_energy(in) / work(in); })},
    };
}

Quantities stresses() {
    return {
        {"factor", given_word()},
        {"permitted_from", given_word()},  // the stress that is divided by the safety factor
        {"safety_factor", given_number()},
        {"yield_share", given_number()},
        {"strength_coefficient_ksi", given_number()},
        {"strength_coefficient_mpa", given_number()},
        {"strength_exponent", given_number()},
        {"tensile_strength", worked_out<Stress>(tensile_strength)},
        {"yield_stress", worked_out<Stress>(yield_stress)},
        {"permitted_stress", worked_out<Stress>(permitted_stress)},
        {"permitted_solid_stress_en", worked_out<Stress>([](const Inputs& in) {
             return *demand::school_defaults(spring::School::en_13906).stress_share *
                    in.get<Stress>("tensile_strength");
         })},
        {"stress_factor", plain(stress_factor)},
        {"bergstraesser_factor", plain([](const Inputs& in) { return spring::bergstraesser_factor(w(in)); })},
        {"wahl_factor", plain([](const Inputs& in) { return spring::wahl_factor(w(in)); })},
        {"goehner_factor", plain([](const Inputs& in) { return spring::goehner_factor(w(in)); })},
        {"direct_shear_factor", plain([](const Inputs& in) { return spring::direct_shear_factor(w(in)); })},
        {"stress", worked_out<Stress>([](const Inputs& in) { return stress(in, load(in)); })},
        {"stress_per_index",
         worked_out<Stress>([](const Inputs& in) { return spring::stress(load(in), d(in), d(in)); })},
        {"stress_at_deflection", worked_out<Stress>([](const Inputs& in) {
             return spring::stress_at_deflection(G(in), d(in), D(in), n(in), deflection(in));
         })},
        {"corrected_stress", worked_out<Stress>(corrected_stress)},
        {"yield_force", worked_out<Force>(yield_force)},
        {"safety_against_yield",
         plain([](const Inputs& in) -> double { return in.get<Stress>("yield_stress") / corrected_stress(in); })},
        {"impact_stress", worked_out<Stress>([](const Inputs& in) {
             return spring::impact_stress(Speed::from_value(in.number("speed_mm_per_s")), in.get<Density>("density"),
                                          G(in));
         })},
    };
}

Quantities at_solid() {
    const auto to_solid = [](const Inputs& in) {
        return in.get<Length>("free_length") - in.get<Length>("solid_length");
    };
    const auto to_smallest = [](const Inputs& in) {
        return in.get<Length>("free_length") - in.get<Length>("smallest_permissible_length");
    };
    return {
        {"solid_deflection", worked_out<Length>(to_solid)},
        {"solid_force", worked_out<Force>([=](const Inputs& in) {
             return spring::force(rate(in), in.get<Length>("solid_deflection"));
         })},
        {"stress_at_solid",
         worked_out<Stress>([](const Inputs& in) { return stress(in, in.get<Force>("solid_force")); })},
        {"force_at_smallest_length",
         worked_out<Force>([=](const Inputs& in) { return spring::force(rate(in), to_smallest(in)); })},
        {"stress_at_smallest_length",
         worked_out<Stress>([](const Inputs& in) { return stress(in, in.get<Force>("force_at_smallest_length")); })},
        {"fractional_overrun", plain([](const Inputs& in) -> double {
             const double share = in.get<Length>("solid_deflection") / deflection(in);
             return share - 1.0;
         })},
    };
}

Quantities vibration() {
    return {
        {"surge_frequency", worked_out<Frequency>([](const Inputs& in) {
             return spring::surge_frequency(G(in), in.get<Density>("density"), d(in), D(in), n(in));
         })},
        {"surge_frequency_en", worked_out<Frequency>([](const Inputs& in) {
             return spring::surge_frequency_en_hz(in_mpa(G(in)), in_kg_per_m3(in.get<Density>("density")) / 1000.0,
                                                  in_mm(d(in)), in_mm(D(in)), n(in)) *
                    hertz;
         })},
    };
}

}  // namespace

Quantities load_quantities() {
    Quantities all = forces();
    all.merge(stresses());
    all.merge(at_solid());
    all.merge(vibration());
    return all;
}

}  // namespace seatload::published
