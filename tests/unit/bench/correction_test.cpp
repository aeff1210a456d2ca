// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>

#include <seatload/bench/correction.hpp>
#include <seatload/bench/gravity.hpp>
#include <seatload/bench/load_path.hpp>
#include <support/check.hpp>
#include <unit/bench/simulated_bench.hpp>

using namespace seatload;
using namespace seatload::bench;

namespace {

constexpr double kGramForce = 0.00980665;  // N, exact

/// A bench that reads without error, its indicator bearing on the pan with 55 gf.
Readings indicator_bench(Bearing bearing) {
    Readings session;
    session.scale.adjusted_at = StandardGravity{};
    session.scale.resolution = 1.0 * gram;
    session.gauge.resolution = 0.01 * mm;
    session.indicator.bearing = bearing;
    session.indicator.plunger = 55.0 * kGramForce * newton;
    return session;
}

double grams_carried(const Readings& session, const Reading& reading) {
    return corrected(session, reading).value().force_n / kGramForce;
}

Reading shows(double height, double grams) { return {height * mm, {}, grams * gram, false}; }

}  // namespace

TEST_CASE("a scale that shows 800 g under an indicator of 55 g carries a spring of 745 g") {
    // Common practice, no source: the scale was tared without the indicator, whose plunger then presses the pan.
    CHECK_THAT(grams_carried(indicator_bench(Bearing::adds), shows(9.0, 800.0)), WithinAbs(745.0, 1e-9));
    CHECK_THAT(grams_carried(indicator_bench(Bearing::relieves), shows(9.0, 800.0)), WithinAbs(855.0, 1e-9));
    CHECK_THAT(grams_carried(indicator_bench(Bearing::none), shows(9.0, 800.0)), WithinAbs(800.0, 1e-9));
}

TEST_CASE("500 gf seated and 745 gf six millimetres further make a rate of 0.400 N per mm") {
    // Common practice, no source. A third reading halfway makes it a line with a check.
    const Readings session = indicator_bench(Bearing::adds);
    const auto run = test::run_of({shows(15.0, 555.0), shows(12.0, 677.5), shows(9.0, 800.0)});
    const auto found = measure(session, run).spring;
    REQUIRE(found);
    CHECK_THAT(in_newton_per_mm(found->rate.value), WithinAbs(0.400, 0.0005));
}

TEST_CASE("a plunger that touched the pan when the scale was tared counts only by what its force has changed") {
    Readings session = indicator_bench(Bearing::adds);
    session.indicator.plunger = PlungerLine{55.0 * kGramForce * newton, 2.0 * kGramForce * newton_per_mm};
    session.indicator.tare_travel = 3.0 * mm;
    Reading reading = shows(9.0, 800.0);
    reading.travel = 10.0 * mm;
    CHECK_THAT(grams_carried(session, reading), WithinAbs(800.0 - 14.0, 1e-9));
    session.indicator.tare_travel.reset();
    CHECK_THAT(grams_carried(session, reading), WithinAbs(800.0 - 75.0, 1e-9));
    // Without a travel the height tells it, where the two are tied.
    reading.travel.reset();
    CHECK_FALSE(corrected(session, reading));
    session.indicator.height_at_zero = {19.0 * mm, {}};
    CHECK_THAT(grams_carried(session, reading), WithinAbs(800.0 - 75.0, 1e-9));
}

TEST_CASE("a table of plunger forces runs straight between its rows and not beyond them") {
    Indicator indicator;
    indicator.plunger = PlungerTable{{0.0 * mm, 0.5 * newton}, {4.0 * mm, 0.7 * newton}, {10.0 * mm, 1.0 * newton}};
    CHECK_THAT(plunger_force_n(indicator, 0.0 * mm).value(), WithinRel(0.5, 1e-14));
    CHECK_THAT(plunger_force_n(indicator, 1.0 * mm).value(), WithinRel(0.55, 1e-14));
    CHECK_THAT(plunger_force_n(indicator, 4.0 * mm).value(), WithinRel(0.7, 1e-14));
    CHECK_THAT(plunger_force_n(indicator, 10.0 * mm).value(), WithinRel(1.0, 1e-14));
    CHECK_FALSE(plunger_force_n(indicator, 10.1 * mm));
    CHECK_FALSE(plunger_force_n(indicator, -0.1 * mm));
    CHECK_FALSE(plunger_force_n(indicator, std::nullopt));
}

TEST_CASE("a tare is taken off, and a scale that reads force needs no gravity") {
    Readings session;
    session.scale.tare = 0.5 * newton;
    const Reading reading{10.0 * mm, {}, 4.5 * newton, false};
    for (const Adjustment& adjusted : {Adjustment{}, Adjustment{StandardGravity{}}, Adjustment{Site{}}}) {
        session.scale.adjusted_at = adjusted;
        CHECK(corrected(session, reading).value().force_n == 4.0);
    }
}

TEST_CASE("where the scale was adjusted decides what a gram weighs, and not knowing it is a doubt") {
    const Gravity place = gravity_of(Site{0.25 * std::numbers::pi * radian, Length{}});
    CHECK_THAT(place.value, WithinAbs(9.80619, 0.000005));
    CHECK(place.plus_minus > 0.0);
    CHECK(gravity_of(StandardGravity{}).value == 9.80665);
    CHECK(gravity_of(StandardGravity{}).plus_minus == 0.0);
    // From equator to pole 9.780 to 9.832 m/s2 at sea level (geodesy textbooks, memory).
    const Gravity unknown = gravity_of(std::monostate{});
    CHECK(unknown.value == 9.80665);
    CHECK_THAT(unknown.plus_minus, WithinAbs(0.0263, 0.0005));
}

TEST_CASE("a travel becomes the height where the indicator shows zero less the travel") {
    Readings session;
    session.indicator.height_at_zero = {24.0 * mm, 0.1 * mm};
    const Reading reading{{}, 9.0 * mm, 5.0 * newton, false};
    CHECK_THAT(corrected(session, reading).value().height_mm, WithinRel(15.0, 1e-14));
    session.indicator.height_at_zero.reset();
    CHECK_FALSE(corrected(session, reading));
}

TEST_CASE("a run on a rigid block gives the stiffness of the load path and its doubt") {
    Readings session;
    session.scale.resolution = 0.01 * newton;
    session.scale.adjusted_at = StandardGravity{};
    session.indicator.resolution = 0.001 * mm;
    // A platform scale that sinks 0.3 mm under 5 kgf: about 163 N/mm (derived).
    for (const double force : {0.0, 10.0, 20.0, 30.0, 40.0, 50.0})
        session.load_path.block_run.push_back({(0.02 + force / 163.0) * mm, force * newton});
    const auto k = load_path_stiffness(session);
    REQUIRE(k);
    CHECK_THAT(in_newton_per_mm(k->value), WithinRel(163.0, 1e-9));
    // Travels alone in doubt by 0.001/sqrt(12) mm; loads of 0.01/sqrt(12) N are nothing against that: u(1/k) is
    // u_s / sqrt(sum (F - mean)^2), the sum being 1750 N2.
    const double u_compliance = 0.001 / std::sqrt(12.0) / std::sqrt(1750.0);
    CHECK_THAT(in_newton_per_mm(k->standard), WithinRel(163.0 * 163.0 * u_compliance, 0.005));
    session.load_path.stiffness = {200.0 * newton_per_mm, 2.0 * newton_per_mm};
    CHECK_THAT(in_newton_per_mm(load_path_stiffness(session)->value), WithinRel(200.0, 1e-12));
    CHECK_THAT(in_newton_per_mm(load_path_stiffness(session)->standard), WithinRel(2.0 / std::sqrt(3.0), 1e-12));
    session.load_path = {};
    CHECK_FALSE(load_path_stiffness(session));
}

TEST_CASE("a spring measured through a soft load path has its own rate and free length") {
    Readings session = test::usual_bench();
    const test::TrueSpring spring{9.18344, 60.0};
    const double k = 160.0;
    std::vector<Reading> readings;
    for (const double force : {20.0, 60.0, 100.0, 140.0, 180.0})
        readings.push_back({(60.0 - force / spring.rate_n_mm - force / k) * mm, {}, force * newton, false});
    const auto found = measure(session, test::run_of(readings)).spring;
    REQUIRE(found);
    CHECK_THAT(in_newton_per_mm(found->rate.value), WithinRel(spring.rate_n_mm, 1e-10));
    CHECK_THAT(in_mm(found->free_length.value), WithinRel(60.0, 1e-10));
    // 1/R_app = 1/R + 1/k (springs in series).
    session.load_path = {};
    const auto rigid = measure(session, test::run_of(readings)).spring;
    CHECK_THAT(in_newton_per_mm(rigid->rate.value), WithinRel(1.0 / (1.0 / 9.18344 + 1.0 / k), 1e-10));
}
