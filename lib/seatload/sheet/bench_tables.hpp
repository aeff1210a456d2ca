// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/bench/comparison.hpp>
#include <seatload/sheet/ruled_table.hpp>
#include <seatload/sheet/share_bars.hpp>

namespace seatload::sheet {

/// Rate, free length and loads of one spring, each with its uncertainty and the largest part of that.
RuledTable bench_results_table(const bench::MeasuredSpring& spring, double width);

/// What the uncertainty of rate and of the first loads comes from, or of the free length when no load is asked for:
/// at most `most` parts each, the rest together.
std::vector<ShareBars> bench_budgets(const bench::MeasuredSpring& spring, std::size_t most);

/// The same numbers of several springs side by side; of many heights, so many tables.
std::vector<RuledTable> bench_springs_tables(const std::vector<const bench::MeasuredSpring*>& springs, double width);

/// How springs differ, a row a pair; a load difference with its two parts. Of many heights, so many tables.
std::vector<RuledTable> bench_differences_tables(const std::vector<bench::Comparison>& comparisons, double width);

}  // namespace seatload::sheet
