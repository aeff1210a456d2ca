// SPDX-License-Identifier: MIT
#include <limits>

#include <seatload/bench/budget.hpp>
#include <seatload/bench/line_doubt.hpp>
#include <seatload/bench/probability.hpp>
#include <support/check.hpp>

using namespace seatload;
using namespace seatload::bench;

TEST_CASE("coverage factors are those of the GUM's table of Student's t") {
    // GUM (JCGM 100:2008) Table G.2, column 95.45 % (memory): two decimals.
    const std::vector<std::pair<double, double>> rows{{1, 13.97}, {2, 4.53},  {3, 3.31},   {4, 2.87}, {5, 2.65},
                                                      {6, 2.52},  {7, 2.43},  {8, 2.37},   {9, 2.32}, {10, 2.28},
                                                      {20, 2.13}, {50, 2.05}, {100, 2.025}};
    for (const auto& [degrees, k] : rows) {
        CAPTURE(degrees);
        CHECK_THAT(coverage_factor(2.0, degrees), WithinAbs(k, degrees == 100 ? 0.0005 : 0.005));
    }
    CHECK(coverage_factor(2.0, std::numeric_limits<double>::infinity()) == 2.0);
    // Truncated to the whole number below (GUM G.4.1).
    CHECK(coverage_factor(2.0, 4.9) == coverage_factor(2.0, 4.0));
}

TEST_CASE("the end gauge of the GUM has its effective degrees of freedom and expanded uncertainty") {
    // GUM H.1 (memory): contributions in nanometres with degrees of freedom; u_c = 32 nm, 16.7 degrees of freedom,
    // U99 = 93 nm with k = 2.92.
    const auto gauge = combine<Length>(50.0 * mm,
                                       {{"standard", 25e-6 * mm, 0.0, 18.0},
                                        {"comparison", 9.7e-6 * mm, 0.0, 25.6},
                                        {"difference of temperature", 16.6e-6 * mm, 0.0, 2.0},
                                        {"difference of expansion", 2.9e-6 * mm, 0.0, 50.0}},
                                       2.5758293);  // 99 % of the normal curve
    CHECK_THAT(in_mm(gauge.standard), WithinAbs(32e-6, 0.5e-6));
    CHECK_THAT(gauge.degrees_of_freedom, WithinAbs(16.7, 0.1));  // the contributions are printed to two digits
    CHECK_THAT(gauge.coverage_factor, WithinAbs(2.92, 0.005));
    CHECK_THAT(in_mm(gauge.expanded), WithinAbs(93e-6, 0.5e-6));
}

TEST_CASE(
    "a budget lists contributions by size, its shares add up to one, and nothing stands in it that adds nothing") {
    const auto e = combine<Force>(5.0 * newton, {{"small", 3.0 * newton}, {"none", Force{}}, {"large", 4.0 * newton}});
    CHECK_THAT(in_newton(e.standard), WithinRel(5.0, 1e-15));
    CHECK_THAT(in_newton(e.expanded), WithinRel(10.0, 1e-15));
    REQUIRE(e.budget.size() == 2);
    CHECK(e.budget[0].name == "large");
    CHECK_THAT(e.budget[0].share, WithinRel(0.64, 1e-14));
    CHECK_THAT(e.budget[1].share, WithinRel(0.36, 1e-14));
}

TEST_CASE("a value without any doubt has an uncertainty of zero") {
    const auto e = combine<Force>(5.0 * newton, {{"none", Force{}}});
    CHECK(e.standard == Force{});
    CHECK(e.budget.empty());
    CHECK(e.coverage_factor == 2.0);
}

TEST_CASE("chances are those of printed chi-square tables") {
    // Upper 5 %, 1 % and lower 5 % points of chi-square, three decimals, as every table prints them (memory).
    CHECK_THAT(chance_of_larger(11.070, 5.0), WithinAbs(0.05, 1e-5));
    CHECK_THAT(chance_of_larger(15.086, 5.0), WithinAbs(0.01, 1e-5));
    CHECK_THAT(chance_of_larger(1.145, 5.0), WithinAbs(0.95, 1e-4));
    CHECK_THAT(chance_of_larger(6.635, 1.0), WithinAbs(0.01, 1e-5));
    CHECK_THAT(two_sided(11.070, 5.0), WithinAbs(0.10, 2e-5));
    CHECK_THAT(two_sided(1.145, 5.0), WithinAbs(0.10, 2e-4));
    // 68.27 %, 95.45 % and 99.73 % lie within one, two and three deviations.
    CHECK_THAT(chance_beyond(1.0), WithinAbs(1.0 - 0.6827, 5e-5));
    CHECK_THAT(chance_beyond(-2.0), WithinAbs(1.0 - 0.9545, 5e-5));
    CHECK_THAT(chance_beyond(3.0), WithinAbs(1.0 - 0.9973, 5e-5));
}

TEST_CASE("a chi-square too large blames the uncertainties or the line, one too small the uncertainties") {
    LineFit fit;
    fit.degrees_of_freedom = 5.0;
    // The 1 % points of 5 degrees of freedom are 15.086 and 0.554 (any table).
    fit.chi_square = 15.0;
    CHECK(judge(fit).verdict == Straightness::as_stated);
    fit.chi_square = 15.2;
    CHECK(judge(fit).verdict == Straightness::too_large);
    CHECK_THAT(judge(fit).text, ContainsSubstring("stated too small, or the spring is not straight there"));
    fit.chi_square = 0.56;
    CHECK(judge(fit).verdict == Straightness::as_stated);
    fit.chi_square = 0.55;
    CHECK(judge(fit).verdict == Straightness::too_small);
    CHECK_THAT(judge(fit).text, ContainsSubstring("stated too large"));
    fit.degrees_of_freedom = 0.0;
    CHECK(judge(fit).verdict == Straightness::not_judged);
}
