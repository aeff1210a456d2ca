// SPDX-License-Identifier: MIT
#include <seatload/tolerance/made_influence.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/spring/rate.hpp>
#include <seatload/tolerance/cut_normal.hpp>

namespace seatload::tolerance {

InfluenceAllowance left_after_adjusting(const MadeAllowance& a) {
    return {0.0, a.coil_diameter, a.active_coils, a.free_length, 0.0};
}

std::array<double, kInfluences> load_deviations_n(const MadeOrder& order, double n, double L0, double length,
                                                  const InfluenceAllowance& allowance) {
    const double d = order.wire_diameter;
    const double D = order.outside_rules ? order.coil_diameter - d : order.coil_diameter + d;
    const double R = spring::rate(order.shear_modulus, d, D, n);
    const double F = R * (L0 - length);
    // A thicker wire takes from the mean diameter when De is kept, and adds to it when Di is.
    const double by_wire = 4.0 / d + (order.outside_rules ? 3.0 : -3.0) / D;
    const std::array<double, kInfluences> slopes{F * by_wire, 3.0 * F / D, F / n, R, F / order.shear_modulus};
    std::array<double, kInfluences> out{};
    for (std::size_t i = 0; i < kInfluences; ++i) out[i] = std::abs(slopes[i]) * allowance[i] / kDeviations;
    return out;
}

double together_n(const std::array<double, kInfluences>& deviations) {
    double sum = 0.0;
    for (const double each : deviations) sum += each * each;
    return std::sqrt(sum);
}

std::array<double, kInfluences> influence_shares(const std::array<std::array<double, kInfluences>, 2>& deviations) {
    std::array<double, kInfluences> shares{};
    for (const auto& load : deviations) {
        const double whole = together_n(load);
        if (!(whole > 0.0)) continue;
        for (std::size_t i = 0; i < kInfluences; ++i) shares[i] += 0.5 * (load[i] / whole) * (load[i] / whole);
    }
    return shares;
}

Influence largest(const std::array<double, kInfluences>& shares) {
    return static_cast<Influence>(std::max_element(shares.begin(), shares.end()) - shares.begin());
}

}  // namespace seatload::tolerance
