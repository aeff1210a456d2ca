// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::spring {

/// Temperature at which catalogue moduli hold [deg C].
inline constexpr double kReferenceTemperature = 20.0;

/// Share of a modulus left at a temperature: 1 - r (t - 20), r in 1/K. EN 13906-1 cl. 8 (memory).
constexpr double modulus_share(double loss_per_kelvin, double temperature_celsius) {
    return 1.0 - loss_per_kelvin * (temperature_celsius - kReferenceTemperature);
}

}  // namespace seatload::spring
