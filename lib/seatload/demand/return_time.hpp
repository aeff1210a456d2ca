// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::demand {

// A plunger that comes back presses the oil before it out through a gap. Forces are in equilibrium all along (its mass
// and that of the spring are left out), the flow is laminar: A2 v = g (F - N)/A2, with F the spring load that falls
// evenly from F2 to F1, N all that the oil's pressure need not overcome (friction, residual pressure, less back
// pressure), g the conductance of the gap.

/// Logarithmic mean of two positive numbers (the number itself when both are equal): (a - b)/ln(a/b). 0 when one is 0.
double logarithmic_mean(double a, double b);

/// How far two numbers must go, both by the same share of their rooms (more than 0), until their logarithmic mean is
/// `mean` (more than 0): that of a + s room_a and b + s room_b. Negative when they may go back. Solved by bracketing.
double share_for_logarithmic_mean(double a, double room_a, double b, double room_b, double mean);

/// Mean net load that brings the plunger home in a time [N]: A2^2 h/(g t). [mm2, mm, mm3/s per MPa, s]
template <class A, class L, class G, class T>
constexpr auto mean_load_for_return(const A& full_area, const L& stroke, const G& conductance, const T& time) {
    return full_area * full_area * stroke / (conductance * time);
}

/// Time from full travel to the seat [s], exact for the equilibrium above: A2^2 h/(g Fm), Fm the logarithmic mean of
/// F1 - N and F2 - N. Infinite when the seated load does not exceed N: it creeps towards a stop short of its seat.
double return_time_s(double full_area_mm2, double stroke_mm, double conductance, double seated_net_n,
                     double full_travel_net_n);

}  // namespace seatload::demand
