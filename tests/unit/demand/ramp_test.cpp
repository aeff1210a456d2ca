// SPDX-License-Identifier: MIT
// The closed forms against the equilibrium of pin and plunger, written down as two equations in the contact force and
// the axial force and solved as such.
#include <numbers>

#include <seatload/demand/ramp.hpp>

#include "random_plunger.hpp"
#include "support/check.hpp"

using namespace seatload;

namespace {

struct Two {
    double contact;
    double axial;
};

/// a11 x + a12 y = b1, a21 x + a22 y = b2.
Two solve(double a11, double a12, double b1, double a21, double a22, double b2) {
    const double determinant = a11 * a22 - a12 * a21;
    return {(b1 * a22 - a12 * b2) / determinant, (a11 * b2 - b1 * a21) / determinant};
}

/// The pin moves inward and pushes the plunger out; friction in its guide takes from the force across.
Two pushed_out(double angle, double mu, double guide) {
    const double along = std::sin(angle) - mu * std::cos(angle);
    const double across = std::cos(angle) + mu * std::sin(angle);
    return solve(along, -1.0, 0.0, across, guide, 1.0);
}

/// The plunger pushes the pin back; friction in its guide adds to the force across.
Two pushed_in(double angle, double mu, double guide) {
    const double along = std::sin(angle) + mu * std::cos(angle);
    const double across = std::cos(angle) - mu * std::sin(angle);
    return solve(along, -1.0, 0.0, across, -guide, 1.0);
}

constexpr double kRampRounding = 1e-11;  // both sides take some twenty roundings, enlarged near the self-holding angle
constexpr double kDegree = std::numbers::pi / 180.0;

}  // namespace

TEST_CASE("what a side load does along the axis is the equilibrium of pin and plunger") {
    test::Dice dice(20261126);
    for (int i = 0; i < 2000; ++i) {
        const double angle = dice.between(0.0, 60.0) * kDegree;
        const double mu = dice.between(0.0, 0.25);
        const double guide = dice.between(0.0, 0.25);
        const double bore = dice.between(0.0, 0.25);
        INFO("seed 20261126, case " << i << ": " << angle << ' ' << mu << ' ' << guide << ' ' << bore);
        const Two free = pushed_out(angle, mu, 0.0);
        const Two out = pushed_out(angle, mu, guide);
        CHECK_THAT(demand::ejecting_share(angle, mu), WithinAbs(free.axial, kRampRounding));
        CHECK_THAT(demand::ejecting_share(angle, mu, guide), WithinAbs(out.axial, kRampRounding));
        const double on_the_bore = out.contact * (std::cos(angle) + mu * std::sin(angle));
        CHECK_THAT(demand::net_ejecting_share(angle, mu, guide, bore),
                   WithinAbs(out.axial - bore * on_the_bore, kRampRounding));
        CHECK_THAT(demand::holding_share(angle, mu), WithinRel(pushed_in(angle, mu, 0.0).axial, kRampRounding));
        CHECK_THAT(demand::holding_share(angle, mu, guide),
                   WithinRel(pushed_in(angle, mu, guide).axial, kRampRounding));
    }
}

TEST_CASE("at the self-holding angle a side load pushes neither in nor out, above it out") {
    test::Dice dice(7);
    for (int i = 0; i < 500; ++i) {
        const double mu = dice.between(0.0, 0.3);
        const double bore = dice.between(0.0, 0.3);
        const double angle = demand::self_holding_angle(mu, bore);
        CHECK_THAT(demand::net_ejecting_share(angle, mu, 0.0, bore), WithinAbs(0.0, 1e-15));
        CHECK(demand::net_ejecting_share(angle + 1e-6, mu, 0.0, bore) > 0.0);
    }
}

TEST_CASE("without friction holding and ejecting are the same, the slope of the flank") {
    for (const double degrees : {0.0, 5.0, 15.0, 30.0, 45.0, 60.0}) {
        const double slope = std::tan(degrees * kDegree);
        CHECK(demand::ejecting_share(degrees * kDegree, 0.0) == slope);
        CHECK(demand::holding_share(degrees * kDegree, 0.0) == slope);
    }
}
