// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include <seatload/bench/measured.hpp>
#include <support/check.hpp>
#include <unit/bench/simulated_bench.hpp>

using namespace seatload;
using namespace seatload::bench;

namespace {

/// A bench that gives way nowhere and whose readings are good to 0.01 N and 0.01 mm each.
Readings plain_bench() {
    Readings session;
    session.gauge.error = 0.01 * mm;
    session.scale.linearity = 0.01 * newton;
    session.scale.adjusted_at = StandardGravity{};
    session.temperature = {20.0, 0.0};
    return session;
}

std::vector<Reading> readings_at(const test::TrueSpring& spring, const std::vector<double>& heights) {
    std::vector<Reading> all;
    for (const double height : heights) all.push_back(test::sound_reading(spring, height));
    return all;
}

std::vector<Use> uses(const MeasuredSpring& spring) {
    std::vector<Use> all;
    for (const Point& p : spring.points) all.push_back(p.use);
    return all;
}

MeasuredSpring measured(const Readings& session, std::vector<Reading> readings) {
    auto found = measure(session, test::run_of(std::move(readings))).spring;
    REQUIRE(found);
    return *found;
}

const std::vector<double> kMeasuredHeights{21.0, 19.0, 17.0, 15.0, 13.0, 11.0, 9.0};

}  // namespace

TEST_CASE("readings without error give the spring they were drawn from, all of them used") {
    const test::TrueSpring truth;
    const auto spring = measured(plain_bench(), readings_at(truth, kMeasuredHeights));
    CHECK(uses(spring) == std::vector<Use>(kMeasuredHeights.size(), Use::line));
    CHECK_THAT(in_newton_per_mm(spring.rate.value), WithinRel(0.4, 1e-12));
    CHECK_THAT(in_mm(spring.free_length.value), WithinRel(23.0, 1e-12));
    CHECK_FALSE(spring.contact);
    CHECK_FALSE(spring.closing);
    CHECK_FALSE(spring.hysteresis);
    CHECK_FALSE(spring.repeatability);
}

TEST_CASE("the order of the readings does not matter, and each keeps its place") {
    const test::TrueSpring truth;
    const auto spring = measured(plain_bench(), readings_at(truth, {9.0, 21.0, 13.0, 17.0, 25.0}));
    CHECK(uses(spring) == std::vector<Use>{Use::line, Use::line, Use::line, Use::line, Use::before_contact});
    for (std::size_t i = 0; i < spring.points.size(); ++i) CHECK(spring.points[i].reading == i);
    CHECK(in_mm(spring.points[2].stated_height) == 13.0);
}

TEST_CASE("readings before contact and with coils closing are left out, each with its reason") {
    test::TrueSpring truth;
    truth.closing_height_mm = 10.0;
    const auto spring =
        measured(plain_bench(), readings_at(truth, {25.0, 24.0, 21.0, 18.0, 15.0, 12.0, 11.0, 9.0, 8.0}));
    CHECK(uses(spring) == std::vector<Use>{Use::before_contact, Use::before_contact, Use::line, Use::line, Use::line,
                                           Use::line, Use::line, Use::coils_closing, Use::coils_closing});
    CHECK_THAT(in_newton_per_mm(spring.rate.value), WithinRel(0.4, 1e-12));
    CHECK_THAT(spring.points[1].why, ContainsSubstring("carries 0.000 N, where the line would stand at -0.400 N") &&
                                         ContainsSubstring("does not bear on the whole spring yet"));
    // At 9 mm the true load is 5.6 N + 1.2 N.
    CHECK_THAT(spring.points[7].why, ContainsSubstring("1.200 N above the line") && ContainsSubstring("coils touch"));
    REQUIRE(spring.contact);
    CHECK(in_mm(spring.contact->above) == 24.0);
    CHECK(in_mm(spring.contact->below) == 21.0);
    REQUIRE(spring.closing);
    CHECK(in_mm(spring.closing->above) == 11.0);
    CHECK(in_mm(spring.closing->below) == 9.0);
}

TEST_CASE("end coils that seat little by little are before full contact") {
    const test::TrueSpring truth;
    auto readings = readings_at(truth, {22.0, 20.0, 18.0, 16.0, 14.0, 12.0});
    readings[0].scale = 0.55 * newton;  // the line stands at 0.4 N
    const auto spring = measured(plain_bench(), readings);
    CHECK(spring.points[0].use == Use::before_contact);
    CHECK_THAT(spring.points[0].why, ContainsSubstring("end coils are still seating"));
}

TEST_CASE("a single reading far off in the middle is shown as an outlier and still counts") {
    const test::TrueSpring truth;
    for (const double off : {0.3, -0.3}) {
        CAPTURE(off);
        auto readings = readings_at(truth, kMeasuredHeights);
        readings[3].scale = (truth.load(15.0) + off) * newton;
        const auto spring = measured(plain_bench(), readings);
        std::vector<Use> expected(kMeasuredHeights.size(), Use::line);
        expected[3] = Use::outlier;
        CHECK(uses(spring) == expected);
        CHECK_THAT(spring.points[3].why, ContainsSubstring(off > 0.0 ? "above the line" : "below the line") &&
                                             ContainsSubstring("it counts all the same"));
        // A line of seven evenly spaced points rises by a seventh of the one in the middle.
        CHECK_THAT(in_newton(spring.points[3].residual), WithinAbs(off * 6.0 / 7.0, 1e-9));
        CHECK(spring.chi_square.verdict == Straightness::too_large);
        const auto sound = measured(plain_bench(), readings_at(truth, kMeasuredHeights));
        CHECK(spring.rate.standard > 3.0 * sound.rate.standard);
        CHECK(spring.rate.budget[0].name == "scatter beyond what was stated");
        CHECK(spring.rate.coverage_factor > 2.0);
    }
}

TEST_CASE("of four readings the one without which the others are straight is the outlier") {
    const test::TrueSpring truth;
    const std::vector<double> heights{21.0, 17.0, 13.0, 9.0};
    for (const std::size_t wrong : {std::size_t{1}, std::size_t{2}}) {  // at an end it may be contact or closing coils
        CAPTURE(wrong);
        auto readings = readings_at(truth, heights);
        readings[wrong].scale = (truth.load(heights[wrong]) + 0.3) * newton;
        const auto spring = measured(plain_bench(), readings);
        std::vector<Use> expected(heights.size(), Use::line);
        expected[wrong] = Use::outlier;
        CHECK(uses(spring) == expected);
        CHECK(spring.remarks.front().starts_with("1 reading lies too far off the line for chance and still counts"));
    }
}

TEST_CASE("an outlier in the middle does not hide closing coils") {
    test::TrueSpring truth;
    truth.closing_height_mm = 10.0;
    auto readings = readings_at(truth, {21.0, 19.0, 17.0, 15.0, 13.0, 11.0, 9.0, 8.0});
    readings[2].scale = (truth.load(17.0) - 0.2) * newton;
    const auto spring = measured(plain_bench(), readings);
    CHECK(uses(spring) == std::vector<Use>{Use::line, Use::line, Use::outlier, Use::line, Use::line, Use::line,
                                           Use::coils_closing, Use::coils_closing});
}

TEST_CASE("a last reading below the line is no closing coil") {
    const test::TrueSpring truth;
    auto readings = readings_at(truth, kMeasuredHeights);
    readings.back().scale = (truth.load(9.0) - 0.3) * newton;
    const auto spring = measured(plain_bench(), readings);
    CHECK_FALSE(spring.closing);
    CHECK(spring.points.back().use == Use::outlier);
}

TEST_CASE("where scatter is wider than stated, ends are not taken for closing coils") {
    const test::TrueSpring truth;
    const std::vector<double> scatter{0.10, -0.09, 0.07, -0.10, 0.08, -0.09, 0.11};  // of 0.01 N stated
    auto readings = readings_at(truth, kMeasuredHeights);
    for (std::size_t i = 0; i < scatter.size(); ++i)
        readings[i].scale = (truth.load(kMeasuredHeights[i]) + scatter[i]) * newton;
    const auto spring = measured(plain_bench(), readings);
    CHECK(uses(spring) == std::vector<Use>(kMeasuredHeights.size(), Use::line));
    CHECK(spring.chi_square.verdict == Straightness::too_large);
}

TEST_CASE("three readings stay in the line at least, and three are enough") {
    const test::TrueSpring truth;
    const auto spring = measured(plain_bench(), readings_at(truth, {20.0, 15.0, 10.0}));
    CHECK(uses(spring) == std::vector<Use>(3, Use::line));
    CHECK(spring.chi_square.degrees_of_freedom == 1.0);
}

TEST_CASE("the load at a height has the variance that the line and the height give it") {
    const test::TrueSpring truth;
    Readings session = plain_bench();
    session.heights = {{"seated", {15.0 * mm, 0.05 * mm}}, {"short", {5.0 * mm, {}}}};
    const auto spring = measured(session, readings_at(truth, kMeasuredHeights));
    // Seven alike points u apart from the line: u^2/7 at their mean of 15 mm; heights lie 112 mm2 about it.
    const double u2 = (0.01 * 0.01 + 0.4 * 0.4 * 0.01 * 0.01) / 3.0;
    const double set = 0.4 * 0.05 / std::sqrt(3.0);
    CHECK_THAT(in_newton(spring.loads[0].force.value), WithinRel(3.2, 1e-12));
    CHECK_THAT(in_newton(spring.loads[0].force.standard), WithinRel(std::sqrt(u2 / 7.0 + set * set), 1e-9));
    CHECK(spring.loads[0].force.budget[0].name == "height asked for");
    CHECK_FALSE(spring.loads[0].outside);
    CHECK_THAT(in_newton(spring.loads[1].force.standard), WithinRel(std::sqrt(u2 / 7.0 + 100.0 * u2 / 112.0), 1e-9));
    CHECK(spring.loads[1].outside);
    CHECK_THAT(in_newton_per_mm(spring.rate.standard), WithinRel(std::sqrt(u2 / 112.0), 1e-9));
}

TEST_CASE("errors that all readings share are not averaged away") {
    const test::TrueSpring truth;
    Readings session = plain_bench();
    session.heights = {{"seated", {15.0 * mm, {}}}};
    session.scale.span_error = {0.01};
    session.scale.zero = 0.05 * newton;
    session.gauge.zero = 0.02 * mm;
    session.temperature = {20.0, 10.0};
    const auto spring = measured(session, readings_at(truth, kMeasuredHeights));
    const auto part = [](const auto& estimate, const std::string& name) {
        for (const auto& c : estimate.budget)
            if (c.name == name) return in_base_unit(c.standard);
        return 0.0;
    };
    const double root3 = std::sqrt(3.0);
    CHECK_THAT(part(spring.rate, "scale: span"), WithinRel(0.4 * 0.01 / root3, 1e-9));
    CHECK(part(spring.rate, "scale: zero") < 1e-12);
    CHECK(part(spring.rate, "height gauge: zero") < 1e-12);
    // 0.25e-3 of the rate a kelvin (memory: unalloyed spring steel).
    CHECK_THAT(part(spring.rate, "temperature"), WithinRel(0.4 * 0.25e-3 * 10.0 / root3, 1e-9));
    CHECK_THAT(part(spring.loads[0].force, "scale: span"), WithinRel(3.2 * 0.01 / root3, 1e-9));
    CHECK_THAT(part(spring.loads[0].force, "scale: zero"), WithinRel(0.05 / root3, 1e-9));
    CHECK_THAT(part(spring.loads[0].force, "height gauge: zero"), WithinRel(0.4 * 0.02 / root3, 1e-9));
    CHECK_THAT(part(spring.free_length, "scale: zero"), WithinRel(0.05 / 0.4 / root3, 1e-9));
    CHECK_THAT(part(spring.free_length, "height gauge: zero"), WithinRel(0.02 / root3, 1e-9));
    CHECK(part(spring.free_length, "scale: span") < 1e-9);
    CHECK(part(spring.free_length, "temperature") < 1e-9);
    double shares = 0.0;
    for (const auto& c : spring.loads[0].force.budget) shares += c.share;
    CHECK_THAT(shares, WithinRel(1.0, 1e-12));
}

TEST_CASE("hysteresis is loading less unloading at equal heights") {
    const test::TrueSpring truth;
    auto readings = readings_at(truth, kMeasuredHeights);
    const std::vector<std::pair<double, double>> less{{11.0, 0.06}, {13.0, 0.10}, {17.0, 0.08}, {22.0, 0.2}};
    for (const auto& [height, difference] : less)
        readings.push_back({height * mm, {}, (truth.load(height) - difference) * newton, true});
    const auto spring = measured(plain_bench(), readings);
    REQUIRE(spring.hysteresis);
    CHECK(spring.hysteresis->heights == 3);  // 22 mm was not read while loading
    CHECK_THAT(in_newton(spring.hysteresis->largest), WithinAbs(0.10, 1e-12));
    CHECK(in_mm(spring.hysteresis->at) == 13.0);
    CHECK_THAT(in_newton(spring.hysteresis->mean), WithinAbs(0.08, 1e-12));
    CHECK_THAT(spring.hysteresis->of_largest_load.value, WithinRel(0.10 / 5.6, 1e-9));
    CHECK(spring.points.back().use == Use::unloading);
    CHECK_THAT(in_newton_per_mm(spring.rate.value), WithinRel(0.4, 1e-12));  // unloading does not make the line
}

TEST_CASE("readings repeated at a height give a pooled scatter that counts where it is more than the steps explain") {
    const test::TrueSpring truth;
    auto readings = readings_at(truth, kMeasuredHeights);
    // At 15 mm three readings, at 9 mm two: sums of squares 0.0054 and 0.0018 N2 for 2 + 1 degrees of freedom.
    for (const double off : {0.06, 0.09}) readings.push_back({15.0 * mm, {}, (truth.load(15.0) + off) * newton, false});
    readings[3].scale = (truth.load(15.0) + 0.0) * newton;
    readings.push_back({9.0 * mm, {}, (truth.load(9.0) + 0.06) * newton, false});
    const double s15 = 0.05 * 0.05 + 0.01 * 0.01 + 0.04 * 0.04, s9 = 2.0 * 0.03 * 0.03;
    const auto spring = measured(plain_bench(), readings);
    REQUIRE(spring.repeatability);
    CHECK_THAT(in_newton(*spring.repeatability), WithinRel(std::sqrt((s15 + s9) / 3.0), 1e-9));
    CHECK(spring.repeatability_degrees_of_freedom == 3.0);
    CHECK(spring.rate.budget[0].name == "readings repeated");
    CHECK(spring.rate.budget[0].degrees_of_freedom == 3.0);
    // Welch-Satterthwaite: near 3 degrees of freedom k is 3.31 (GUM Table G.2).
    CHECK(spring.rate.coverage_factor > 2.8);
    CHECK_THAT(in_newton_per_mm(spring.rate.expanded),
               WithinRel(spring.rate.coverage_factor * in_newton_per_mm(spring.rate.standard), 1e-12));
}

TEST_CASE("heights read up and down show the scatter of readings once their trend is taken off") {
    const test::TrueSpring truth;
    auto readings = readings_at(truth, kMeasuredHeights);
    // Differences on a straight line over height, but for +-0.05 N: 1, -1, -1, 1 at evenly spaced heights lies athwart
    // any straight line, so its squares alone are left: 4 x 0.05^2 over 4 - 2, over 2.
    const std::vector<double> athwart{0.05, -0.05, -0.05, 0.05};
    for (std::size_t i = 0; i < 4; ++i) {
        const double height = kMeasuredHeights[i + 1];
        readings.push_back({height * mm, {}, (truth.load(height) - 0.1 - 0.01 * height - athwart[i]) * newton, true});
    }
    const auto spring = measured(plain_bench(), readings);
    REQUIRE(spring.repeatability);
    CHECK_THAT(in_newton(*spring.repeatability), WithinRel(0.05, 1e-9));
    CHECK(spring.repeatability_degrees_of_freedom == 2.0);
}

TEST_CASE("what a reader should know is remarked") {
    const test::TrueSpring truth;
    Readings session = plain_bench();
    session.heights = {{"full travel", {9.0 * mm, {}}}, {"far", {2.0 * mm, {}}}};
    session.scale.adjusted_at = {};
    auto run = test::run_of(readings_at(truth, {21.0, 17.0, 13.0, 9.0}));
    for (Reading& r : run.readings) r.scale = in_newton(std::get<Force>(r.scale)) / 0.00980665 * gram;
    run.preload.count = 0;
    run.dimensions.free_length = {23.3 * mm, {}};
    const auto spring = measure(session, run).spring;
    REQUIRE(spring);
    std::string all;
    for (const std::string& remark : spring->remarks) all += remark + "\n";
    CHECK_THAT(all, ContainsSubstring("2.00 mm (far) lies beyond the readings"));
    CHECK_THAT(all, ContainsSubstring("gravity may be that of any place"));
    CHECK_THAT(all, ContainsSubstring("taken as rigid"));
    CHECK_THAT(all, ContainsSubstring("not pressed before the readings"));
    CHECK_THAT(all, ContainsSubstring("Loose, the spring is 23.30 mm long"));
    CHECK(all.find("full travel") == std::string::npos);
}
