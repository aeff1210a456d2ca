// SPDX-License-Identifier: MIT
#include <seatload/sizing/axis.hpp>
#include <support/check.hpp>

using seatload::sizing::Axis;
using seatload::sizing::axis_between;

TEST_CASE("an axis holds the multiples of its step, both ends of the range included") {
    const Axis axis = axis_between(0.3, 0.9, 0.1);
    REQUIRE(axis.count == 7);
    CHECK(axis.at(0) == 0.3);
    CHECK(axis.at(4) == 0.7);
    CHECK(axis.at(6) == 0.9);
}

TEST_CASE("an axis starts at the first multiple inside the range") {
    const Axis axis = axis_between(1.61, 1.79, 0.05);
    REQUIRE(axis.count == 3);
    CHECK(axis.at(0) == 1.65);
    CHECK(axis.at(2) == 1.75);
}

TEST_CASE("an axis is empty when no multiple lies in the range") {
    CHECK(axis_between(1.61, 1.64, 0.05).count == 0);
    CHECK(axis_between(2.0, 1.0, 0.05).count == 0);
}
