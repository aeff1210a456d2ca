// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#include <limits>

#include <seatload/wire/strength.hpp>

using namespace seatload;
using namespace seatload::wire;

namespace {

// Numbers of no particular wire, chosen so that the expected values can be worked out in the head.
StrengthTable rows(StrengthLookup lookup) {
    return {lookup,
            {{1.0 * mm, 2000.0 * MPa, 2200.0 * MPa, Evidence::standard},
             {2.0 * mm, 1800.0 * MPa, 2000.0 * MPa, Evidence::memory},
             {4.0 * mm, 1600.0 * MPa, {}, Evidence::standard}},
            1.0 * mm};
}

Grade grade_with(Strength strength) {
    Grade grade;
    grade.strength = std::move(strength);
    return grade;
}

double minimum_at(const Grade& grade, double diameter_mm) {
    const auto strength = strength_at(grade, diameter_mm * mm);
    return strength ? in_mpa(strength->minimum) : -1.0;
}

constexpr double kNone = -1.0;

}  // namespace

TEST_CASE("a size between two rows takes the row of the next larger size") {
    const Grade grade = grade_with(rows(StrengthLookup::next_larger));
    CHECK(minimum_at(grade, 1.0) == 2000.0);
    CHECK(minimum_at(grade, 1.01) == 1800.0);
    CHECK(minimum_at(grade, 2.0) == 1800.0);
    CHECK(minimum_at(grade, 2.01) == 1600.0);
    CHECK(minimum_at(grade, 4.0) == 1600.0);
}

TEST_CASE("the first row of a step table holds down to the smallest size") {
    StrengthTable table = rows(StrengthLookup::step);
    table.smallest = 0.5 * mm;
    const Grade grade = grade_with(table);
    CHECK(minimum_at(grade, 0.5) == 2000.0);
    CHECK(minimum_at(grade, 0.75) == 2000.0);
    CHECK(minimum_at(grade, 1.5) == 1800.0);
    CHECK(minimum_at(grade, 0.499) == kNone);
    CHECK(strength_range(grade).smallest == 0.5 * mm);
}

TEST_CASE("strengths between two rows of an interpolated table lie on the straight line") {
    const Grade grade = grade_with(rows(StrengthLookup::interpolate));
    CHECK_THAT(minimum_at(grade, 1.25), WithinRel(1950.0, 1e-12));
    CHECK_THAT(minimum_at(grade, 3.0), WithinRel(1700.0, 1e-12));
    const auto strength = strength_at(grade, 1.5 * mm);
    REQUIRE(strength);
    REQUIRE(strength->maximum);
    CHECK_THAT(in_mpa(*strength->maximum), WithinRel(2100.0, 1e-12));
    CHECK_FALSE(strength_at(grade, 3.0 * mm)->maximum);
}

TEST_CASE("an interpolated strength rests on the weaker evidence of its two rows") {
    const Grade grade = grade_with(rows(StrengthLookup::interpolate));
    CHECK(strength_at(grade, 1.0 * mm)->evidence == Evidence::standard);
    CHECK(strength_at(grade, 1.5 * mm)->evidence == Evidence::memory);
    CHECK(strength_at(grade, 2.0 * mm)->evidence == Evidence::memory);
    CHECK(strength_at(grade, 4.0 * mm)->evidence == Evidence::standard);
    CHECK(strength_evidence(grade) == Evidence::memory);
}

TEST_CASE("there is no strength outside the table, but rounding at an end is forgiven") {
    for (const StrengthLookup lookup :
         {StrengthLookup::next_larger, StrengthLookup::step, StrengthLookup::interpolate}) {
        const Grade grade = grade_with(rows(lookup));
        CHECK(minimum_at(grade, 0.999) == kNone);
        CHECK(minimum_at(grade, 4.001) == kNone);
        CHECK(minimum_at(grade, 1.0 - 2e-9) == kNone);
        CHECK(minimum_at(grade, 4.0 + 2e-9) == kNone);
        CHECK(minimum_at(grade, 1.0 - 5e-10) == 2000.0);
        CHECK(minimum_at(grade, 4.0 + 5e-10) == 1600.0);
        CHECK(minimum_at(grade, 0.0) == kNone);
        CHECK(minimum_at(grade, -1.0) == kNone);
        CHECK(minimum_at(grade, std::numeric_limits<double>::quiet_NaN()) == kNone);
    }
}

TEST_CASE("rounding does not push a size to the next row") {
    const Grade grade = grade_with(rows(StrengthLookup::next_larger));
    CHECK(minimum_at(grade, 2.0 + 5e-10) == 1800.0);
}

TEST_CASE("a law gives A over d to the m inside its range only") {
    const Grade grade = grade_with(StrengthLaw{2000.0, 0.5, 0.25 * mm, 4.0 * mm});
    CHECK_THAT(minimum_at(grade, 1.0), WithinRel(2000.0, 1e-12));
    CHECK_THAT(minimum_at(grade, 4.0), WithinRel(1000.0, 1e-12));
    CHECK_THAT(minimum_at(grade, 0.25), WithinRel(4000.0, 1e-12));
    CHECK(minimum_at(grade, 0.2) == kNone);
    CHECK(minimum_at(grade, 4.1) == kNone);
    CHECK(strength_at(grade, 1.0 * mm)->evidence == Evidence::given);
}

TEST_CASE("one strength holds over its range") {
    const Grade grade = grade_with(StrengthGiven{1900.0 * MPa, 0.78 * mm, 0.82 * mm});
    CHECK(minimum_at(grade, 0.8) == 1900.0);
    CHECK(minimum_at(grade, 0.77) == kNone);
    CHECK(minimum_at(grade, 0.83) == kNone);
}

TEST_CASE("moduli follow the diameter and the last row covers all larger sizes") {
    Grade grade;
    grade.moduli = {{1.0 * mm, 82000.0 * MPa, 203000.0 * MPa}, {2.0 * mm, 81000.0 * MPa, 200000.0 * MPa}};
    CHECK(in_mpa(moduli_at(grade, 1.0 * mm).shear) == 82000.0);
    CHECK(in_mpa(moduli_at(grade, 1.1 * mm).shear) == 81000.0);
    CHECK(in_mpa(moduli_at(grade, 50.0 * mm).young) == 200000.0);
}

TEST_CASE("the diameter tolerance is unknown beyond its table") {
    Grade grade;
    CHECK_FALSE(diameter_tolerance_at(grade, 1.0 * mm));
    grade.diameter_tolerance = {{1.0 * mm, 0.015 * mm}, {2.0 * mm, 0.02 * mm}};
    CHECK(in_mm(*diameter_tolerance_at(grade, 1.0 * mm)) == 0.015);
    CHECK(in_mm(*diameter_tolerance_at(grade, 1.2 * mm)) == 0.02);
    CHECK_FALSE(diameter_tolerance_at(grade, 2.1 * mm));
}

TEST_CASE("load loss rises in straight lines from nothing at 20 °C and ends at the last known point") {
    Grade grade;
    CHECK_FALSE(load_loss_at(grade, {50.0}));
    grade.load_loss = LoadLossGuide{};
    grade.load_loss->points = {{{100.0}, Share{0.04}}, {{150.0}, Share{0.10}}, {{200.0}, std::nullopt}};
    CHECK(load_loss_at(grade, {20.0})->value == 0.0);
    CHECK(load_loss_at(grade, {-30.0})->value == 0.0);
    CHECK_THAT(load_loss_at(grade, {60.0})->value, WithinRel(0.02, 1e-12));
    CHECK_THAT(load_loss_at(grade, {100.0})->value, WithinRel(0.04, 1e-12));
    CHECK_THAT(load_loss_at(grade, {125.0})->value, WithinRel(0.07, 1e-12));
    CHECK_FALSE(load_loss_at(grade, {151.0}));
}

// Shigley, Mechanical Engineering Design, 9th ed., Table 10-6: 0.45 seen through a solution manual (problem 10-3), the
// others from memory.
TEST_CASE("torsional yield shares are those of Shigley Table 10-6 with their evidence") {
    CHECK(torsional_yield(Family::cold_drawn_carbon).share.value == 0.45);
    CHECK(torsional_yield(Family::cold_drawn_carbon).evidence == Evidence::standard);
    CHECK(torsional_yield(Family::oil_tempered).share.value == 0.50);
    CHECK(torsional_yield(Family::austenitic_stainless).share.value == 0.35);
    CHECK(torsional_yield(Family::copper_alloy).share.value == 0.35);
    CHECK(torsional_yield(Family::nickel_alloy).share.value == 0.35);
    CHECK(torsional_yield(Family::copper_alloy).evidence == Evidence::memory);
    CHECK(torsional_yield(Family::precipitation_stainless).evidence == Evidence::estimate);
}

TEST_CASE("the weaker evidence is the one later in the list, and a user's own never weakens") {
    CHECK(weaker(Evidence::standard, Evidence::fit) == Evidence::fit);
    CHECK(weaker(Evidence::estimate, Evidence::memory) == Evidence::estimate);
    CHECK(weaker(Evidence::given, Evidence::standard) == Evidence::standard);
    CHECK(weaker(Evidence::given, Evidence::given) == Evidence::given);
}
