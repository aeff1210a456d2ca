// SPDX-License-Identifier: MIT
// What a maker makes a spring to, and what strays of it.
#include <algorithm>
#include <cmath>
#include <vector>

#include <seatload/spring/stress.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <seatload/tolerance/made_influence.hpp>
#include <support/check.hpp>

#include "count_a.hpp"
#include "requirement_a.hpp"

using namespace seatload;
using test::CountA;
using test::requirement_a;
using test::wire_a;

TEST_CASE("on a sliding seat the maker keeps the coils half a turn over as far as the limits want") {
    auto r = requirement_a();
    r.space.seats = demand::Seats::slides;
    r.limits.half_turn_slack = 0.1;
    // Room enough to lean with the tips anywhere within that.
    r.space.bore.reset();
    r.limits.lean_share = 0.5;
    const CountA a(r, {});
    // Half of what the tips may be off is the lot's, half the piece's (estimate).
    CHECK_THAT(a.order.fewest_coils, WithinAbs(6.45, 1e-12));
    CHECK_THAT(a.order.most_coils, WithinAbs(6.55, 1e-12));
    REQUIRE(a.order.tips);
    CHECK_THAT(*a.order.tips, WithinAbs(0.05, 1e-12));
    r.space.seats = demand::Seats::fixed;
    CHECK(CountA(r, {}).order.fewest_coils == 0.0);
    CHECK(std::isinf(CountA(r, {}).order.most_coils));
    CHECK_FALSE(CountA(r, {}).order.tips);
}

TEST_CASE("what strays within a lot comes to about the load tolerance of the grade") {
    // EN 15800's load tolerance (memory) for ordinary springs at 600 MPa, about a third of Rm of common wire (common
    // practice, no source): what makes the estimates of made_allowance.hpp fit what a maker is held to.
    std::vector<double> ratios;
    for (const double d : {1.0, 2.0, 4.0, 8.0})
        for (const double w : {5.0, 8.0, 12.0})
            for (const double n : {3.5, 6.5, 12.5})
                for (const int grade : {1, 2, 3}) {
                    const demand::Requirement r = requirement_a();
                    const auto demand = check::numbers(r);
                    const auto wire = check::numbers(wire_a(), d * mm, r).value();
                    const check::Coil coil(demand, wire, test::tolerances(), w * d, spring::Ends::closed_ground,
                                           n + 2.0);
                    const auto a = sizing::made_allowance(coil, wire::Family::cold_drawn_carbon, test::tolerances(),
                                                          {grade, grade});
                    const double F = spring::force_for_stress(600.0, d, w * d);
                    const double L0 = demand.full_travel_height_mm + F / coil.rate_n_mm;
                    const tolerance::MadeOrder order = sizing::made_order(coil, L0, true, {0.5 * F, F});
                    const auto parts = tolerance::load_deviations_n(order, n, L0, order.lengths[1],
                                                                    tolerance::left_after_adjusting(a));
                    ratios.push_back(3.0 * tolerance::together_n(parts) /
                                     tolerance::load_tolerance_n(d, w * d, n, F, grade));
                }
    std::sort(ratios.begin(), ratios.end());
    CAPTURE(ratios.front(), ratios.back());
    CHECK_THAT(ratios[ratios.size() / 2], WithinAbs(0.9, 0.1));
    CHECK(ratios.front() > 0.6);
    CHECK(ratios.back() < 1.3);
}
