// SPDX-License-Identifier: MIT
// How values are written with their doubt: the examples of JCGM 100:2008 (GUM), 7.2.4 and 7.2.6, from memory.
#include <cli/doubt_text.hpp>
#include <support/check.hpp>

using namespace seatload;

TEST_CASE("a value has the decimals that two digits of its doubt deserve") {
    CHECK(cli::doubt_text(100.02147, 0.00079) == "100.02147 ±0.00079");
    CHECK(cli::doubt_text(10.05762, 0.027) == "10.058 ±0.027");
    CHECK(cli::doubt_text(1234.6, 67.0) == "1235 ±67");
    CHECK(cli::doubt_text(-0.0252, 0.0025) == "-0.0252 ±0.0025");
}

TEST_CASE("a doubt that rounds up to the next power of ten keeps two digits") {
    CHECK(cli::decimals_for(0.0996) == 2);
    CHECK(cli::doubt_text(1.0, 0.0996) == "1.00 ±0.10");
    CHECK(cli::doubt_text(1.0, 0.00996) == "1.000 ±0.010");
    CHECK(cli::doubt_text(100.0, 9.96) == "100 ±10");
}

TEST_CASE("a number is signed unless it rounds to nothing") {
    CHECK(cli::signed_text(0.1234, 2) == "+0.12");
    CHECK(cli::signed_text(-0.1234, 2) == "-0.12");
    CHECK(cli::signed_text(0.0004, 3) == "0.000");
    CHECK(cli::signed_text(-0.0004, 3) == "0.000");
}

TEST_CASE("a value is rounded as it is shown") {
    CHECK(cli::rounded_as(3.43478, 0.0402) == 3.435);
    CHECK(cli::rounded_as(0.0402, 0.0402) == 0.04);
}
