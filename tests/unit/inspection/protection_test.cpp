// SPDX-License-Identifier: MIT
#include <seatload/inspection/protection.hpp>

#include <cmath>

#include <support/check.hpp>

using namespace seatload::inspection;

namespace {

double choose(int n, int k) {
    if (k < 0 || k > n) return 0.0;
    return std::exp(std::lgamma(n + 1.0) - std::lgamma(k + 1.0) - std::lgamma(n - k + 1.0));
}

/// The sum that defines the hypergeometric distribution, term by term.
double by_counting(int lot, int bad, int size, int accept) {
    double ways = 0.0;
    for (int k = 0; k <= accept; ++k) ways += choose(bad, k) * choose(lot - bad, size - k);
    return ways / choose(lot, size);
}

}  // namespace

TEST_CASE("The chance that a lot passes is that of counting the ways to draw") {
    for (const int lot : {5, 20, 40, 150})
        for (const int size : {1, 3, 5, 13})
            for (const int accept : {0, 1, 2})
                for (int bad = 0; bad <= lot && size <= lot; bad += 1 + lot / 10)
                    CHECK_THAT(chance_of_acceptance(lot, bad, size, accept),
                               WithinAbs(by_counting(lot, bad, size, accept), 1e-9));
}

TEST_CASE("A lot that is all measured passes with as many bad pieces as are allowed, and no more") {
    CHECK(chance_of_acceptance(20, 0, 20, 0) == 1.0);
    CHECK(chance_of_acceptance(20, 1, 20, 0) == 0.0);
    CHECK(chance_of_acceptance(20, 1, 20, 1) == 1.0);
    CHECK(chance_of_acceptance(20, 2, 20, 1) == 0.0);
}

TEST_CASE("In a very large lot drawing is binomial") {
    // (1 - p)^n when none may be bad
    CHECK_THAT(chance_of_acceptance(0.1, 13, 0), WithinRel(std::pow(0.9, 13), 1e-12));
    CHECK_THAT(chance_of_acceptance(1000000, 100000, 13, 0), WithinAbs(std::pow(0.9, 13), 1e-4));
}

TEST_CASE("The bad share at a chance gives that chance back") {
    for (const double chance : {0.05, 0.1, 0.5, 0.95})
        CHECK_THAT(chance_of_acceptance(bad_share_at(chance, 50, 3), 50, 3), WithinRel(chance, 1e-9));
}

TEST_CASE("The fewest bad pieces found out are the first that pass with no more than the chance") {
    // 27/40 x 26/39 x ... : a lot of 40 with 6 bad, 13 drawn, passes in 7.7 of 100, with 5 bad in 12.3
    const int found = fewest_found_out(40, 13, 0, 0.1);
    CHECK(by_counting(40, found, 13, 0) <= 0.1);
    CHECK(by_counting(40, found - 1, 13, 0) > 0.1);
    CHECK(fewest_found_out(20, 20, 0, 0.1) == 1);
    CHECK(fewest_found_out(5, 1, 1, 0.1) == 6);
}
