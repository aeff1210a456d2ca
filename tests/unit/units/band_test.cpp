// SPDX-License-Identifier: MIT
#include <seatload/units/band.hpp>

#include "support/check.hpp"

using namespace seatload;
using namespace seatload::units;

namespace {

Band<Force> force_band(const std::string& text) {
    const auto parsed = parse_band<Force>(text);
    INFO(text << ": " << parsed.problem.message);
    REQUIRE(parsed.value);
    return *parsed.value;
}

void check_band(const std::string& text, std::optional<double> nominal, std::optional<double> at_least,
                std::optional<double> at_most) {
    const auto parsed = parse_band_in(dimension_of<Length>(), text);
    INFO(text << ": " << parsed.problem.message);
    REQUIRE(parsed.value);
    const auto same = [](std::optional<double> a, std::optional<double> b) {
        return a.has_value() == b.has_value() && (!a || std::abs(*a - *b) <= 1e-12);
    };
    CHECK(same(parsed.value->nominal, nominal));
    CHECK(same(parsed.value->at_least, at_least));
    CHECK(same(parsed.value->at_most, at_most));
}

void check_problem(const std::string& text, const std::string& message, std::size_t offset) {
    const auto parsed = parse_band_in(dimension_of<Force>(), text);
    INFO(text);
    REQUIRE_FALSE(parsed.value);
    CHECK(parsed.problem.message == message);
    CHECK(parsed.problem.offset == offset);
}

constexpr std::nullopt_t kNone = std::nullopt;

}  // namespace

TEST_CASE("a band is two values with dots between them") {
    check_band("4.9 mm .. 6.4 mm", kNone, 4.9, 6.4);
    check_band("4.9mm..6.4mm", kNone, 4.9, 6.4);
    check_band("1/4 in .. 1 in", kNone, 6.35, 25.4);
    check_band("-1 mm .. 1 cm", kNone, -1.0, 10.0);
}

TEST_CASE("which end is larger is not judged by the band") { check_band("6 mm .. 4 mm", kNone, 6.0, 4.0); }

TEST_CASE("a band is a value with a tolerance") {
    for (const char* sign : {"±", "+/-", "+-"}) check_band(std::string("5.6 mm ") + sign + "0.7 mm", 5.6, 4.9, 6.3);
    check_band("5.6 mm ± 0.7 mm", 5.6, 4.9, 6.3);
    check_band("1 1/2 in ±1/16 in", 38.1, 36.5125, 39.6875);
}

TEST_CASE("a tolerance in per cent is a share of the value, whatever its sign") {
    check_band("50 mm ±10 %", 50.0, 45.0, 55.0);
    check_band("-50 mm ±10%", -50.0, -55.0, -45.0);
}

TEST_CASE("a band is a value with two tolerances, either of which may be left out") {
    check_band("9 mm +0.05 mm -0.01 mm", 9.0, 8.99, 9.05);
    check_band("9 mm -0.01 mm +0.05 mm", 9.0, 8.99, 9.05);
    check_band("9 mm +0.05 mm", 9.0, 9.0, 9.05);
    check_band("9 mm -0.01 mm", 9.0, 8.99, 9.0);
    check_band("50 mm +2 % -1 %", 50.0, 49.5, 51.0);
}

TEST_CASE("a band is one-sided") {
    for (const char* word : {"at least 4.8 mm", ">= 4.8 mm", "≥4.8 mm", "  at least 4.8 mm"})
        check_band(word, kNone, 4.8, kNone);
    for (const char* word : {"at most 13.5 mm", "<=13.5 mm", "≤ 13.5 mm"}) check_band(word, kNone, kNone, 13.5);
}

TEST_CASE("a single value is told from a band without width") {
    const auto single = force_band("5.6 N");
    CHECK(single.single);
    CHECK(single.at_least == 5.6 * newton);
    CHECK(single.at_most == 5.6 * newton);
    CHECK_FALSE(force_band("5.6 N ±0 N").single);
    CHECK_FALSE(force_band("5.6 N .. 5.6 N").single);
    CHECK(force_band("-5.6 N").single);
    CHECK(force_band(" +5.6 N").single);
}

TEST_CASE("band values come as quantities") {
    const auto band = force_band("1 kgf ±10 %");
    CHECK(band.nominal == 9.80665 * newton);
    REQUIRE(band.at_least);
    CHECK_THAT(in_newton(*band.at_least), WithinRel(0.9 * 9.80665, 1e-15));
}

TEST_CASE("a problem inside a band is told from the start of the whole text") {
    check_problem("4.9 N .. 6,4 N", "decimal comma", 10);
    check_problem("4,9 N .. 6.4 N", "decimal comma", 1);
    check_problem("5.6 N ±0,7 N", "decimal comma", 8);
    check_problem("4.9 N .. 6.4", "the number has no unit", 12);
    check_problem("at least 4.8 mm", "\"mm\" is a length, a force is wanted", 13);
    check_problem("9 N +0.5 N -0.1 mm", "\"mm\" is a length, a force is wanted", 16);
    check_problem("4.9 N .. ", "empty text", 8);
    check_problem("±10 %", "empty text", 0);
    check_problem("5 N ±", "empty text", 5);
    check_problem("", "empty text", 0);
}

TEST_CASE("a tolerance is a positive number") {
    check_problem("5.6 N ±-0.7 N", "a tolerance is a positive number", 7);
    CHECK(parse_band_in(dimension_of<Force>(), "5.6 N ±-0.7 N").problem.hint == "leave the sign out");
    check_problem("5.6 N +-0.7 %  %", "unknown unit \"%  %\"", 12);
}
