// SPDX-License-Identifier: MIT
// Laws of rate, stress and energy, named by the equation that must hold.
#include <cmath>
#include <numbers>

#include <seatload/spring/helix.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/spring/stress.hpp>

#include "consistency/laws.hpp"

using namespace seatload::spring;
using namespace seatload::consistency;

namespace {

double design_rate(const Design& x) { return rate(x.G_mpa, x.d_mm, x.D_mm, x.n); }

/// Factors are a matter of index alone; this is a fine row of them.
template <class Law>
void for_each_index(Law law) {
    for (double w = 3.0; w <= 25.0; w += 0.01) {
        INFO("w " << w);
        law(w);
    }
}

}  // namespace

TEST_CASE("k_en_eq_shigley_kb") {
    for_each_index(
        [](double w) { REQUIRE_THAT(bergstraesser_factor(w), WithinRel((4.0 * w + 2.0) / (4.0 * w - 3.0), 4e-16)); });
}

TEST_CASE("k_wahl_less_k_bergstraesser_eq_printed_range") {
    // (K_W - K_B)/K_W runs from 1.36 % at C = 4 down to 0.743 % at C = 12: Shigley, solutions of ch. 10.
    const auto share = [](double w) { return 100.0 * (wahl_factor(w) - bergstraesser_factor(w)) / wahl_factor(w); };
    CHECK_THAT(share(4.0), WithinAbs(1.36, 0.005));
    CHECK_THAT(share(12.0), WithinAbs(0.743, 0.0005));
    for_each_index([](double w) { REQUIRE(wahl_factor(w) > bergstraesser_factor(w)); });
}

TEST_CASE("k_goehner_eq_k_bergstraesser_within_0.13_percent") {
    for (double w = 4.0; w <= 20.0; w += 0.01)
        REQUIRE_THAT(goehner_factor(w), WithinRel(bergstraesser_factor(w), 0.00135));  // 0.13 % as printed, rounded
}

TEST_CASE("every_factor_falls_with_index") {
    for_each_index([](double w) {
        for (const auto factor : {bergstraesser_factor, wahl_factor, goehner_factor, direct_shear_factor}) {
            REQUIRE(factor(w) > factor(w + 0.01));
            REQUIRE(factor(w) > 1.0);
        }
    });
}

TEST_CASE("tau_from_force_eq_tau_from_deflection") {
    for_each_design([](const Design& x) {
        const double s = 0.3 * x.pitch_mm * x.n;
        REQUIRE_THAT(stress(design_rate(x) * s, x.d_mm, x.D_mm),
                     WithinRel(stress_at_deflection(x.G_mpa, x.d_mm, x.D_mm, x.n, s), kRounding));
    });
}

TEST_CASE("force_for_stress_undoes_stress") {
    for_each_design([](const Design& x) {
        REQUIRE_THAT(stress(force_for_stress(700.0, x.d_mm, x.D_mm), x.d_mm, x.D_mm), WithinRel(700.0, kRounding));
    });
}

TEST_CASE("active_coils_for_rate_undoes_rate") {
    for_each_design([](const Design& x) {
        REQUIRE_THAT(active_coils_for_rate(x.G_mpa, x.d_mm, x.D_mm, design_rate(x)), WithinRel(x.n, kRounding));
    });
}

TEST_CASE("rate_scales_as_G_d4_over_D3_n") {
    for_each_design([](const Design& x) {
        const double R = design_rate(x);
        REQUIRE_THAT(rate(2.0 * x.G_mpa, x.d_mm, x.D_mm, x.n), WithinRel(2.0 * R, kRounding));
        REQUIRE_THAT(rate(x.G_mpa, 2.0 * x.d_mm, x.D_mm, x.n), WithinRel(16.0 * R, kRounding));
        REQUIRE_THAT(rate(x.G_mpa, x.d_mm, 2.0 * x.D_mm, x.n), WithinRel(R / 8.0, kRounding));
        REQUIRE_THAT(rate(x.G_mpa, x.d_mm, x.D_mm, 2.0 * x.n), WithinRel(R / 2.0, kRounding));
    });
}

TEST_CASE("one_over_rate_adds_up_for_springs_end_to_end") {
    for_each_design([](const Design& x) {
        const double part = rate(x.G_mpa, x.d_mm, x.D_mm, 0.3 * x.n);
        const double rest = rate(x.G_mpa, x.d_mm, x.D_mm, 0.7 * x.n);
        REQUIRE_THAT(1.0 / part + 1.0 / rest, WithinRel(1.0 / design_rate(x), kRounding));
    });
}

TEST_CASE("work_eq_half_force_times_deflection") {
    for_each_design([](const Design& x) {
        const double s = 0.4 * x.n * x.pitch_mm;
        REQUIRE_THAT(work(design_rate(x), s), WithinRel(0.5 * force(design_rate(x), s) * s, kRounding));
    });
}

TEST_CASE("work_eq_tau_squared_volume_over_four_G") {
    // Elastic energy of a bar in torsion: half of tau^2/(2 G) on average over the section, times the active wire.
    for_each_design([](const Design& x) {
        const double s = 0.2 * x.n * x.pitch_mm;
        const double tau = stress(design_rate(x) * s, x.d_mm, x.D_mm);
        const double volume = wire_mass(1.0, x.d_mm, std::numbers::pi * x.D_mm * x.n);
        REQUIRE_THAT(work(design_rate(x), s), WithinRel(tau * tau * volume / (4.0 * x.G_mpa), kRounding));
    });
}

TEST_CASE("similar_springs_have_rate_as_size_and_stress_as_one_over_size_squared") {
    constexpr double k = 3.7;
    for_each_design([](const Design& x) {
        REQUIRE_THAT(rate(x.G_mpa, k * x.d_mm, k * x.D_mm, x.n), WithinRel(k * design_rate(x), kRounding));
        REQUIRE_THAT(stress(5.0, k * x.d_mm, k * x.D_mm), WithinRel(stress(5.0, x.d_mm, x.D_mm) / (k * k), kRounding));
    });
}
