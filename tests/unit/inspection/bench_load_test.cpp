// SPDX-License-Identifier: MIT
#include <seatload/inspection/bench_load.hpp>

#include <cmath>

#include <support/check.hpp>

using namespace seatload;
using namespace seatload::inspection;

namespace {

/// A bench that knows everything but what a test states.
bench::Readings bare_bench() {
    bench::Readings bench;
    bench.scale.adjusted_at = bench::StandardGravity{};
    bench.scale.resolution = Mass{};
    bench::SpringRun run;
    run.readings.push_back({15.0 * mm, std::nullopt, 100.0 * gram, false});
    bench.springs.push_back(run);
    return bench;
}

constexpr AskedLoad kAsked{15.0, 5.0, 1.2};

}  // namespace

TEST_CASE("Grams become the load that standard gravity gives them, less the tare") {
    bench::Readings bench = bare_bench();
    bench.scale.tare = 386.0 * gram;
    // 600 g x 9.80665 m/s2
    CHECK_THAT(load_from_scale(bench, 986.0 * gram, kAsked).value(), WithinAbs(5.88399, 1e-9));
}

TEST_CASE("A bench that gives way shows too little, and the load is carried to the height asked for") {
    bench::Readings bench = bare_bench();
    bench.load_path.stiffness = {100.0 * newton_per_mm, Rate{}};
    // The spring carries 5 N; the bench gives way by 0.05 mm, so that at the height asked for it carries 0.06 N more.
    CHECK_THAT(load_from_scale(bench, 5.0 * newton, kAsked).value(), WithinAbs(5.0 + 1.2 * 5.0 / 100.0, 1e-9));
}

TEST_CASE("The push of an indicator is taken off") {
    bench::Readings bench = bare_bench();
    bench.springs.front().readings.front() = {std::nullopt, 5.0 * mm, 100.0 * gram, false};
    bench.indicator.height_at_zero = {20.0 * mm, Length{}};
    bench.indicator.bearing = bench::Bearing::adds;
    bench.indicator.plunger = bench::PlungerLine{0.42 * newton, 0.031 * newton_per_mm};
    bench.indicator.tare_travel = Length{};
    // travel 5 mm: 0.031 x 5 N more than when it was tared
    CHECK_THAT(load_from_scale(bench, 6.0 * newton, kAsked).value(), WithinAbs(6.0 - 0.155, 1e-9));
}

TEST_CASE("U of one reading is twice the root of the sum of squares of what it rests on") {
    bench::Readings bench = bare_bench();
    bench.scale.resolution = 0.1 * newton;
    bench.scale.linearity = 0.05 * newton;
    bench.gauge.error = 0.02 * mm;
    bench.springs.front().readings.front().scale = 1.0 * newton;
    // reading less tare has two steps and leaves 1/sqrt(6) of one, a half width leaves 1/sqrt(3) (GUM F.2.2.1 and
    // 4.3.7); the height counts by the rate
    const double step = 0.1 / std::sqrt(6.0), linearity = 0.05 / std::sqrt(3.0), height = 1.2 * 0.02 / std::sqrt(3.0);
    const double u = std::sqrt(step * step + linearity * linearity + height * height);
    CHECK_THAT(expanded_of_one_reading(bench, kAsked).value(), WithinAbs(2.0 * u, 1e-6));
}

TEST_CASE("Errors that all readings share count in full") {
    bench::Readings bench = bare_bench();
    bench.scale.span_error = Share{0.01};
    bench.gauge.zero = 0.05 * mm;
    bench.springs.front().readings.front().scale = 1.0 * newton;
    bench.scale.resolution = 1e-9 * newton;
    const double span = 0.01 * 5.0 / std::sqrt(3.0), zero = 1.2 * 0.05 / std::sqrt(3.0);
    CHECK_THAT(expanded_of_one_reading(bench, kAsked).value(), WithinAbs(2.0 * std::hypot(span, zero), 1e-6));
}

TEST_CASE("A bench that does not tell its heights tells no load") {
    bench::Readings bench = bare_bench();
    bench.springs.front().readings.front() = {std::nullopt, 5.0 * mm, 100.0 * gram, false};
    CHECK_FALSE(load_from_scale(bench, 5.0 * newton, kAsked).has_value());
    CHECK_FALSE(expanded_of_one_reading(bench, kAsked).has_value());
}
