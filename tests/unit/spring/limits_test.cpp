// SPDX-License-Identifier: MIT
// What each formula does at the ends of its range. Values stand in tests/published, laws in tests/consistency.
#include <cmath>

#include <seatload/spring/buckling.hpp>
#include <seatload/spring/fatigue.hpp>
#include <seatload/spring/growth.hpp>
#include <seatload/spring/lateral.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/spring/temperature.hpp>
#include <seatload/units/quantities.hpp>

#include "support/check.hpp"

using namespace seatload;
using namespace seatload::spring;

namespace {

constexpr double kSteel = 81500.0 / 206000.0;  // G/E of EN 10270-1 wire

}  // namespace

TEST_CASE("every stress factor goes to one for a slack coil") {
    for (const auto factor : {bergstraesser_factor, wahl_factor, goehner_factor, direct_shear_factor})
        CHECK_THAT(factor(1e9), WithinAbs(1.0, 1e-8));
}

TEST_CASE("a coil close wound when free does not widen") {
    for (const double d : {0.2, 1.0, 5.0}) {
        CHECK_THAT(growth_ends_free(d, d, 8.0 * d), WithinAbs(0.0, 1e-15 * d));
        CHECK_THAT(growth_ends_held(d, d, 8.0 * d), WithinAbs(0.0, 1e-15 * d));
    }
}

TEST_CASE("a short spring never buckles") {
    const double edge = stable_slenderness(kSteel, 1.0);
    CHECK(std::isinf(buckling_share(0.999 * edge, kSteel, 1.0)));
    CHECK(std::isfinite(buckling_share(1.001 * edge, kSteel, 1.0)));
    const Length s = buckling_deflection(20.0 * mm, 24.0 * mm, 81500.0 * MPa, 206000.0 * MPa, 0.5);
    CHECK(std::isinf(in_mm(s)));
    CHECK(in_mm(s) > 0.0);
}

TEST_CASE("on the edge of stability a spring buckles where the root is zero") {
    const double edge = stable_slenderness(kSteel, 0.5);
    CHECK_THAT(buckling_share(edge * (1.0 + 1e-12), kSteel, 0.5), WithinRel(0.5 / (1.0 - kSteel), 1e-5));
}

TEST_CASE("without compression the sideways rate is that of a beam with shear") {
    // R/R_Q = lambda^2/3 (1/2 + G/E) + G/E, derived from the same rod.
    for (const double slenderness : {0.5, 2.5, 6.0}) {
        const double limit = 1.0 / (slenderness * slenderness / 3.0 * (0.5 + kSteel) + kSteel);
        CHECK(transverse_rate_ratio(slenderness, 0.0, kSteel) == limit);
        CHECK_THAT(transverse_rate_ratio(slenderness, 1.01e-7, kSteel), WithinRel(limit, 1e-5));
        CHECK_THAT(transverse_rate_ratio(slenderness, 1e-5, kSteel),
                   WithinRel(limit, 2e-4));  // the true fall of the longest
    }
}

TEST_CASE("past the first half turn of its angle the sideways rate stays lost") {
    // Beyond the pole of the tangent the bare formula comes back positive; a spring that long has buckled before.
    double last = 1.0;
    bool lost = false;
    for (double compression = 0.001; compression < 0.95; compression += 0.001) {
        const double ratio = transverse_rate_ratio(8.0, compression, kSteel);
        CHECK(ratio <= last);
        CHECK_FALSE((lost && ratio > 0.0));
        lost = lost || ratio < 0.0;
        last = ratio;
    }
    CHECK(lost);
    CHECK(std::isinf(last));
}

TEST_CASE("moduli are whole at twenty degrees and fall with heat") {
    CHECK(modulus_share(2.5e-4, 20.0) == 1.0);
    CHECK_THAT(modulus_share(2.5e-4, 120.0), WithinRel(0.975, 1e-15));
    CHECK(modulus_share(2.5e-4, -30.0) > 1.0);
    CHECK(modulus_share(0.0, 250.0) == 1.0);
}

TEST_CASE("at the endurance point every fatigue factor is one") {
    constexpr EnduranceStress<double> point = zimmerli_mpa(true);
    CHECK_THAT(goodman_factor(point.amplitude, point.mean, point, 1232.8), WithinRel(1.0, 1e-14));
    CHECK_THAT(gerber_factor(point.amplitude, point.mean, point, 1232.8), WithinRel(1.0, 1e-14));
    CHECK_THAT(sines_factor(point.amplitude, point), WithinRel(1.0, 1e-14));
}

TEST_CASE("peening raises both stresses a spring endures") {
    CHECK(zimmerli_mpa(true).amplitude > zimmerli_mpa(false).amplitude);
    CHECK(zimmerli_mpa(true).mean > zimmerli_mpa(false).mean);
}
