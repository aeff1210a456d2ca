// SPDX-License-Identifier: MIT
#include <cmath>

#include <seatload/bench/budget.hpp>
#include <seatload/bench/measured_coil.hpp>
#include <seatload/bench/wire_inference.hpp>

namespace seatload::bench {

namespace {

template <class Q>
Difference<Q> judged(Estimate<Q> estimate) {
    const bool significant = std::abs(in_base_unit(estimate.value)) > in_base_unit(estimate.expanded);
    return {std::move(estimate), significant};
}

std::string good_name(const MeasuredSpring& good) { return "the spring \"" + good.name + "\""; }

// R goes with d^4 where D and n are the same, so the wire would be thinner by d (1 - (R/R_good)^(1/4)).
Difference<Length> wear_between(const MeasuredCoil& coil, const MeasuredSpring& spring, const MeasuredSpring& good) {
    const double R = in_newton_per_mm(spring.rate.value), R_good = in_newton_per_mm(good.rate.value);
    const double d = coil.wire_diameter_mm.value;
    const double left = std::pow(R / R_good, 0.25);
    const Comparison c = compare(good, spring);
    const double u_rates = in_newton_per_mm(c.rate.estimate.standard);
    Contribution<Length> rates{"difference of the rates", 0.25 * d * left * u_rates / R * mm};
    rates.degrees_of_freedom = c.rate.estimate.degrees_of_freedom;
    const double u_d = rectangular(coil.wire_diameter_mm.plus_minus);
    return judged(combine<Length>(d * (1.0 - left) * mm, {rates, {"wire diameter d", std::abs(1.0 - left) * u_d * mm}},
                                  good.coverage_factor));
}

// The wire that gives the rate: d_rate = (8 D^3 n R / G)^(1/4), D = De - d as measured; worn = d - d_rate.
Difference<Length> wear_against(const wire::Grade& grade, const Readings& session, const MeasuredCoil& coil,
                                const MeasuredSpring& spring) {
    const double d = coil.wire_diameter_mm.value, D = coil.mean_diameter_mm(), n = coil.active_coils.value;
    const double R = in_newton_per_mm(spring.rate.value);
    const double G = in_mpa(modulus_of(grade, d * mm, session.temperature.value));
    const double by_rate = std::pow(8.0 * D * D * D * n * R / G, 0.25);
    const auto part = [](const char* name, double standard) {
        return Contribution<Length>{name, std::abs(standard) * mm};
    };
    auto of_rate = part("rate", 0.25 * by_rate * in_newton_per_mm(spring.rate.standard) / R);
    of_rate.degrees_of_freedom = spring.rate.degrees_of_freedom;
    return judged(combine<Length>(
        (d - by_rate) * mm,
        {part("wire diameter d", (1.0 + 0.75 * by_rate / D) * rectangular(coil.wire_diameter_mm.plus_minus)),
         part("outside diameter De", 0.75 * by_rate / D * rectangular(coil.outside_diameter_mm.plus_minus)),
         part("active coils n", 0.25 * by_rate / n * rectangular(coil.active_coils.plus_minus)), of_rate},
        spring.coverage_factor));
}

Difference<Length> set_against(const Stated<Length>& when_new, const MeasuredSpring& spring) {
    auto doubt = spring.free_length.budget;
    doubt.push_back({"free length when new", rectangular(when_new.plus_minus)});
    return judged(combine(when_new.value - spring.free_length.value, std::move(doubt), spring.coverage_factor));
}

}  // namespace

Weakening explain(const SpringRun& run, const MeasuredSpring& spring, const SpringRun& good_run,
                  const MeasuredSpring& good) {
    Weakening w;
    w.set = compare(good, spring).free_length;
    w.set_against = good_name(good);
    CoilAnswer coil = measured_coil(good_run.dimensions);
    if (!coil.coil) coil = measured_coil(run.dimensions);
    if (!coil.coil) return w;
    w.worn_wire = wear_between(*coil.coil, spring, good);
    w.worn_against = good_name(good);
    return w;
}

Weakening explain(const Readings& session, const SpringRun& run, const MeasuredSpring& spring,
                  const wire::Catalogue& catalogue) {
    Weakening w;
    if (const auto& when_new = run.dimensions.free_length_new) {
        w.set = set_against(*when_new, spring);
        w.set_against = "the free length when new";
    }
    const wire::Grade* grade = run.dimensions.grade.empty() ? nullptr : catalogue.find(run.dimensions.grade);
    const CoilAnswer coil = measured_coil(run.dimensions);
    if (!grade || !coil.coil) return w;
    w.worn_wire = wear_against(*grade, session, *coil.coil, spring);
    w.worn_against = "wire of " + grade->id;
    return w;
}

}  // namespace seatload::bench
