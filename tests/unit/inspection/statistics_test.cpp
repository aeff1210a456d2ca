// SPDX-License-Identifier: MIT
#include <cmath>
#include <vector>

#include <seatload/inspection/summary.hpp>
#include <seatload/inspection/tolerance_factor.hpp>
#include <support/check.hpp>

using namespace seatload::inspection;

// Brown and Berthouex, Statistics for Environmental Engineers, Table 21.1: factors of two-sided tolerance intervals for
// normal values, 95 % confidence (seen).
TEST_CASE("Two-sided tolerance factors are those of a printed table") {
    const struct {
        int n;
        double at_90, at_95, at_99;
    } kRows[] = {{4, 5.37, 6.34, 8.22},  {5, 4.29, 5.08, 6.60},  {6, 3.73, 4.42, 5.76},  {7, 3.39, 4.02, 5.24},
                 {8, 3.16, 3.75, 4.89},  {9, 2.99, 3.55, 4.63},  {10, 2.86, 3.39, 4.44}, {12, 2.67, 3.17, 4.16},
                 {15, 2.49, 2.96, 3.89}, {20, 2.32, 2.76, 3.62}, {25, 2.22, 2.64, 3.46}, {30, 2.15, 2.55, 3.35},
                 {40, 2.06, 2.45, 3.22}, {60, 1.96, 2.34, 3.07}};
    // One unit of the last digit: some rows come from approximations that are off by so much.
    constexpr double kLastDigit = 0.0101;
    for (const auto& row : kRows) {
        INFO(row.n);
        CHECK_THAT(two_sided_tolerance_factor(row.n, 0.90, 0.95), WithinAbs(row.at_90, kLastDigit));
        CHECK_THAT(two_sided_tolerance_factor(row.n, 0.95, 0.95), WithinAbs(row.at_95, kLastDigit));
        CHECK_THAT(two_sided_tolerance_factor(row.n, 0.99, 0.95), WithinAbs(row.at_99, kLastDigit));
    }
}

// ISO 16269-6:2014, exact factors at 95 % content and confidence (from memory).
TEST_CASE("Two-sided tolerance factors are the exact ones in all printed digits") {
    const std::pair<int, double> kRows[] = {{2, 36.519}, {3, 9.789}, {5, 5.077}, {10, 3.393}, {20, 2.760}, {30, 2.555}};
    for (const auto& [n, k] : kRows) CHECK_THAT(two_sided_tolerance_factor(n, 0.95, 0.95), WithinAbs(k, 0.00051));
}

// NIST/SEMATECH e-Handbook 7.2.6.3: 43 values, 90 % content, 99 % confidence. Its k2 of 2.217 is an approximation
// (Howe); k1 of 1.8752 is Natrella's, 1.8740 by the noncentral t distribution (the former seen, the latter from
// memory).
TEST_CASE("The handbook's example of 43 wafers comes out as near as its approximation") {
    constexpr double kHowe = 0.003 * 2.217;  // the approximation is good to some parts in a thousand
    CHECK_THAT(two_sided_tolerance_factor(43, 0.90, 0.99), WithinAbs(2.217, kHowe));
    CHECK_THAT(one_sided_tolerance_factor(43, 0.90, 0.99), WithinAbs(1.8740, 0.00051));
}

TEST_CASE("Tolerance factors fall towards the normal curve's as values grow many") {
    CHECK_THAT(two_sided_tolerance_factor(100000, 0.95, 0.95), WithinAbs(1.95996, 0.01));
    CHECK_THAT(one_sided_tolerance_factor(100000, 0.95, 0.95), WithinAbs(1.64485, 0.01));
}

// Quality Digest, May 2000, last page: a Cpk of 1.15 of 45 values lies between 0.89 and 1.41 with 95 % confidence
// (seen).
TEST_CASE("The bound of Cpk is that of a printed example") {
    CHECK_THAT(capability_at_least(1.15, 45, 0.975), WithinAbs(0.89, 0.005));
    CHECK_THAT(2.0 * 1.15 - capability_at_least(1.15, 45, 0.975), WithinAbs(1.41, 0.005));
}

TEST_CASE("A summary tells mean, deviation, extremes and bounds") {
    // mean 5, squares 4+1+1+1+0+0+4+16 = 27... by hand: 2 4 4 4 5 5 7 9 have mean 5 and sum of squares 32
    const Summary s = summarise({2, 4, 4, 4, 5, 5, 7, 9}, {0.0, 20.0});
    CHECK(s.count == 8);
    CHECK(s.mean == 5.0);
    CHECK_THAT(s.deviation, WithinRel(std::sqrt(32.0 / 7.0), 1e-12));
    CHECK(s.least == 2.0);
    CHECK(s.most == 9.0);
    // Student's t of 7 degrees of freedom at 97.5 %: 2.3646 (any table)
    CHECK_THAT(s.mean_within, WithinAbs(2.3646 * std::sqrt(32.0 / 7.0 / 8.0), 1e-4));
    CHECK_THAT(*s.interval.least, WithinAbs(5.0 - s.factor * s.deviation, 1e-12));
    REQUIRE(s.capability.has_value());
    CHECK_THAT(s.capability->estimate, WithinRel(5.0 / (3.0 * s.deviation), 1e-12));
    CHECK(s.capability->at_least < s.capability->estimate);
}

TEST_CASE("A one-sided limit is held against a one-sided interval") {
    const Summary s = summarise({2, 4, 4, 4, 5, 5, 7, 9}, {std::nullopt, 20.0});
    CHECK_FALSE(s.interval.least.has_value());
    CHECK_THAT(s.factor, WithinAbs(one_sided_tolerance_factor(8, 0.95, 0.95), 1e-12));
}

TEST_CASE("Too few values, or equal ones, are told without what they cannot prove") {
    CHECK(summarise({3.0}, {1.0, 5.0}).deviation == 0.0);
    CHECK(summarise({3.0, 3.1}, {1.0, 5.0}).factor == 0.0);
    CHECK_FALSE(summarise({3.0, 3.0, 3.0}, {1.0, 5.0}).capability.has_value());
}
