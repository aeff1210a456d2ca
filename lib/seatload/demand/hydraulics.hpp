// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <numbers>

// Orifice and annular flow (textbook); templates, so that quantities are checked for dimension and doubles in mm, MPa
// and MPa s run in loops.

namespace seatload::demand {

/// Area of a circle [mm2].
template <class L>
constexpr auto circle_area(const L& diameter) {
    return (std::numbers::pi / 4.0) * (diameter * diameter);
}

/// Pressure in a chamber between two similar sharp-edged orifices as a share of the supply, against no pressure behind
/// the second: r2/(1 + r2) with r the area of the inlet over that of the outlet (equal discharge coefficients).
constexpr double share_between_orifices(double inlet_over_outlet) {
    const double square = inlet_over_outlet * inlet_over_outlet;
    return square / (1.0 + square);
}

/// Ratio of orifice areas, inlet over outlet, that lets a share of the supply pressure (0 <= share < 1) into the
/// chamber.
inline double orifice_ratio_for_share(double share) { return std::sqrt(share / (1.0 - share)); }

/// Pressure between two laminar gaps as a share of the supply, from their conductances: g1/(g1 + g2).
template <class G>
constexpr double share_between_gaps(const G& inlet, const G& outlet) {
    return inlet / (inlet + outlet);
}

/// How much more flows through an annular gap whose parts lie off centre (0 in the middle, 1 touching): 1 + 1.5 e2.
constexpr double eccentric_flow_factor(double eccentricity) { return 1.0 + 1.5 * eccentricity * eccentricity; }

/// Conductance of a narrow annular gap in laminar flow [mm3/s per MPa]: pi D c3 (1 + 1.5 e2)/(12 mu L), with the radial
/// clearance c and the dynamic viscosity mu.
template <class L, class V>
constexpr auto annular_conductance(const L& diameter, const L& clearance, const L& length, double eccentricity,
                                   const V& viscosity) {
    const double slimness = clearance / length;
    return (std::numbers::pi / 12.0 * eccentric_flow_factor(eccentricity)) * slimness *
           (diameter * clearance * clearance / viscosity);
}

}  // namespace seatload::demand
