// SPDX-License-Identifier: MIT
#pragma once

// Equilibrium of a plunger between a spring and oil: templates, so that quantities are checked for dimension and
// doubles in N, mm2 and MPa run in loops. `resistance` is all that acts with the spring against opening (friction, back
// pressure times its area, less a side load that pushes outwards); `friction` alone changes its sign on the way back.

namespace seatload::demand {

/// Pressure at which the plunger leaves its seat [MPa]: (F1 + resistance)/A1.
template <class F, class A>
constexpr auto crack_pressure(const F& seated_load, const F& resistance, const A& seat_area) {
    return (seated_load + resistance) / seat_area;
}

/// Area that opens the cracked plunger when a share of the pressure reaches the ring outside the seat line [mm2]:
/// A1 + share (A2 - A1).
template <class A>
constexpr A opening_area(const A& seat_area, const A& full_area, double annulus_share) {
    return seat_area + annulus_share * (full_area - seat_area);
}

/// Force left over at full travel when the pressure stays what cracked it [N]: p A2 - (F2 + resistance).
template <class P, class A, class F>
constexpr F full_stroke_margin(const P& pressure, const A& area, const F& full_travel_load, const F& resistance) {
    return pressure * area - (full_travel_load + resistance);
}

/// Ratio of opening area to seat area from which it snaps open: (F2 + resistance)/(F1 + resistance).
template <class F>
constexpr double snap_ratio(const F& seated_load, const F& full_travel_load, const F& resistance) {
    return (full_travel_load + resistance) / (seated_load + resistance);
}

/// Least share of the pressure that must reach the ring outside the seat line for it to snap open:
/// (snap_ratio - 1) A1/(A2 - A1). More than 1: it never does.
template <class A>
constexpr double least_annulus_share(double ratio_for_snap, const A& seat_area, const A& full_area) {
    return (ratio_for_snap - 1.0) * static_cast<double>(seat_area / (full_area - seat_area));
}

/// Falling pressure at which the plunger begins to move back from a load, or, with the seated load, at which it is home
/// [MPa]: (F - friction + back)/A2. Negative: it does not move back.
template <class F, class A>
constexpr auto return_pressure(const F& load, const F& friction, const F& back, const A& full_area) {
    return (load - friction + back) / full_area;
}

/// Share of the cracking pressure by which it must fall before the plunger is home: 1 - reseat/crack.
template <class P>
constexpr double blowdown(const P& crack, const P& reseat) {
    return 1.0 - static_cast<double>(reseat / crack);
}

}  // namespace seatload::demand
