// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <numbers>

// A flank (ramp) at an angle to the axis of a plunger, pressed on from the side: what goes along the axis, as a share
// of the force across it. Statics with dry friction; coefficients are 0 or more, angles lie between 0 and 90 degrees.

namespace seatload::demand {

/// Share of a side force that pushes the plunger out, friction on the flank alone: tan(angle - atan(friction)).
/// Negative: the flank holds it by its friction.
inline double ejecting_share(double flank_angle_rad, double flank_friction) {
    const double slope = std::tan(flank_angle_rad);
    return (slope - flank_friction) / (1.0 + flank_friction * slope);
}

/// The same when what presses on the flank rubs in a guide of its own: e/(1 + guide_friction e).
inline double ejecting_share(double flank_angle_rad, double flank_friction, double guide_friction) {
    const double free = ejecting_share(flank_angle_rad, flank_friction);
    return free / (1.0 + guide_friction * free);
}

/// The same less the friction in the plunger's own bore, which takes up a side force from one side:
/// e - bore_friction (1 - guide_friction e).
inline double net_ejecting_share(double flank_angle_rad, double flank_friction, double guide_friction,
                                 double bore_friction) {
    const double pushed = ejecting_share(flank_angle_rad, flank_friction, guide_friction);
    return pushed - bore_friction * (1.0 - guide_friction * pushed);
}

/// Share of the side force with which the flank resists being pushed in against it: tan(angle + atan(friction)), and
/// with friction in a guide h/(1 - guide_friction h). Below self_locking_angle() only.
inline double holding_share(double flank_angle_rad, double flank_friction, double guide_friction = 0.0) {
    const double slope = std::tan(flank_angle_rad);
    const double free = (slope + flank_friction) / (1.0 - flank_friction * slope);
    return free / (1.0 - guide_friction * free);
}

/// Flank angle [rad] up to which a side force cannot push the plunger out: atan(flank_friction) + atan(bore_friction).
inline double self_holding_angle(double flank_friction, double bore_friction) {
    return std::atan(flank_friction) + std::atan(bore_friction);
}

/// Flank angle [rad] from which no axial force pushes the part on the flank back: 90 degrees less both friction angles.
inline double self_locking_angle(double flank_friction, double guide_friction) {
    return 0.5 * std::numbers::pi - std::atan(flank_friction) - std::atan(guide_friction);
}

}  // namespace seatload::demand
