// SPDX-License-Identifier: MIT
#include <seatload/inspection/forecast.hpp>

#include <seatload/bench/probability.hpp>

namespace seatload::inspection {

double chance_of_deviation(double deviation, int n, double foretold) {
    const double ratio = deviation / foretold;
    return bench::two_sided((n - 1) * ratio * ratio, n - 1);
}

}  // namespace seatload::inspection
