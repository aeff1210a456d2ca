// SPDX-License-Identifier: MIT
#include <benchmark/benchmark.h>

#include <seatload/sheet/spring_sheet.hpp>

#include "demo.hpp"

using namespace seatload;

namespace {

/// One sheet drawn and written as PDF, its spec attached.
void one_sheet(benchmark::State& state) {
    const record::Spec spec = test::latch_spec();
    const wire::Grade& grade = *test::wires().find(spec.wire_grade);
    const sheet::Paper paper{sheet::Wording(io::builtin_wording())};
    const std::string text = io::write_spec(spec);
    for (auto _ : state)
        benchmark::DoNotOptimize(
            sheet::spring_sheet_pdf({spec, grade, test::tolerances(), paper, 1, 1, text}).value().size());
}

}  // namespace

BENCHMARK(one_sheet)->Unit(benchmark::kMillisecond);
