// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <stdexcept>

namespace seatload::test {

/// Plus-minus tolerance of the load at a height, and of the rate [per cent], for n active coils and a grade.
/// JIS B 2707 (now an annex of JIS B 2704), as reproduced on two Japanese tolerance sheets.
inline double jis_load_tolerance_percent(double active_coils, int grade) {
    constexpr std::array kUpToTen{5.0, 10.0, 15.0};
    constexpr std::array kAboveTen{4.0, 8.0, 12.0};
    if (active_coils < 3.0 || grade < 1 || grade > 3) throw std::out_of_range("JIS B 2707 has no such row");
    const auto column = static_cast<std::size_t>(grade - 1);
    return active_coils <= 10.0 ? kUpToTen[column] : kAboveTen[column];
}

}  // namespace seatload::test
