// SPDX-License-Identifier: MIT
#include "random_plunger.hpp"

#include <numbers>

namespace seatload::test {
namespace {

using demand::Interval;

/// Two ends around a number, or the number itself.
Interval<double> around(Dice& dice, double low, double high) {
    const double middle = dice.between(low, high);
    if (dice.is_heads()) return {middle, middle};
    return {dice.between(low, middle), dice.between(middle, high)};
}

template <class Q>
Interval<Q> range(Dice& dice, double low, double high) {
    const Interval<double> ends = around(dice, low, high);
    return {Q::from_value(ends.low), Q::from_value(ends.high)};
}

demand::SideLoad random_side_load(Dice& dice) {
    demand::SideLoad side;
    side.parked = range<Force>(dice, 0.0, 80.0);
    if (dice.is_heads()) side.released = range<Force>(dice, 0.0, 20.0);
    side.clear_at_full_travel = dice.is_heads();
    side.half_angle = range<Angle>(dice, 0.0, 45.0 * std::numbers::pi / 180.0);
    side.flank_friction = around(dice, 0.02, 0.25);
    side.bore_friction = around(dice, 0.0, 0.25);
    side.acts_with_leak_pressure = dice.is_heads();
    return side;
}

demand::Drain random_drain(Dice& dice) {
    demand::Drain drain;
    drain.gap = {range<Length>(dice, 5.0, 14.0), range<Length>(dice, 0.1, 0.4), range<Length>(dice, 2.0, 20.0),
                 around(dice, 0.0, 1.0), range<Viscosity>(dice, 1e-7, 2e-6)};
    drain.longest_time = dice.between(0.2, 20.0) * second;
    return drain;
}

}  // namespace

demand::Plunger random_plunger(Dice& dice) {
    demand::Plunger p;
    p.seat.area = range<Area>(dice, 5.0, 60.0);
    p.full.area = range<Area>(dice, 70.0, 200.0);
    p.stroke = dice.between(1.0, 12.0) * mm;
    if (dice.is_heads()) p.annulus_share = around(dice, 0.2, 1.0);
    p.friction = range<Force>(dice, 0.0, 2.0);
    p.pressures.release = range<Stress>(dice, 0.1, 1.0);
    if (dice.is_heads()) p.pressures.hold_open = range<Stress>(dice, 0.1, 1.0);
    if (dice.is_heads()) p.pressures.leak = range<Stress>(dice, 0.0, 0.3);
    if (dice.is_heads()) p.pressures.mechanism = range<Stress>(dice, 0.5, 2.0);
    p.pressures.residual = range<Stress>(dice, 0.0, 0.02);
    if (dice.is_heads()) p.side_load = random_side_load(dice);
    if (dice.is_heads())
        p.back = demand::BackPressure{range<Stress>(dice, 0.0, 0.02), {{}, range<Area>(dice, 50.0, 150.0)}};
    if (dice.is_heads()) p.drain = random_drain(dice);
    p.margins = {Share{dice.is_heads() ? dice.between(0.0, 0.3) : 0.0},
                 Share{dice.is_heads() ? dice.between(0.0, 0.3) : 0.0}};
    return p;
}

demand::PlungerPoint random_point(const demand::PlungerBox& box, Dice& dice) {
    demand::PlungerPoint point = box.low;
    for (const demand::PointInput& input : demand::point_inputs()) {
        const double low = box.low.*input.member;
        const double high = box.high.*input.member;
        const double place = dice.between(-0.2, 1.2);
        point.*input.member = place <= 0.0 ? low : place >= 1.0 ? high : low + place * (high - low);
    }
    return point;
}

}  // namespace seatload::test
