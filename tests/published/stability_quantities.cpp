// SPDX-License-Identifier: MIT
// Buckling and sideways loading.
#include <cmath>
#include <numbers>

#include <seatload/spring/buckling.hpp>
#include <seatload/spring/lateral.hpp>
#include <seatload/spring/rate.hpp>

#include "published/inputs.hpp"
#include "support/solve.hpp"

namespace seatload::published {
namespace {

Length D(const Inputs& in) { return in.get<Length>("mean_diameter"); }
Length free_length(const Inputs& in) { return in.get<Length>("free_length"); }
Length sideways(const Inputs& in) { return in.get<Length>("sideways"); }
Length length(const Inputs& in) { return free_length(in) - in.get<Length>("deflection"); }
Force load(const Inputs& in) { return spring::force(in.get<Rate>("rate"), in.get<Length>("deflection")); }
double moduli(const Inputs& in) { return in.number("shear_over_young"); }
double nu(const Inputs& in) { return in.number("seating_coefficient"); }

Length buckling_deflection(const Inputs& in) {
    return spring::buckling_deflection(free_length(in), D(in), in.get<Stress>("shear_modulus"),
                                       in.get<Stress>("young_modulus"), nu(in));
}

/// One end clamped and one hinged, without the multiple of Euler's length that EN 13906-1 uses: the smallest deflection
/// with tan x = x/(1 + P/S), Haringx' rod of bending and shear rigidity that shrink with its length.
Length clamped_hinged_deflection(const Inputs& in) {
    const double L0 = in_mm(free_length(in));
    const double D_mm = in_mm(D(in));
    const double R = in_newton_per_mm(in.get<Rate>("rate"));
    const double G = in_mpa(in.get<Stress>("shear_modulus"));
    const double E = in_mpa(in.get<Stress>("young_modulus"));
    const auto residual = [&](double s) {
        const double share = (L0 - s) / L0;
        const double bending = R * L0 * D_mm * D_mm * E / (2.0 * (2.0 * G + E)) * share;
        const double shear = R * L0 * E / G * share;
        const double P = R * s;
        const double x = std::sqrt(P * (1.0 + P / shear) / bending) * (L0 - s);
        // As sines, so that the pole of the tangent is no change of sign; the root at x = 0 is left out by the start.
        return (1.0 + P / shear) * std::sin(x) - x * std::cos(x);
    };
    double high = 0.001 * L0;
    while (residual(high) > 0.0) high += 0.001 * L0;
    return test::root_between(high - 0.001 * L0, high, residual) * mm;
}

double equivalent_seating_coefficient(const Inputs& in) {
    const double wanted = in_mm(clamped_hinged_deflection(in));
    return test::root_between(0.6, 0.9, [&](double coefficient) {
        return in_mm(buckling_deflection(in.with("seating_coefficient", coefficient))) - wanted;
    });
}

double rate_ratio(const Inputs& in) {
    return spring::transverse_rate_ratio(in.number("slenderness"), in.number("compression"), moduli(in));
}
Rate transverse_rate(const Inputs& in) { return in.get<Rate>("rate") * rate_ratio(in); }
Force transverse_force(const Inputs& in) { return spring::transverse_force(transverse_rate(in), sideways(in)); }

double seating_use(const Inputs& in) {
    return spring::seating_use(load(in), transverse_force(in), D(in), sideways(in), length(in));
}
/// F_Q L [N mm], the moment that rocks the ends, and F (D - s_Q), the one that holds them.
double rocking_moment(const Inputs& in) { return in_base_unit(transverse_force(in) * length(in)); }
double holding_moment(const Inputs& in) { return rocking_moment(in) / seating_use(in); }

Length largest_sideways(const Inputs& in) {
    const double widest = in_mm(D(in));
    return test::root_between(1e-6 * widest, (1.0 - 1e-9) * widest,
                              [&](double s) { return seating_use(in.with("sideways", s)) - 1.0; }) *
           mm;
}

}  // namespace

Quantities stability_quantities() {
    return {
        {"seating_coefficient", given_number()},
        {"sideways", given<Length>()},
        {"buckling_share_of_chart", given_number()},
        {"shear_over_young", plain([](const Inputs& in) -> double {
             return in.get<Stress>("shear_modulus") / in.get<Stress>("young_modulus");
         })},
        {"stable_slenderness", plain([](const Inputs& in) { return spring::stable_slenderness(moduli(in), nu(in)); })},
        {"stable_length",
         worked_out<Length>([](const Inputs& in) { return spring::stable_slenderness(moduli(in), nu(in)) * D(in); })},
        {"buckles_at_some_deflection", plain([](const Inputs& in) {
             return std::isfinite(spring::buckling_share(in.number("slenderness"), moduli(in), nu(in))) ? 1.0 : 0.0;
         })},
        {"buckling_deflection", worked_out<Length>(buckling_deflection)},
        {"buckling_force", worked_out<Force>([](const Inputs& in) {
             return spring::force(in.get<Rate>("rate"), buckling_deflection(in));
         })},
        {"buckling_force_by_chart", worked_out<Force>([](const Inputs& in) {
             return spring::force(in.get<Rate>("rate"), in.number("buckling_share_of_chart") * free_length(in));
         })},
        {"clamped_hinged_deflection", worked_out<Length>(clamped_hinged_deflection)},
        {"equivalent_seating_coefficient", plain(equivalent_seating_coefficient)},
        {"compression",
         plain([](const Inputs& in) -> double { return in.get<Length>("deflection") / free_length(in); })},
        {"transverse_rate_ratio", plain(rate_ratio)},
        {"transverse_rate", worked_out<Rate>(transverse_rate)},
        {"transverse_force", worked_out<Force>(transverse_force)},
        {"combined_stress", worked_out<Stress>([](const Inputs& in) {
             return spring::combined_stress(load(in), transverse_force(in), in.get<Length>("wire_diameter"), D(in),
                                            sideways(in), length(in));
         })},
        {"holding_moment_n_mm", plain(holding_moment)},
        {"rocking_moment_n_mm", plain(rocking_moment)},
        {"largest_sideways", worked_out<Length>(largest_sideways)},
    };
}

}  // namespace seatload::published
