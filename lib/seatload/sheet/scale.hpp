// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace seatload::sheet {

/// A drawing scale of ISO 5455 (1, 2, 5 times powers of ten), as two whole numbers.
struct Scale {
    int paper = 1;
    int real = 1;

    double factor() const { return static_cast<double>(paper) / real; }
    std::string text() const { return std::to_string(paper) + ":" + std::to_string(real); }
};

/// The largest scale of ISO 5455, 100:1 to 1:1000, whose factor is not above `largest_factor`; 1:1000 when none is.
Scale largest_scale(double largest_factor);

}  // namespace seatload::sheet
