// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/sheet/wording.hpp>

namespace seatload::sheet {

enum class PaperSize { a4, letter };

/// What numbers come first on a paper.
enum class Units {
    metric,
    inch,  ///< inches and pounds-force first, mm and N beside them in square brackets
};

/// How a paper for the maker is to look: its size, its language and its units.
struct Paper {
    Wording words;
    PaperSize size = PaperSize::a4;
    bool upright = false;  ///< the sheet stands on its short side; covers of enquiries always do
    Units units = Units::metric;
};

}  // namespace seatload::sheet
