// SPDX-License-Identifier: MIT
// The load tolerance of EN 15800 stands in the library from memory. JIS B 2707 gives the load at a height in per cent,
// from sheets that were read, and the two standards serve the same trade. What this shows: that the remembered formula
// has the right size, to a factor of two, for ordinary springs at working load, and the right order of the grades. What
// it does not show: its coefficients, which only the text of the standard could.
#include <algorithm>
#include <vector>

#include <seatload/spring/stress.hpp>
#include <seatload/tolerance/en15800.hpp>

#include "support/check.hpp"
#include "support/jis_b_2707.hpp"

using namespace seatload;

namespace {

constexpr double kWorkingStress =
    600.0;  // MPa uncorrected, about a third of Rm of common wire; common practice, no source

/// A_F over the tolerance JIS allows, for ordinary springs of a grade.
std::vector<double> ratios(int grade) {
    std::vector<double> all;
    for (const double d : {1.0, 2.0, 4.0, 8.0})
        for (const double w : {6.0, 8.0, 10.0, 12.0})
            for (const double n : {3.0, 5.0, 8.0, 10.0, 15.0}) {
                const double load_n = spring::force_for_stress(kWorkingStress, d, w * d);
                const double jis_n = load_n * test::jis_load_tolerance_percent(n, grade) / 100.0;
                all.push_back(tolerance::load_tolerance_n(d, w * d, n, load_n, grade) / jis_n);
            }
    std::sort(all.begin(), all.end());
    return all;
}

}  // namespace

TEST_CASE("the load tolerance is between half and twice that of JIS for ordinary springs at working load") {
    for (const int grade : {1, 2, 3}) {
        const auto all = ratios(grade);
        CAPTURE(grade, all.front(), all.back());
        CHECK(all.front() > 0.5);
        CHECK(all.back() < 2.0);
        CHECK_THAT(all[all.size() / 2], WithinAbs(1.0, 0.3));  // half of them nearer than a third
    }
}

TEST_CASE("the spring of the check values gets about the ten per cent JIS gives its grade") {
    // d 3, D 24, n 6.5, 200 N, grade 2: JIS B 2707 gives 20 N; root-sum-square of d and D tolerances alone gives 11 N.
    const double ours = tolerance::load_tolerance_n(3.0, 24.0, 6.5, 200.0, 2);
    CHECK(ours > 11.0);
    CHECK(ours < 20.0);
}
