// SPDX-License-Identifier: MIT
// R = G d⁴/(8 D³ n) (EN 13906-1, clause 9.4) with G = 81500 MPa, d = 0.8 mm, D = 8 mm, n = 6: by hand
// 81500 · 0.4096/(8 · 512 · 6) = 1.3583 N/mm. The grades are those of the data built into the library.
#include <cstdio>

#include <seatload/io/builtin.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/units/quantities.hpp>

using namespace seatload;

int main() {
    const Rate rate = spring::rate(81500.0 * MPa, 0.8 * mm, 8.0 * mm, 6.0);
    const auto catalogue = io::builtin_catalogue();
    if (!catalogue) return 1;
    std::printf("%.4f N/mm, %zu grades\n", in_newton_per_mm(rate), catalogue->grades.size());
    return 0;
}
