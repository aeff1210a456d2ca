// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/bench/readings.hpp>

namespace seatload::bench {

/// Standard gravity [m/s2], exact by definition (3rd CGPM, 1901); one gram-force is this times a gram.
inline constexpr double kStandardGravity = 9.80665;

/// Gravity [m/s2] at a latitude [rad] and height above the sea [m], as WELMEC 2 (gravity zones) reckons it.
double local_gravity(double latitude_rad, double height_m);

/// Gravity [m/s2] on the WGS84 ellipsoid (Somigliana's closed form), less for height by the inverse square of the
/// distance from the centre of the earth.
double ellipsoid_gravity(double latitude_rad, double height_m);

/// The acceleration that turns what a scale shows into force.
struct Gravity {
    double value = kStandardGravity;  ///< [m/s2]
    double plus_minus = 0.0;          ///< rectangular [m/s2]
};

/// Gravity at the place of adjustment, with what is not known of it. A place: the formula holds within 0.0005 m/s2
/// (gravity anomalies of the earth's crust, common practice, no source). Nothing known: standard gravity, and the
/// spread from equator to pole.
Gravity gravity_of(const Adjustment& adjustment);

/// What a scale reading is as a force [N], by the acceleration given.
Force force_of(const ScaleReading& reading, double gravity);

}  // namespace seatload::bench
