// SPDX-License-Identifier: MIT
#include <seatload/demand/plunger_behaviour.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/demand/hydraulics.hpp>
#include <seatload/demand/plunger_point.hpp>
#include <seatload/demand/plunger_statics.hpp>
#include <seatload/demand/ramp.hpp>
#include <seatload/demand/return_time.hpp>

namespace seatload::demand {
namespace {

using P = PlungerPoint;

const std::vector<PointMember> kMoving{&P::seat_area_mm2,   &P::full_area_mm2,  &P::annulus_share,  &P::friction_n,
                                       &P::side_released_n, &P::half_angle_rad, &P::flank_friction, &P::bore_friction,
                                       &P::back_mpa,        &P::back_area_mm2};
const std::vector<PointMember> kReturning{
    &P::full_area_mm2,      &P::friction_n,           &P::residual_mpa,       &P::back_mpa,
    &P::back_area_mm2,      &P::drain_diameter_mm,    &P::drain_clearance_mm, &P::drain_length_mm,
    &P::drain_eccentricity, &P::drain_viscosity_mpa_s};

/// A point with the two loads of a spring.
struct Loaded {
    P point;
    double seated_n;
    double full_travel_n;
    bool side_load_drags;  ///< at full travel too

    double back_n() const { return point.back_mpa * point.back_area_mm2; }
    double side_n() const {
        return point.side_released_n *
               net_ejecting_share(point.half_angle_rad, point.flank_friction, 0.0, point.bore_friction);
    }
    double resistance_seated_n() const { return point.friction_n + back_n() - side_n(); }
    double resistance_full_n() const { return point.friction_n + back_n() - (side_load_drags ? side_n() : 0.0); }
    double opening_area_mm2() const {
        return opening_area(point.seat_area_mm2, point.full_area_mm2, point.annulus_share);
    }
};

/// Both ends of a number over all corners of the plunger and of the loads.
template <class Number>
Interval<double> over_corners(const Plunger& plunger, const SpringLoads& loads, std::span<const PointMember> members,
                              const Number& number) {
    const PlungerBox box = box_of(plunger);
    const bool drags = plunger.side_load && !plunger.side_load->clear_at_full_travel;
    Interval<double> found{INFINITY, -INFINITY};
    for (const double F1 : {in_newton(loads.seated.low), in_newton(loads.seated.high)})
        for (const double F2 : {in_newton(loads.full_travel.low), in_newton(loads.full_travel.high)}) {
            const auto at = [&](const P& p) { return number(Loaded{p, F1, F2, drags}); };
            found.low = std::min(found.low, furthest(box, members, false, at).value);
            found.high = std::max(found.high, furthest(box, members, true, at).value);
        }
    return found;
}

double crack(const Loaded& l) { return crack_pressure(l.seated_n, l.resistance_seated_n(), l.point.seat_area_mm2); }
double full(const Loaded& l) {
    return std::max(crack(l), crack_pressure(l.full_travel_n, l.resistance_full_n(), l.opening_area_mm2()));
}
double returns_from(const Loaded& l, double load) {
    return return_pressure(load, l.point.friction_n, l.back_n(), l.point.full_area_mm2);
}
double load_ratio(const Loaded& l) {
    return (l.full_travel_n + l.resistance_full_n()) / (l.seated_n + l.resistance_seated_n());
}
double area_ratio(const Loaded& l) { return l.opening_area_mm2() / l.point.seat_area_mm2; }

double time_home(const Loaded& l, double stroke_mm) {
    const P& p = l.point;
    const double against = p.residual_mpa * p.full_area_mm2 + p.friction_n - l.back_n();
    const double conductance = annular_conductance(p.drain_diameter_mm, p.drain_clearance_mm, p.drain_length_mm,
                                                   p.drain_eccentricity, p.drain_viscosity_mpa_s);
    return return_time_s(p.full_area_mm2, stroke_mm, conductance, l.seated_n - against, l.full_travel_n - against);
}

Interval<Stress> in_mpa_interval(const Interval<double>& numbers) { return {numbers.low * MPa, numbers.high * MPa}; }

std::optional<Interval<Time>> cold_return(const Plunger& plunger, const SpringLoads& loads) {
    if (!plunger.drain) return std::nullopt;
    const auto seconds =
        over_corners(plunger, loads, kReturning, [&](const Loaded& l) { return time_home(l, in_mm(plunger.stroke)); });
    if (!std::isfinite(seconds.high)) return std::nullopt;
    return Interval<Time>{seconds.low * second, seconds.high * second};
}

/// The load at a lift, which rises evenly from the seat to full travel.
SpringLoads at_lift(const Plunger& plunger, const SpringLoads& loads, Length lift) {
    const double share = lift / plunger.stroke;
    const auto between = [&](Force F1, Force F2) { return F1 + share * (F2 - F1); };
    const Interval<Force> there{between(loads.seated.low, loads.full_travel.low),
                                between(loads.seated.high, loads.full_travel.high)};
    return {there, there};
}

}  // namespace

PlungerBehaviour behaviour(const Plunger& plunger, const SpringLoads& loads, std::string words) {
    const auto over = [&](const auto& number) { return over_corners(plunger, loads, kMoving, number); };
    PlungerBehaviour b;
    b.words = std::move(words);
    b.loads = loads;
    b.crack = in_mpa_interval(over(crack));
    b.fully_open = in_mpa_interval(over(full));
    b.return_start = in_mpa_interval(over([](const Loaded& l) { return returns_from(l, l.full_travel_n); }));
    b.reseat = in_mpa_interval(over([](const Loaded& l) { return returns_from(l, l.seated_n); }));
    b.area_ratio = over(area_ratio);
    b.load_ratio = over(load_ratio);
    b.least_share = over([](const Loaded& l) {
        return std::max(0.0, least_annulus_share(load_ratio(l), l.point.seat_area_mm2, l.point.full_area_mm2));
    });
    b.blowdown = over([](const Loaded& l) { return blowdown(crack(l), returns_from(l, l.seated_n)); });
    const Interval<double> surplus = over([](const Loaded& l) { return area_ratio(l) - load_ratio(l); });
    b.always_snaps = surplus.low >= 0.0;
    b.never_snaps = surplus.high < 0.0;
    b.cold_return = cold_return(plunger, loads);
    return b;
}

std::vector<PlungerBehaviour> behaviours_at_the_ends(const Plunger& plunger, const Budget& budget) {
    const Force none = 0.0 * newton;
    const Force F1_least = budget.seated_rounded.at_least.value_or(none);
    const Force F2_least = std::max(F1_least, budget.full_travel_rounded.at_least.value_or(none));
    const Force F1_most = *budget.seated_rounded.at_most;
    const Force F2_most = *budget.full_travel_rounded.at_most;
    return {behaviour(plunger, {exactly(F1_least), exactly(F2_least)}, "least loads"),
            behaviour(plunger, {exactly(std::min(F1_most, F2_most)), exactly(F2_most)}, "greatest loads")};
}

Interval<Stress> opening_pressure(const Plunger& plunger, const SpringLoads& loads, Length lift) {
    if (lift <= 0.0 * mm) return in_mpa_interval(over_corners(plunger, loads, kMoving, crack));
    const SpringLoads there = at_lift(plunger, loads, lift);
    return in_mpa_interval(over_corners(plunger, there, kMoving, [](const Loaded& l) {
        return crack_pressure(l.full_travel_n, l.resistance_full_n(), l.opening_area_mm2());
    }));
}

Interval<Stress> closing_pressure(const Plunger& plunger, const SpringLoads& loads, Length lift) {
    const SpringLoads there = at_lift(plunger, loads, lift);
    return in_mpa_interval(
        over_corners(plunger, there, kMoving, [](const Loaded& l) { return returns_from(l, l.full_travel_n); }));
}

}  // namespace seatload::demand
