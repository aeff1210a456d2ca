// SPDX-License-Identifier: MIT
// Values against the collection of check values stand in tests/published/values/tolerance.toml.
#include <seatload/io/builtin.hpp>
#include <seatload/tolerance/en15800.hpp>

#include "support/check.hpp"

using namespace seatload;
using namespace seatload::tolerance;

namespace {

const Tables& tables() {
    static const Tables built_in = io::builtin_tolerances().value();
    return built_in;
}

std::optional<Length> at(double D_mm, double w, int grade) { return diameter_tolerance(tables(), D_mm * mm, w, grade); }

}  // namespace

TEST_CASE("the grades of a load tolerance stand as 0.63 to 1 to 1.6") {
    const double fine = load_tolerance_n(3.0, 24.0, 6.5, 200.0, 1);
    const double medium = load_tolerance_n(3.0, 24.0, 6.5, 200.0, 2);
    const double coarse = load_tolerance_n(3.0, 24.0, 6.5, 200.0, 3);
    CHECK_THAT(fine / medium, WithinRel(0.63, 1e-15));
    CHECK_THAT(coarse / medium, WithinRel(1.6, 1e-15));
}

TEST_CASE("a load tolerance has a part of the spring and 1.5 per cent of the load") {
    const double unloaded = load_tolerance_n(3.0, 24.0, 6.5, 0.0, 2);
    CHECK_THAT(unloaded, WithinRel(load_tolerance_base_n(3.0, 24.0) * coils_factor(6.5), 1e-15));
    CHECK_THAT(load_tolerance_n(3.0, 24.0, 6.5, 200.0, 2) - unloaded, WithinAbs(3.0, 1e-12));
}

TEST_CASE("a free-length tolerance is the load tolerance without load, over the rate") {
    for (const int grade : {1, 2, 3})
        CHECK_THAT(free_length_tolerance_mm(2.0, 16.0, 12.5, 3.18, grade),
                   WithinRel(load_tolerance_n(2.0, 16.0, 12.5, 0.0, grade) / 3.18, 1e-15));
}

TEST_CASE("the part of the spring is positive over the whole scope of index and falls with more coils") {
    // Scope of EN 15800: index 4 to 20, n from 2 (seen in the catalogue entry of the standard).
    for (double w = 4.0; w <= 20.0; w += 0.01) REQUIRE(load_tolerance_base_n(1.0, w) > 0.0);
    for (double n = 2.0; n < 100.0; n += 0.25) REQUIRE(coils_factor(n) > coils_factor(n + 0.25));
    CHECK_THAT(coils_factor(1e9), WithinAbs(0.803, 1e-8));
}

TEST_CASE("quantities and plain numbers give the same tolerances") {
    CHECK(load_tolerance(3.0 * mm, 24.0 * mm, 6.5, 200.0 * newton, 2) ==
          load_tolerance_n(3.0, 24.0, 6.5, 200.0, 2) * newton);
    CHECK(free_length_tolerance(3.0 * mm, 24.0 * mm, 6.5, 9.0 * newton_per_mm, 3) ==
          free_length_tolerance_mm(3.0, 24.0, 6.5, 9.0, 3) * mm);
}

TEST_CASE("squareness and parallelism are shares of length and diameter") {
    CHECK_THAT(in_mm(squareness(60.0 * mm, 1)), WithinAbs(1.8, 1e-12));
    CHECK_THAT(in_mm(squareness(60.0 * mm, 2)), WithinAbs(3.0, 1e-12));
    CHECK_THAT(in_mm(squareness(60.0 * mm, 3)), WithinAbs(4.8, 1e-12));
    CHECK_THAT(in_mm(parallelism(27.0 * mm, 1)), WithinAbs(0.405, 1e-12));
    CHECK_THAT(in_mm(parallelism(27.0 * mm, 2)), WithinAbs(0.81, 1e-12));
    CHECK_THAT(in_mm(parallelism(27.0 * mm, 3)), WithinAbs(1.62, 1e-12));
}

TEST_CASE("a diameter on the edge of two rows belongs to the smaller") {
    // DIN 2095 table: over 16 to 25 mm, over 25 to 31.5 mm; grade 2, w 4 to 8.
    CHECK(at(25.0, 6.0, 2) == 0.35 * mm);
    CHECK(at(25.0001, 6.0, 2) == 0.40 * mm);
}

TEST_CASE("an index on the edge of two columns belongs to the smaller") {
    // DIN 2095 table, over 16 to 25 mm, grade 2: 0.35 for w 4 to 8, 0.45 to 14, 0.50 to 20.
    CHECK(at(20.0, 4.0, 2) == 0.35 * mm);
    CHECK(at(20.0, 8.0, 2) == 0.35 * mm);
    CHECK(at(20.0, 8.001, 2) == 0.45 * mm);
    CHECK(at(20.0, 14.0, 2) == 0.45 * mm);
    CHECK(at(20.0, 14.001, 2) == 0.50 * mm);
    CHECK(at(20.0, 20.0, 2) == 0.50 * mm);
}

TEST_CASE("outside the table there is no tolerance, not a guess") {
    CHECK(at(0.63, 6.0, 1));
    CHECK_FALSE(at(0.629, 6.0, 1));
    CHECK(at(200.0, 6.0, 3));
    CHECK_FALSE(at(200.1, 6.0, 3));
    CHECK_FALSE(at(20.0, 3.999, 2));
    CHECK_FALSE(at(20.0, 20.001, 2));
    CHECK_FALSE(diameter_tolerance(Tables{}, 20.0 * mm, 6.0, 2));
}
