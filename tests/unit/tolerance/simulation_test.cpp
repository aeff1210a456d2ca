// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>

#include <seatload/tolerance/simulation.hpp>
#include <support/check.hpp>

using namespace seatload;
using tolerance::Lot;
using tolerance::LotModel;

namespace {

/// Spring A of the reference calculations (d 3, D 24, n 6.5, L0 60, G 81500), all tolerances scaled.
LotModel spring_a(double scale, bool outside_rules = true) {
    LotModel m;
    m.wire_diameter = {3.0, 0.025 * scale, 0.0};
    m.coil_diameter = {outside_rules ? 27.0 : 21.0, 0.35 * scale, 0.5};
    m.outside_rules = outside_rules;
    m.active_coils = {6.5, 0.25 * scale, 0.5};
    m.free_length = {60.0, 1.5 * scale, 0.5};
    m.shear_modulus = {81500.0, 1600.0 * scale, 0.0};
    m.lengths = {48.0, 36.0};
    return m;
}

/// Rate of spring A, R = G d^4 / (8 D^3 n) (EN 13906-1 cl. 9.4), worked out here.
constexpr double kSimulatedRate = 81500.0 * 81.0 / (8.0 * 13824.0 * 6.5);

/// Standard deviation of F = R (L0 - L) by dR/R = 4 dd/d - 3 dD/D - dn/n + dG/G and dF = R dL0, with dD = dDe - dd or
/// dDi + dd.
double propagated(const LotModel& m, double length, bool within_lot) {
    const double F = kSimulatedRate * (60.0 - length);
    const auto sigma = [&](const tolerance::Spread& s) {
        return s.plus_minus / 3.0 * (within_lot ? s.within_lot : 1.0);
    };
    const double wire = F * (4.0 / 3.0 + (m.outside_rules ? 1.0 : -1.0) * 3.0 / 24.0) * sigma(m.wire_diameter);
    const double coil = F * 3.0 / 24.0 * sigma(m.coil_diameter);
    const double coils = F / 6.5 * sigma(m.active_coils);
    const double modulus = F / 81500.0 * sigma(m.shear_modulus);
    const double free = kSimulatedRate * sigma(m.free_length);
    return std::sqrt(wire * wire + coil * coil + coils * coils + modulus * modulus + free * free);
}

/// Standard deviation of a normal variable cut off at three of its own: sqrt(1 - 6 phi(3) / (2 Phi(3) - 1)).
double cut_off_share() {
    const double density = std::exp(-4.5) / std::sqrt(2.0 * std::numbers::pi);
    return std::sqrt(1.0 - 6.0 * density / std::erf(3.0 / std::numbers::sqrt2));
}

tolerance::SimulationOptions options(long springs) {
    tolerance::SimulationOptions o;
    o.springs = springs;
    o.seed = 7;
    o.histogram_from = {90.0, 190.0};
    o.histogram_to = {130.0, 250.0};
    return o;
}

}  // namespace

TEST_CASE("simulated loads have the mean and spread that propagation of the tolerances gives") {
    constexpr long kSprings = 400000;
    for (const bool outside : {true, false}) {
        // A tenth of the tolerances: what is not linear then falls below the noise of so many springs.
        const LotModel m = spring_a(0.1, outside);
        const auto found = tolerance::simulate(m, options(kSprings));
        for (std::size_t i = 0; i < 2; ++i) {
            CAPTURE(outside, i);
            const double sigma = propagated(m, m.lengths[i], false) * cut_off_share();
            // Five standard errors: of a mean sigma/sqrt(N), of a deviation sigma/sqrt(2N); besides, the curvature of
            // 1/D^3 moves the mean by 6 (sigma_D/D)^2, that of d^4 by as much again: below 0.01 N here.
            CHECK_THAT(found.mean[i], WithinAbs(kSimulatedRate * (60.0 - m.lengths[i]),
                                                5.0 * sigma / std::sqrt(1.0 * kSprings) + 0.01));
            CHECK_THAT(found.standard_deviation[i], WithinRel(sigma, 5.0 / std::sqrt(2.0 * kSprings)));
        }
    }
}

TEST_CASE("the first-order spread is the root of the sum of squares of the sensitivities") {
    for (const bool outside : {true, false}) {
        const LotModel m = spring_a(1.0, outside);
        for (const double length : m.lengths) {
            CHECK_THAT(tolerance::first_order_deviation_n(m, Lot::any, length),
                       WithinRel(propagated(m, length, false), 1e-12));
            CHECK_THAT(tolerance::first_order_deviation_n(m, Lot::adjusted, length),
                       WithinRel(propagated(m, length, true), 1e-12));
        }
    }
}

TEST_CASE("an adjusted lot has the mean loads wanted, and the spread within a lot alone") {
    constexpr long kSprings = 400000;
    const LotModel m = spring_a(0.1);
    auto o = options(kSprings);
    o.lot = Lot::adjusted;
    o.adjusted_to = {114.0, 223.0};
    const auto found = tolerance::simulate(m, o);
    CHECK_THAT(found.mean[0], WithinRel(114.0, 1e-12));
    CHECK_THAT(found.mean[1], WithinRel(223.0, 1e-12));
    CHECK_THAT(found.rate_mean, WithinRel((223.0 - 114.0) / 12.0, 1e-12));
    for (std::size_t i = 0; i < 2; ++i) {
        // Adjusting stretches the spread as it stretches the loads, here by less than 2 %.
        const double sigma = propagated(m, m.lengths[i], true) * cut_off_share();
        CHECK_THAT(found.standard_deviation[i], WithinRel(sigma, 0.02));
        CHECK(found.standard_deviation[i] < propagated(m, m.lengths[i], false));
    }
}

TEST_CASE("simulated loads are spread like the normal curve when the tolerances are small") {
    constexpr long kSprings = 200000;
    // One number alone strays, so that the curve is the cut-off normal one itself.
    LotModel m = spring_a(0.0);
    m.free_length.plus_minus = 0.3;
    auto o = options(kSprings);
    const double F1 = kSimulatedRate * 12.0;
    const double reach = kSimulatedRate * 0.3;
    o.bins = 12;
    o.histogram_from[0] = F1 - reach * (1.0 + 1e-9);
    o.histogram_to[0] = F1 + reach * (1.0 + 1e-9);
    const auto found = tolerance::simulate(m, o);
    long counted = 0;
    for (int b = 0; b < 12; ++b) {
        CAPTURE(b);
        const auto below = [](double z) { return 0.5 * std::erf(z / std::numbers::sqrt2); };
        const double share = (below(-3.0 + 0.5 * (b + 1)) - below(-3.0 + 0.5 * b)) / (2.0 * below(3.0));
        const double expected = share * kSprings;
        const long in_bin = found.histogram[0][static_cast<std::size_t>(b)];
        CHECK_THAT(static_cast<double>(in_bin), WithinAbs(expected, 5.0 * std::sqrt(expected)));
        counted += in_bin;
    }
    CHECK(counted == kSprings);
}

TEST_CASE("a simulation gives the same numbers with one thread and with four, and again") {
    for (const Lot lot : {Lot::any, Lot::adjusted}) {
        auto o = options(50001);
        o.lot = lot;
        o.adjusted_to = {110.5, 221.0};
        o.windows = {{{105.0, 210.0}, {118.0, 235.0}}};
        const LotModel m = spring_a(1.0);
        const auto one = tolerance::simulate(m, o);
        o.threads = 4;
        for (int again = 0; again < 2; ++again) {
            const auto four = tolerance::simulate(m, o);
            CHECK(one.mean == four.mean);
            CHECK(one.standard_deviation == four.standard_deviation);
            CHECK(one.rate_mean == four.rate_mean);
            CHECK(one.rate_standard_deviation == four.rate_standard_deviation);
            CHECK(one.histogram == four.histogram);
            CHECK(one.inside == four.inside);
        }
        o.seed = 8;
        CHECK(one.histogram != tolerance::simulate(m, o).histogram);
    }
}

TEST_CASE("windows count the springs whose loads lie inside at both lengths") {
    constexpr double kFar = 1e9;
    LotModel m = spring_a(0.0);
    m.free_length.plus_minus = 0.9;
    auto o = options(100000);
    const double F1 = kSimulatedRate * 12.0, F2 = kSimulatedRate * 24.0,
                 shift = kSimulatedRate * 0.3;  // one standard deviation of L0
    o.windows = {{},
                 {{F1 - shift, -kFar}, {F1 + shift, kFar}},
                 {{F1 - shift, F2}, {F1 + shift, kFar}},
                 {{F1, F2}, {F1 - 1.0, F2 - 1.0}}};
    const auto found = tolerance::simulate(m, o);
    REQUIRE(found.inside.size() == 4);
    CHECK(found.inside[0] == 100000);
    // Within one of three standard deviations: 0.6827/0.9973 of them; five standard errors of a share.
    const double within_one = std::erf(1.0 / std::numbers::sqrt2) / std::erf(3.0 / std::numbers::sqrt2);
    CHECK_THAT(static_cast<double>(found.inside[1]) / 1e5, WithinAbs(within_one, 5.0 * 0.5 / std::sqrt(1e5)));
    CHECK_THAT(static_cast<double>(found.inside[2]) / 1e5, WithinAbs(0.5 * within_one, 5.0 * 0.5 / std::sqrt(1e5)));
    CHECK(found.inside[3] == 0);
}
