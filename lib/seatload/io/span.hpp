// SPDX-License-Identifier: MIT
#pragma once

#include <limits>
#include <string_view>

namespace seatload::io {

/// The numbers a key may take, in the base unit of its quantity.
struct Span {
    double lowest = -std::numeric_limits<double>::infinity();
    double highest = std::numeric_limits<double>::infinity();
    bool lowest_excluded = false;
    std::string_view text = "any number";  ///< "more than zero"

    constexpr bool has(double number) const {
        return (lowest_excluded ? number > lowest : number >= lowest) && number <= highest;
    }
};

inline constexpr Span kAny{};
inline constexpr Span kPositive{0.0, std::numeric_limits<double>::infinity(), true, "more than zero"};
inline constexpr Span kNotNegative{0.0, std::numeric_limits<double>::infinity(), false, "zero or more"};
inline constexpr Span kSize{0.0, 10000.0, true, "more than zero and at most 10 m"};
inline constexpr Span kAtLeastOne{1.0, std::numeric_limits<double>::infinity(), false, "1 or more"};
inline constexpr Span kPieces{1.0, 10'000'000.0, false, "1 or more, and at most 10000000"};
inline constexpr Span kGrade{1.0, 3.0, false, "1, 2 or 3, the grades of EN 15800"};
inline constexpr Span kShare{0.0, 1.0, false, "between 0 and 1"};
inline constexpr Span kPositiveShare{0.0, 1.0, true, "more than 0 and at most 1"};
inline constexpr Span kTemperature{-273.15, std::numeric_limits<double>::infinity(), false,
                                   "above absolute zero, -273.15 °C"};

}  // namespace seatload::io
