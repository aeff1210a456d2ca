// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/bench_sheet.hpp>

namespace seatload::sheet {

/// What a bench sheet prints of a spring, its texts readable().
struct PrintedSpring {
    bench::Readings session;
    bench::SpringRun run;
    bench::MeasuredSpring measured;
    bench::WireAnswer wire;
    std::vector<bench::Weakening> weakenings;
};

/// The springs and comparisons with every text a user wrote made fit for printing; each complaint is told once.
std::vector<PrintedSpring> printable(const std::vector<BenchSpring>& springs, Diagnostics& diagnostics);
std::vector<bench::Comparison> printable(std::vector<bench::Comparison> comparisons);

}  // namespace seatload::sheet
