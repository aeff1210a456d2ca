// SPDX-License-Identifier: MIT
#include <benchmark/benchmark.h>

#include <seatload/check/rule.hpp>

#include "demo.hpp"

using namespace seatload;

namespace {

/// The rules of the demo requirement on one coil, at one free length.
void all_rules_on_one_coil(benchmark::State& state) {
    const demand::Requirement requirement = test::latch();
    const check::DemandNumbers demand = check::numbers(requirement);
    const wire::Grade& grade = *test::wires().find("EN10270-2-FDSiCr");
    const check::WireNumbers wire = check::numbers(grade, 0.8 * mm, requirement).value();
    const check::Coil coil(demand, wire, test::tolerances(), 7.0, spring::Ends::closed_ground, 8.5);
    for (auto _ : state) {
        int passed = 0;
        for (const check::Rule& rule : check::rules())
            if (rule.applies(demand, coil.ends)) passed += check::passes(rule, coil, 20.0) ? 1 : 0;
        benchmark::DoNotOptimize(passed);
    }
}

void one_coil_made(benchmark::State& state) {
    const demand::Requirement requirement = test::latch();
    const check::DemandNumbers demand = check::numbers(requirement);
    const wire::Grade& grade = *test::wires().find("EN10270-2-FDSiCr");
    const check::WireNumbers wire = check::numbers(grade, 0.8 * mm, requirement).value();
    for (auto _ : state) {
        const check::Coil coil(demand, wire, test::tolerances(), 7.0, spring::Ends::closed_ground, 8.5);
        benchmark::DoNotOptimize(coil.rate_n_mm);
    }
}

}  // namespace

BENCHMARK(all_rules_on_one_coil);
BENCHMARK(one_coil_made);
