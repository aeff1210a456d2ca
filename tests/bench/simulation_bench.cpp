// SPDX-License-Identifier: MIT
#include <benchmark/benchmark.h>

#include <seatload/tolerance/simulation.hpp>

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

}  // namespace

BENCHMARK(springs_simulated)
    ->RangeMultiplier(10)
    ->Range(10'000, 1'000'000)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
