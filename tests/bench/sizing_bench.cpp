// SPDX-License-Identifier: MIT
#include <benchmark/benchmark.h>

#include <iterator>

#include <seatload/sizing/any_fit.hpp>
#include <seatload/sizing/search.hpp>

#include "demo.hpp"

using namespace seatload;

namespace {

/// The demo requirement on a grid whose steps make it some power of ten large: the load band, a share of the demo's,
/// sets how many of them fit.
struct Steps {
    double D_mm, coils, L0_mm;
};
constexpr Steps kSteps[] = {{1.0, 2.0, 1.0},   {0.5, 1.0, 0.5},   {0.2, 0.5, 0.25},  {0.1, 0.25, 0.1},
                            {0.05, 0.1, 0.05}, {0.01, 0.1, 0.05}, {0.01, 0.05, 0.02}};
constexpr int kLastSteps = static_cast<int>(std::size(kSteps)) - 1;

demand::Requirement on_grid(const Steps& steps, double band) {
    demand::Requirement r = test::latch();
    r.grid.mean_diameter_step = steps.D_mm * mm;
    r.grid.total_coils_step = steps.coils;
    r.grid.free_length_step = steps.L0_mm * mm;
    const Force least = *r.seated_load.at_least;
    r.seated_load.at_most = least + (*r.seated_load.at_most - least) * band;
    return r;
}

template <class Work>
void on_grids(benchmark::State& state, const Work& work) {
    const demand::Requirement requirement =
        on_grid(kSteps[state.range(0)], static_cast<double>(state.range(1)) / 100.0);
    const sizing::Space space = sizing::search_space(requirement, test::wires());
    for (auto _ : state) work(state, space);
    const auto size = static_cast<double>(space.size());
    state.counters["grid"] = size;
    state.counters["decided"] = benchmark::Counter(size, benchmark::Counter::kIsIterationInvariantRate);
}

/// All that fits, with nothing counted that needs every line.
void search(benchmark::State& state) {
    on_grids(state, [](benchmark::State& s, const sizing::Space& space) {
        sizing::SearchOptions options;
        options.most_lines_counted = 0;
        const sizing::Census census = sizing::search(space, test::tolerances(), options);
        unsigned long long nearly = 0;
        for (const sizing::Rejections& each : census.rejections) nearly += each.alone;
        s.counters["fit"] = static_cast<double>(census.fit);
        s.counters["nearly"] = static_cast<double>(nearly);
    });
}

/// Whether anything fits at all, with a full-travel load that nothing meets.
void any_fit(benchmark::State& state) {
    demand::Requirement requirement = on_grid(kSteps[state.range(0)], 1.0);
    requirement.full_travel_load.at_most = 5.0 * newton;
    const sizing::Space space = sizing::search_space(requirement, test::wires());
    for (auto _ : state) benchmark::DoNotOptimize(sizing::any_fit(space, test::tolerances()));
    state.counters["grid"] = static_cast<double>(space.size());
}

void bands(benchmark::internal::Benchmark* bench) {
    for (int steps = 0; steps <= kLastSteps; ++steps)
        for (const int band : {10, 100, 400}) bench->Args({steps, band});
}

}  // namespace

// Processor time is that of all threads: on a machine that does other things too, it tells more than the clock.
BENCHMARK(search)
    ->ArgNames({"steps", "band_percent"})
    ->Apply(bands)
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();
BENCHMARK(any_fit)
    ->ArgName("steps")
    ->DenseRange(0, kLastSteps)
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();
