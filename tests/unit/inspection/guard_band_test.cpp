// SPDX-License-Identifier: MIT
#include <seatload/inspection/guard_band.hpp>

#include <support/check.hpp>

using namespace seatload::inspection;

namespace {

const Limits kLoad{188.0, 212.0};

}  // namespace

// ISO 14253-1 (from memory): a maker proves conformity inside the limits less U, a customer proves the contrary beyond
// the limits and U more.
TEST_CASE("A value conforms inside its limits by U, fails outside by U, and is open between") {
    CHECK(judge(200.0, kLoad, 1.2) == Finding::inside);
    CHECK(judge(189.3, kLoad, 1.2) == Finding::inside);
    CHECK(judge(189.1, kLoad, 1.2) == Finding::unproven);
    CHECK(judge(187.0, kLoad, 1.2) == Finding::unproven);
    CHECK(judge(186.7, kLoad, 1.2) == Finding::outside);
    CHECK(judge(210.7, kLoad, 1.2) == Finding::inside);
    CHECK(judge(212.0, kLoad, 1.2) == Finding::unproven);
    CHECK(judge(213.3, kLoad, 1.2) == Finding::outside);
}

TEST_CASE("A value on the edge of the acceptance zone conforms whatever its last bit") {
    // 5.04 + 0.04 and 6.5 - 0.04 are no exact doubles
    CHECK(judge(5.08, {5.04, 6.5}, 0.04) == Finding::inside);
    CHECK(judge(6.46, {5.04, 6.5}, 0.04) == Finding::inside);
    CHECK(judge(5.0, {5.04, 6.5}, 0.04) == Finding::unproven);
    CHECK(judge(4.99, {5.04, 6.5}, 0.04) == Finding::outside);
}

TEST_CASE("An open limit holds nothing back") {
    CHECK(judge(1e6, {188.0, std::nullopt}, 1.2) == Finding::inside);
    CHECK(judge(-1e6, {std::nullopt, 212.0}, 1.2) == Finding::inside);
    CHECK(judge(3.0, {}, 1.2) == Finding::inside);
}

TEST_CASE("Limits nearer than twice U leave no value proven") {
    for (const double value : {0.9, 0.95, 1.0, 1.05, 1.1}) CHECK(judge(value, {0.9, 1.1}, 0.15) == Finding::unproven);
}
