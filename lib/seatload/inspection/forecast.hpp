// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>

namespace seatload::inspection {

/// What simulation foretold of a load of springs made to the drawing.
struct LoadForecast {
    double mean = 0.0;        ///< [N] of a lot that the maker brought in
    double within_lot = 0.0;  ///< [N] standard deviation from piece to piece of one lot
    double any_lot = 0.0;     ///< [N] and of springs of many lots, nothing brought in
};

struct Forecast {
    std::array<LoadForecast, 2> loads;  ///< seated, full travel
    double share_good = 0.0;            ///< of a lot brought in: both loads as ordered
    std::optional<double> load_loss;    ///< share counted on at service temperature; nothing: not known
    bool loss_is_stated = false;        ///< by the spec; else it is the wire's guidance, an estimate
};

/// Chance of a standard deviation at least as far, either way, from the one foretold (chi-square of n - 1 degrees of
/// freedom, twice the smaller tail). n from 2 on, `foretold` more than zero.
double chance_of_deviation(double deviation, int n, double foretold);

}  // namespace seatload::inspection
