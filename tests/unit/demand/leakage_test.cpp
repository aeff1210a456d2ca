// SPDX-License-Identifier: MIT
// The pressure between two resistances, from the balance of what flows in and out, and over the ranges of the leak.
#include <cmath>

#include <boost/math/tools/toms748_solve.hpp>
#include <seatload/demand/hydraulics.hpp>
#include <seatload/demand/leakage.hpp>

#include "random_plunger.hpp"
#include "support/check.hpp"

using namespace seatload;
using demand::Interval;

namespace {

/// The chamber pressure at which inflow and outflow agree, as a share of the supply.
template <class Flow>
double balance(const Flow& surplus) {
    std::uintmax_t steps = 200;
    const auto ends =
        boost::math::tools::toms748_solve(surplus, 0.0, 1.0, boost::math::tools::eps_tolerance<double>(50), steps);
    return 0.5 * (ends.first + ends.second);
}

template <class Q>
Interval<Q> spread(test::Dice& dice, double low, double high) {
    const double middle = dice.between(low, high);
    return {Q::from_value(dice.between(low, middle)), Q::from_value(dice.between(middle, high))};
}

template <class Q>
double inside(const Interval<Q>& range, test::Dice& dice) {
    return dice.between(in_base_unit(range.low), in_base_unit(range.high));
}

}  // namespace

TEST_CASE("between two orifices as much flows in as out, over the whole range of the leak") {
    test::Dice dice(3);
    for (int i = 0; i < 200; ++i) {
        const demand::LeakOrifices way{spread<Length>(dice, 0.2, 1.0), spread<Length>(dice, 0.2, 1.0)};
        demand::PlungerPressures pressures;
        pressures.leakage = demand::Leakage{spread<Stress>(dice, 0.1, 1.0), way};
        const auto leak = demand::leak_pressure(pressures);
        REQUIRE(leak.has_value());
        double lowest = 1e9;
        double highest = 0.0;
        const auto at = [&](double in_diameter, double out_diameter, double supply) {
            // Q = Cd A sqrt(2 dp/rho); Cd and rho are the same in both
            const double in = in_diameter * in_diameter;
            const double out = out_diameter * out_diameter;
            const double share = balance([&](double x) { return in * std::sqrt(1.0 - x) - out * std::sqrt(x); });
            lowest = std::min(lowest, share * supply);
            highest = std::max(highest, share * supply);
            CHECK(share * supply >= in_mpa(leak->low) * (1.0 - 1e-12));
            CHECK(share * supply <= in_mpa(leak->high) * (1.0 + 1e-12));
        };
        for (int k = 0; k < 20; ++k)
            at(inside(way.inlet, dice), inside(way.outlet, dice), inside(pressures.leakage->supply, dice));
        for (int corner = 0; corner < 8; ++corner) {
            const auto end = [&](const auto& range, int bit) {
                return in_base_unit((corner & bit) ? range.high : range.low);
            };
            at(end(way.inlet, 1), end(way.outlet, 2), end(pressures.leakage->supply, 4));
        }
        CHECK_THAT(in_mpa(leak->low), WithinRel(lowest, 1e-12));
        CHECK_THAT(in_mpa(leak->high), WithinRel(highest, 1e-12));
    }
}

TEST_CASE("between two gaps as much flows in as out, over the whole range of the leak") {
    test::Dice dice(5);
    for (int i = 0; i < 100; ++i) {
        const auto gap = [&] {
            demand::AnnularGap g{spread<Length>(dice, 4.0, 12.0),
                                 spread<Length>(dice, 0.005, 0.05),
                                 spread<Length>(dice, 3.0, 20.0),
                                 {0.0, dice.between(0.0, 1.0)},
                                 {}};
            return g;
        };
        demand::LeakGaps way{gap(), gap()};
        const bool has_viscosities = dice.is_heads();
        if (has_viscosities) {
            way.inlet.viscosity = spread<Viscosity>(dice, 1e-8, 1e-7);
            way.outlet.viscosity = spread<Viscosity>(dice, 1e-8, 1e-7);
        }
        demand::PlungerPressures pressures;
        pressures.leakage = demand::Leakage{spread<Stress>(dice, 0.1, 1.0), way};
        const auto leak = demand::leak_pressure(pressures);
        REQUIRE(leak.has_value());
        const auto let_through = [&](const demand::AnnularGap& g) {
            const double oil = has_viscosities ? inside(*g.viscosity, dice) : 3e-8;
            return demand::annular_conductance(inside(g.diameter, dice), inside(g.clearance, dice),
                                               inside(g.length, dice),
                                               dice.between(g.eccentricity.low, g.eccentricity.high), oil);
        };
        for (int k = 0; k < 50; ++k) {
            const double in = let_through(way.inlet);
            const double out = let_through(way.outlet);
            const double share = balance([&](double x) { return in * (1.0 - x) - out * x; });
            const double pressure = share * inside(pressures.leakage->supply, dice);
            CHECK(pressure >= in_mpa(leak->low) * (1.0 - 1e-12));
            CHECK(pressure <= in_mpa(leak->high) * (1.0 + 1e-12));
        }
    }
}

TEST_CASE("the same oil in both gaps: its viscosity does not matter") {
    const auto sure = [](double value) { return demand::exactly(value * mm); };
    demand::LeakGaps way{{sure(6.0), sure(0.01), sure(5.0), {0.0, 0.0}, {}},
                         {sure(8.0), sure(0.02), sure(9.0), {0.5, 0.5}, {}}};
    demand::PlungerPressures pressures;
    pressures.leakage = demand::Leakage{demand::exactly(0.4 * MPa), way};
    const Stress without = demand::leak_pressure(pressures)->low;
    for (const double oil : {5.0, 30.0, 900.0}) {
        way.inlet.viscosity = way.outlet.viscosity = demand::exactly(oil * millipascal_second);
        pressures.leakage->way = way;
        CHECK_THAT(in_mpa(demand::leak_pressure(pressures)->low), WithinRel(in_mpa(without), 1e-14));
    }
}
