// SPDX-License-Identifier: MIT
// Tolerance room: where it is used up the rules break, and it follows the free length as the search needs it.
#include <cmath>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/merit.hpp>
#include <seatload/sizing/space.hpp>
#include <seatload/spring/coils.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "all_that_fit.hpp"
#include "varied_requirements.hpp"

using namespace seatload;

namespace {

/// A spring between two plates that bounds nothing but its buckling.
demand::Requirement slim(demand::Seats seats, double margin) {
    demand::Requirement r;
    r.limits = demand::school_defaults(spring::School::en_13906);
    r.limits.buckling_margin = margin;
    r.limits.stress_share = 100.0;
    r.space.seats = seats;
    r.space.seated_height = 60.0 * mm;
    r.space.full_travel_height = 50.0 * mm;
    return r;
}

/// Bounds are inclusive with a slack of 1e-9 of the limit (DEVELOPERS.md, decision 4), which is but a small part of
/// what tolerances do: what just fits has no less room than this.
constexpr double kSlackOfLimits = 1e-6;

}  // namespace

TEST_CASE("room towards buckling is used up at the free length at which the rule of buckling breaks") {
    for (const auto seats : {demand::Seats::fixed, demand::Seats::pivots, demand::Seats::both_pivot})
        for (const double margin : {0.6, 1.0, 1.3, 2.0}) {
            const demand::Requirement r = slim(seats, margin);
            const auto demand = check::numbers(r);
            const auto wire = check::numbers(*test::wires().find("EN10270-1-SH"), 1.0 * mm, r).value();
            const check::Coil coil(demand, wire, test::tolerances(), 8.0, spring::Ends::closed_ground, 22.0);
            const check::Rule& rule = check::rule_named("buckling");
            double low = 50.0, high = 500.0;
            REQUIRE(check::passes(rule, coil, low));
            REQUIRE_FALSE(check::passes(rule, coil, high));
            for (int i = 0; i < 60; ++i) {
                const double middle = 0.5 * (low + high);
                (check::passes(rule, coil, middle) ? low : high) = middle;
            }
            CAPTURE(margin, low);
            CHECK_THAT(sizing::ToleranceRooms(coil).at(low).above, WithinAbs(0.0, 1e-6));
        }
}

TEST_CASE("room below grows with the free length and room above falls, over all that fits") {
    for (const auto& [name, requirement] : test::varied_requirements()) {
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        for (const sizing::Candidate& c : test::all_that_fit(space)) {
            const check::Coil coil(space.demand, space.wires[c.wire].numbers, test::tolerances(), c.mean_diameter_mm,
                                   c.ends, c.total_coils);
            const sizing::ToleranceRooms rooms(coil);
            const sizing::Rooms here = rooms.at(c.free_length_mm), shorter = rooms.at(c.free_length_mm - 0.01);
            CAPTURE(name, coil.wire.d_mm, c.mean_diameter_mm, c.total_coils, c.free_length_mm);
            REQUIRE(shorter.below <= here.below);
            REQUIRE(shorter.above >= here.above);
            REQUIRE(here.least() >= -kSlackOfLimits);
        }
    }
}

TEST_CASE("a fitting spring has whole room towards bore and rod, whose rules count the tolerance once") {
    demand::Requirement r = slim(demand::Seats::guided, 1.0);
    r.space.bore = demand::Fit{10.0 * mm, 10.0 * mm, 10.0 * mm};
    const auto demand = check::numbers(r);
    const auto wire = check::numbers(*test::wires().find("EN10270-1-SH"), 1.0 * mm, r).value();
    for (const double D : {8.3, 8.5, 8.7, 8.8}) {
        const check::Coil coil(demand, wire, test::tolerances(), D, spring::Ends::closed_ground, 12.0);
        const bool has_room = sizing::ToleranceRooms(coil).at(61.0).above >= 1.0;
        CAPTURE(D);
        CHECK(has_room == check::passes(check::rule_named("bore_clearance"), coil, 61.0));
    }
}
