// SPDX-License-Identifier: MIT
#include <seatload/bench/gravity.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <seatload/bench/square.hpp>

namespace seatload::bench {

namespace {

constexpr double kAnomaly = 0.0005;  // m/s2: 50 mGal, more than most inhabited places depart from the formula

}  // namespace

double local_gravity(double latitude_rad, double height_m) {
    const double s = square(std::sin(latitude_rad));
    const double s2 = square(std::sin(2.0 * latitude_rad));
    return 9.780318 * (1.0 + 0.0053024 * s - 0.0000058 * s2) - 0.000003085 * height_m;
}

double ellipsoid_gravity(double latitude_rad, double height_m) {
    constexpr double kMeanRadius = 6371000.0;
    const double s = square(std::sin(latitude_rad));
    const double at_sea = 9.7803267714 * (1.0 + 0.00193185138639 * s) / std::sqrt(1.0 - 0.00669437999013 * s);
    return at_sea / square(1.0 + height_m / kMeanRadius);
}

Gravity gravity_of(const Adjustment& adjustment) {
    if (const Site* site = std::get_if<Site>(&adjustment))
        return {local_gravity(in_base_unit(site->latitude), in_mm(site->height) / 1000.0), kAnomaly};
    if (std::holds_alternative<StandardGravity>(adjustment)) return {kStandardGravity, 0.0};
    const double pole = ellipsoid_gravity(0.5 * std::numbers::pi, 0.0);
    const double equator = ellipsoid_gravity(0.0, 0.0);
    return {kStandardGravity, std::max(pole - kStandardGravity, kStandardGravity - equator)};
}

Force force_of(const ScaleReading& reading, double gravity) {
    if (const Force* force = std::get_if<Force>(&reading)) return *force;
    return in_gram(std::get<Mass>(reading)) * 1e-3 * gravity * newton;  // kg m/s2 = N
}

}  // namespace seatload::bench
