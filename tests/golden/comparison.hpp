// SPDX-License-Identifier: MIT
#pragma once

#include "picture.hpp"

namespace seatload::test {

// Versions of poppler and FreeType smooth the edges of lines and letters a little differently: single pixels at an edge
// change by some grey steps. A line, a letter or a figure that moves changes many pixels by most of the way from black
// to white.

/// Grey steps a pixel may change by before it counts as different: a quarter of the way from black to white.
inline constexpr int kGreyStep = 64;
/// Share of pixels that may be different: of an A4 sheet at 75 dots an inch 27 pixels, fewer than a letter is made of
/// or a line of 10 mm.
inline constexpr double kShare = 5e-5;

struct Comparison {
    bool same_size = false;
    std::size_t different = 0;  ///< pixels that changed by more than kGreyStep
    double share = 1.0;         ///< of all pixels
    Picture difference;         ///< the new picture in light grey, what differs in black; empty when sizes differ

    bool is_alike() const { return same_size && share <= kShare; }
};

Comparison compare(const Picture& expected, const Picture& found);

}  // namespace seatload::test
