// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/bench/comparison.hpp>
#include <seatload/bench/wire_inference.hpp>
#include <seatload/core/result.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/paper.hpp>

namespace seatload::sheet {

/// A spring as the bench found it, and what is made of it.
struct BenchSpring {
    const bench::Readings& session;
    const bench::SpringRun& run;
    const bench::MeasuredSpring& measured;
    bench::WireAnswer wire;                    ///< empty with nothing missing: not spoken of
    std::vector<bench::Weakening> weakenings;  ///< against whatever there is to compare with
};

/// What a bench sheet tells of. Title, date and fixture are those of the first spring's session.
struct BenchSheetInput {
    std::vector<BenchSpring> springs;
    std::vector<bench::Comparison> comparisons;
    const Wording& words;  ///< of the title block's fields; the sheet itself is in English
    PaperSize size = PaperSize::a4;
};

/// The sheet of a bench run, upright, for our own use: one page for each spring with force against height, residuals,
/// results, budget of the uncertainty and fixture; of several springs a page before them that compares. Errors: no
/// spring, text that is not UTF-8, and more words than a page holds.
Result<std::vector<Drawing>> bench_sheet(const BenchSheetInput& input);

/// The same as the bytes of a PDF.
Result<std::string> bench_sheet_pdf(const BenchSheetInput& input);

}  // namespace seatload::sheet
