// SPDX-License-Identifier: MIT
#include <cmath>

#include <seatload/bench/comparison.hpp>
#include <seatload/bench/wire_inference.hpp>
#include <support/check.hpp>
#include <unit/bench/simulated_bench.hpp>

using namespace seatload;
using namespace seatload::bench;

namespace {

SpringRun run_of_spring(const std::string& name, double rate, double free_length) {
    test::TrueSpring truth;
    truth.rate_n_mm = rate;
    truth.free_length_mm = free_length;
    std::vector<Reading> readings;
    for (const double height : {20.0, 18.0, 16.0, 14.0, 12.0, 10.0})
        readings.push_back(test::sound_reading(truth, height));
    auto run = test::run_of(readings);
    run.name = name;
    return run;
}

Readings session() {
    Readings s = test::usual_bench();
    s.load_path = {};
    return s;
}

MeasuredSpring measured(const Readings& s, const SpringRun& run) { return measure(s, run).spring.value(); }

}  // namespace

TEST_CASE("a shortfall splits into what the rate and what the free length take, without a rest") {
    const Readings s = session();
    const auto weak = measured(s, run_of_spring("weak", 0.38, 22.4)),
               good = measured(s, run_of_spring("good", 0.40, 23.0));
    const Comparison c = compare(weak, good);
    CHECK_THAT(in_newton_per_mm(c.rate.estimate.value), WithinAbs(-0.02, 1e-9));
    CHECK_THAT(in_mm(c.free_length.estimate.value), WithinAbs(-0.6, 1e-9));
    REQUIRE(c.loads.size() == 2);
    // At 15 mm: 0.38 x 7.4 less 0.40 x 8.0; by the rate -0.02 x 7.7, by the length 0.39 x -0.6.
    CHECK_THAT(in_newton(c.loads[0].load.estimate.value), WithinAbs(2.812 - 3.2, 1e-9));
    CHECK_THAT(in_newton(c.loads[0].rate_part), WithinAbs(-0.154, 1e-9));
    CHECK_THAT(in_newton(c.loads[0].free_length_part), WithinAbs(-0.234, 1e-9));
    CHECK(c.loads[0].load.significant);
    CHECK(c.free_length.significant);
}

TEST_CASE("errors of the bench cancel between two like springs of one session, not between two sessions") {
    Readings s = session();
    s.scale.zero = 0.5 * newton;
    s.gauge.zero = 1.0 * mm;
    const auto a = measured(s, run_of_spring("a", 0.40, 23.0)), b = measured(s, run_of_spring("b", 0.40, 23.0));
    const Comparison together = compare(a, b);
    const Comparison apart = compare(a, b, false);
    const auto of = [](const Comparison& c) { return in_newton(c.loads[0].load.estimate.standard); };
    // Together only the errors of single readings are left: root two of one spring's; apart all of both.
    double own = 0.0;
    for (const auto& part : a.loads[0].force.budget)
        if (!part.common) own += in_newton(part.standard) * in_newton(part.standard);
    CHECK_THAT(of(together), WithinRel(std::sqrt(2.0 * own), 1e-6));
    CHECK_THAT(of(apart), WithinRel(std::sqrt(2.0) * in_newton(a.loads[0].force.standard), 1e-9));
    CHECK_FALSE(together.rate.significant);
    CHECK_FALSE(together.loads[0].load.significant);
}

TEST_CASE("a span error is left between springs of different load by that difference") {
    Readings s = session();
    s.scale.span_error = {0.05};
    const auto a = measured(s, run_of_spring("a", 0.30, 23.0)), b = measured(s, run_of_spring("b", 0.40, 23.0));
    const Comparison c = compare(a, b);
    const auto& largest = c.loads[0].load.estimate.budget.at(0);
    CHECK(largest.name == "scale: span");
    CHECK_THAT(in_newton(largest.standard), WithinRel(0.8 * 0.05 / std::sqrt(3.0), 1e-9));  // 2.4 N and 3.2 N
}

TEST_CASE("a difference within its uncertainty is not significant") {
    const Readings s = session();
    const auto a = measured(s, run_of_spring("a", 0.4000, 23.0)), b = measured(s, run_of_spring("b", 0.4002, 23.0));
    CHECK_FALSE(compare(a, b).rate.significant);
}

TEST_CASE("against a good spring, set is the free length lost and wear the wire that would give the lower rate") {
    const Readings s = session();
    // Four per cent of the rate are one per cent of d, to first order; exactly d (1 - 0.96^(1/4)).
    auto weak_run = run_of_spring("weak", 0.96 * 0.4, 22.5), good_run = run_of_spring("good", 0.4, 23.0);
    good_run.dimensions.wire_diameter = {0.80 * mm, 0.01 * mm};
    good_run.dimensions.outside_diameter = {8.6 * mm, 0.05 * mm};
    good_run.dimensions.total_coils = {10.0, 0.25};
    good_run.dimensions.ends = spring::Ends::closed_ground;
    const auto w = explain(weak_run, measured(s, weak_run), good_run, measured(s, good_run));
    REQUIRE(w.set);
    CHECK_THAT(in_mm(w.set->estimate.value), WithinAbs(0.5, 1e-9));
    CHECK(w.set->significant);
    CHECK(w.set_against == "the spring \"good\"");
    REQUIRE(w.worn_wire);
    CHECK_THAT(in_mm(w.worn_wire->estimate.value), WithinAbs(0.8 * (1.0 - std::pow(0.96, 0.25)), 1e-9));
    CHECK(w.worn_wire->significant);
    good_run.dimensions = {};
    CHECK_FALSE(explain(weak_run, measured(s, weak_run), good_run, measured(s, good_run)).worn_wire);
}
