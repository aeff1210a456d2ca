// SPDX-License-Identifier: MIT
#include <seatload/inspection/sequence.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

#include <support/check.hpp>

using namespace seatload::inspection;

// Swed and Eisenhart, Annals of Mathematical Statistics 14 (1943): with 10 and 10 the largest number of runs that comes
// with a chance of at most 0.025 is 6, of at most 0.005 is 5... (from memory, the first).
TEST_CASE("The chance of few runs is that of the printed tables") {
    CHECK(chance_of_so_few_runs(10, 10, 6) <= 0.025);
    CHECK(chance_of_so_few_runs(10, 10, 7) > 0.025);
}

TEST_CASE("The chance of few runs is that of looking at every order") {
    std::vector<int> order{0, 0, 0, 0, 1, 1, 1};
    std::vector<int> with_runs(8, 0);
    int all = 0;
    do {
        int runs = 1;
        for (std::size_t i = 1; i < order.size(); ++i) runs += order[i] != order[i - 1] ? 1 : 0;
        ++with_runs[static_cast<std::size_t>(runs)];
        ++all;
    } while (std::next_permutation(order.begin(), order.end()));
    int so_far = 0;
    for (int runs = 2; runs <= 7; ++runs) {
        so_far += with_runs[static_cast<std::size_t>(runs)];
        CHECK_THAT(chance_of_so_few_runs(3, 4, runs), WithinAbs(static_cast<double>(so_far) / all, 1e-12));
    }
}

TEST_CASE("The chance of a trend is that of looking at every order") {
    std::vector<int> order(6);
    std::iota(order.begin(), order.end(), 0);
    std::vector<long> found;
    do {
        long s = 0;
        for (std::size_t i = 0; i < order.size(); ++i)
            for (std::size_t j = i + 1; j < order.size(); ++j) s += order[j] > order[i] ? 1 : -1;
        found.push_back(s);
    } while (std::next_permutation(order.begin(), order.end()));
    for (const long s : {1L, 5L, 9L, 13L, 15L}) {
        const auto far = std::count_if(found.begin(), found.end(), [&](long f) { return std::abs(f) >= s; });
        CHECK_THAT(chance_of_trend(6, s),
                   WithinAbs(static_cast<double>(far) / static_cast<double>(found.size()), 1e-12));
    }
}

TEST_CASE("The normal curve takes over where counting ends, without a step") {
    // One value more must not change the chance of a like trend by much: S grows as n squared.
    const double exact = chance_of_trend(60, 400);
    const double normal = chance_of_trend(61, 410);
    CHECK_THAT(normal, WithinRel(exact, 0.1));
}

TEST_CASE("A lot that rises from piece to piece is told from one that does not") {
    std::vector<double> rising, level;
    for (int i = 0; i < 20; ++i) {
        rising.push_back(5.0 + 0.02 * i + 0.03 * ((i * 7) % 5));
        level.push_back(5.0 + 0.03 * ((i * 7) % 5));
    }
    CHECK(sequence_of(rising)->trend < kSeldom);
    CHECK(sequence_of(rising)->s > 0);
    CHECK(sequence_of(level)->trend > 0.1);
}

TEST_CASE("Two settings one after the other make few runs, and few values none at all") {
    std::vector<double> two(12, 1.0);
    for (std::size_t i = 0; i < two.size(); ++i) two[i] += (i < 6 ? 0.0 : 1.0) + 0.001 * static_cast<double>(i % 3);
    const auto sequence = sequence_of(two);
    REQUIRE(sequence.has_value());
    CHECK(sequence->runs == 2);
    // 2 of 924 orders of six and six: 12! / 6! / 6!
    CHECK_THAT(sequence->few, WithinAbs(2.0 / 924.0, 1e-12));
    CHECK_FALSE(sequence_of({1, 2, 3}).has_value());
}

// Of n and n values the mean number of runs is n + 1 and the variance n (n - 1)/(2 n - 1) (Wald and Wolfowitz).
TEST_CASE("The chance of few runs goes over into the normal curve's for thousands of values") {
    const double n = 5000.0, deviation = std::sqrt(n * (n - 1.0) / (2.0 * n - 1.0));
    // one deviation below the mean: 15.9 % of the normal curve; a step of one run is 0.8 %
    CHECK_THAT(chance_of_so_few_runs(5000, 5000, static_cast<int>(n + 1.0 - deviation)), WithinAbs(0.159, 0.008));
}
