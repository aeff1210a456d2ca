// SPDX-License-Identifier: MIT
// The tension and compression spring of A. D. Belegundu (1982) and J. Arora, Introduction to Optimum BarDesign (1989),
// in the form with bare constants that later papers hand on (example OPT-TCS-71785). Its constants are our mechanics at
// G = 11.5 Mpsi, 10 lbf, 0.5 in, 80 000 psi, 100 Hz and a density of 7.38342e-4 lbf s2/in4; all but one.
#include <array>
#include <cmath>
#include <numbers>

#include <seatload/spring/helix.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/spring/surge.hpp>

#include "support/check.hpp"
#include "support/solve.hpp"

namespace {

namespace spring = seatload::spring;

// Inch, pound-force and second throughout: the templates take any coherent system.
constexpr double kShearModulus = 11.5e6;
constexpr double kLoad = 10.0;
constexpr double kDeflection = 0.5;
constexpr double kPermitted = 80000.0;
constexpr double kDensity = 7.38342e-4;
constexpr double kLowestFrequency = 100.0;

struct BarDesign {
    double d, D, N;
};
constexpr std::array kDesigns{BarDesign{0.05, 0.3159, 14.25}, BarDesign{0.053396, 0.39918, 9.1854},
                              BarDesign{0.06, 0.55, 6.0}};

double deflection(const BarDesign& x) { return kLoad / spring::rate(kShearModulus, x.d, x.D, x.N); }
double stress(const BarDesign& x) { return spring::wahl_factor(x.D / x.d) * spring::stress(kLoad, x.d, x.D); }

/// (N + 2) D d^2, the wire volume without pi^2/4.
double objective(const BarDesign& x) {
    const double coils = x.N + 2.0;
    return spring::wire_mass(1.0, x.d, spring::wire_length(0.0, 0.0, x.D, coils, coils)) * 4.0 /
           (std::numbers::pi * std::numbers::pi);
}

/// Stress at its limit, and the deflection under the load just the one given.
BarDesign at_the_limits(double d, double least_deflection) {
    const double D = seatload::test::root_between(1.5 * d, 100.0 * d, [&](double tried) {
        return stress({d, tried, 1.0}) - kPermitted;
    });
    return {d, D, spring::active_coils_for_rate(kShearModulus, d, D, kLoad / least_deflection)};
}

BarDesign best_for(double least_deflection) {
    const auto size = [&](double d) { return objective(at_the_limits(d, least_deflection)); };
    return at_the_limits(seatload::test::lowest_between(0.05, 0.06, size), least_deflection);
}

}  // namespace

TEST_CASE("the stress constants 12566 and 5108 are our stress with Wahl's factor") {
    for (const BarDesign& x : kDesigns) {
        const double handed_on =
            (4.0 * x.D * x.D - x.d * x.D) / (12566.0 * (x.D * x.d * x.d * x.d - std::pow(x.d, 4))) +
            1.0 / (5108.0 * x.d * x.d);
        CHECK_THAT(stress(x) / kPermitted,
                   WithinRel(handed_on, 5e-5));  // 12566.37 and 5108.5 were cut to whole numbers
    }
}

TEST_CASE("the frequency constant 140.45 is our surge frequency") {
    for (const BarDesign& x : kDesigns) {
        const double constant =
            spring::surge_frequency(kShearModulus, kDensity, x.d, x.D, x.N) / kLowestFrequency * x.D * x.D * x.N / x.d;
        CHECK_THAT(constant, WithinAbs(140.45, 0.005));
    }
}

TEST_CASE("the deflection constant 71785 is 71875 with two digits swapped") {
    // Known disagreement of the source with its own mechanics, -0.125 %: D^3 N / d^4 at a deflection of half an inch.
    for (const BarDesign& x : kDesigns) {
        const double constant = x.D * x.D * x.D * x.N / std::pow(x.d, 4) * kDeflection / deflection(x);
        CHECK_THAT(constant, WithinRel(71875.0, 1e-12));
        CHECK_THAT((constant - 71785.0) / 71785.0, WithinAbs(0.00125, 0.000005));
    }
}

TEST_CASE("a design made to 71785 does not deflect by the half inch asked for") {
    const BarDesign first{0.05, 0.3159, 14.25};                     // Belegundu 1982, made to 71875
    const BarDesign later{0.052160217, 0.368158695, 10.648442259};  // Ray and Liew 2003, made to 71785
    CHECK(deflection(first) >= kDeflection);
    CHECK_THAT(deflection(later), WithinRel(kDeflection * 71785.0 / 71875.0, 1e-7));
}

TEST_CASE("the best design to 71785 has the published objective") {
    const BarDesign best = best_for(kDeflection * 71785.0 / 71875.0);
    // f = 0.012665232788, d = 0.05168906 in, D = 0.3567177 in, N = 11.288965 (CEC-2020, problem RC17; arguments from
    // memory). Not to the last digit: that follows from 12566 and 5108, which were cut by 3e-5 and 1e-4.
    CHECK_THAT(objective(best), WithinRel(0.012665232788, 7e-5));
    CHECK_THAT(best.d, WithinRel(0.05168906, 1e-3));  // the valley is flat, so arguments follow the constants loosely
    CHECK_THAT(best.D, WithinRel(0.3567177, 1e-3));
    CHECK_THAT(best.N, WithinRel(11.288965, 2e-3));
    CHECK(objective(best_for(kDeflection)) > objective(best));  // the half inch in full costs more wire
}
