// SPDX-License-Identifier: MIT
#include <benchmark/benchmark.h>

#include <seatload/record/spec_outlook.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/tolerance/simulation.hpp>

#include "demo.hpp"

using namespace seatload;

namespace {

/// The loads of so many springs made to one drawing, on all threads of the machine.
void springs_simulated(benchmark::State& state) {
    tolerance::LotModel model;
    model.wire_diameter = {0.8, 0.01, 0.0};
    model.coil_diameter = {7.8, 0.25};
    model.active_coils = {6.5, 0.1};
    model.free_length = {20.0, 0.6};
    model.shear_modulus = {79500.0, 1500.0, 0.0};
    model.lengths = {15.0, 9.0};
    tolerance::SimulationOptions options;
    options.springs = state.range(0);
    options.threads = 0;
    options.histogram_from = {0.0, 0.0};
    options.histogram_to = {20.0, 40.0};
    for (auto _ : state) benchmark::DoNotOptimize(tolerance::simulate(model, options).mean);
    state.SetItemsProcessed(state.iterations() * state.range(0));
}

/// What `size` tells of one alternative: so many springs, each made to the three grades, on so many threads.
void outlook_of_one_alternative(benchmark::State& state) {
    const record::Spec spec = test::latch_spec();
    const wire::Grade& grade = *test::wires().find(spec.wire_grade);
    const demand::Requirement requirement = record::requirement_of(spec);
    sizing::OutlookOptions options;
    options.springs = state.range(0);
    options.threads = static_cast<unsigned>(state.range(1));
    for (auto _ : state)
        benchmark::DoNotOptimize(
            record::spec_outlook(spec, grade, requirement, test::tolerances(), options)->coarsest());
    state.SetItemsProcessed(state.iterations() * state.range(0) * tolerance::kGrades);
}

/// A chunk of springs drawn, made to one grade and counted, on one thread: items a second are springs.
void springs_of_one_grade(benchmark::State& state) {
    const record::Spec spec = test::latch_spec();
    const demand::Requirement requirement = record::requirement_of(spec);
    const check::DemandNumbers demand = check::numbers(requirement);
    const wire::Grade& grade = *test::wires().find(spec.wire_grade);
    const check::WireNumbers wire = check::numbers(grade, spec.spring.wire_diameter, requirement).value();
    const check::Coil coil(demand, wire, test::tolerances(), in_mm(spec.spring.mean_diameter), spec.spring.ends,
                           spec.spring.total_coils);
    const auto order = sizing::made_order(coil, in_mm(spec.spring.free_length), true,
                                          {in_newton(spec.seated.nominal), in_newton(spec.full_travel.nominal)});
    const auto allowance = sizing::made_allowance(coil, grade.family, test::tolerances(), {2, 2});
    const auto quantities = sizing::made_quantities(coil);
    const sizing::MadeCounter counter(coil, order, allowance, quantities);
    tolerance::MadeStrays strays;
    std::uint64_t first = 0;
    for (auto _ : state) {
        sizing::MadeTally tally(quantities.size());
        tolerance::draw_strays(13906, first, strays);
        counter.count(strays, tolerance::kMadeChunk, tally);
        first += tolerance::kMadeChunk;
        benchmark::DoNotOptimize(tally.good);
    }
    state.SetItemsProcessed(state.iterations() * static_cast<long>(tolerance::kMadeChunk));
}

}  // namespace

BENCHMARK(outlook_of_one_alternative)
    ->ArgNames({"springs", "threads"})
    ->Args({1'000'000, 1})
    ->Args({1'000'000, 2})
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();
BENCHMARK(springs_of_one_grade);
BENCHMARK(springs_simulated)
    ->RangeMultiplier(10)
    ->Range(10'000, 1'000'000)
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();
