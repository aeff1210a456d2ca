// SPDX-License-Identifier: MIT
#include <seatload/record/measured_verdict.hpp>

#include <vector>

#include <support/check.hpp>

using namespace seatload;
using record::Proof;

namespace {

/// A spring at 15 mm and 9 mm that keeps 90 % of its load in service.
check::Evaluation evaluation() {
    check::Evaluation e;
    e.seated = check::AtLength{};
    e.seated->length = 15.0 * mm;
    e.seated->load = 5.0 * newton;
    e.seated->load_in_service = 4.5 * newton;
    e.full_travel = e.seated;
    e.full_travel->length = 9.0 * mm;
    return e;
}

demand::Requirement wanted() {
    demand::Requirement r;
    r.seated_load = {4.5 * newton, 6.0 * newton};
    r.full_travel_load = {std::nullopt, 12.0 * newton};
    return r;
}

record::Measured measured(double seated_n, double plus_minus_n) {
    record::Measured m;
    m.loads = {{15.0 * mm, {seated_n * newton, plus_minus_n * newton}}};
    return m;
}

std::vector<Proof> proofs(const record::Measured& m) {
    std::vector<Proof> all;
    for (const auto& verdict : record::judge_measured(m, evaluation(), wanted())) all.push_back(verdict.proof);
    return all;
}

}  // namespace

TEST_CASE("a measured load proves a limit kept or broken only beyond its uncertainty") {
    // 90 % of 5.2 N is 4.68 N ±0.09 N, 0.18 N above 4.5 N; 6.0 N is 0.8 N off
    CHECK(proofs(measured(5.2, 0.1)) == std::vector{Proof::kept, Proof::kept});
    // 90 % of 5.05 N is 4.545 N ±0.09 N: within its uncertainty of the limit, on either side
    CHECK(proofs(measured(5.05, 0.1)) == std::vector{Proof::unsure, Proof::kept});
    CHECK(proofs(measured(4.95, 0.1)) == std::vector{Proof::unsure, Proof::kept});
    CHECK(proofs(measured(4.85, 0.1)) == std::vector{Proof::broken, Proof::kept});
    CHECK(proofs(measured(6.05, 0.1)) == std::vector{Proof::kept, Proof::unsure});
    CHECK(proofs(measured(6.2, 0.1)) == std::vector{Proof::kept, Proof::broken});
}

TEST_CASE("the share that heat and load loss take is taken off a measured load and its uncertainty") {
    const auto verdicts = record::judge_measured(measured(5.2, 0.1), evaluation(), wanted());
    REQUIRE(verdicts.size() == 2);
    CHECK_THAT(in_newton(verdicts[0].load.value), WithinAbs(4.68, 1e-12));
    CHECK_THAT(in_newton(verdicts[0].load.plus_minus), WithinAbs(0.09, 1e-12));
    CHECK_THAT(in_newton(verdicts[1].load.value), WithinAbs(5.2, 1e-12));
}

TEST_CASE("a load measured at another height serves with the measured rate alone") {
    record::Measured m = measured(5.2, 0.1);
    m.loads.front().height = 14.0 * mm;
    CHECK(record::judge_measured(m, evaluation(), wanted()).empty());
    m.rate = bench::Stated<Rate>{1.2 * newton_per_mm, 0.01 * newton_per_mm};
    const auto verdicts = record::judge_measured(m, evaluation(), wanted());
    REQUIRE(verdicts.size() == 3);
    CHECK_THAT(in_newton(verdicts[1].load.value), WithinAbs(5.2 - 1.2, 1e-12));        // 1 mm longer
    CHECK_THAT(in_newton(verdicts[1].load.plus_minus), WithinAbs(0.1 + 0.01, 1e-12));  // both added
    CHECK_THAT(in_newton(verdicts[2].load.value), WithinAbs(5.2 + 5.0 * 1.2, 1e-12));  // 5 mm shorter
}

TEST_CASE("without measured loads nothing is judged") {
    CHECK(record::judge_measured({}, evaluation(), wanted()).empty());
}
