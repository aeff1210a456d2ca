// SPDX-License-Identifier: MIT
#include <seatload/demand/return_time.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>

#include <boost/math/tools/toms748_solve.hpp>

#include <seatload/core/assert.hpp>

namespace seatload::demand {

double logarithmic_mean(double a, double b) {
    if (a <= 0.0 || b <= 0.0) return 0.0;
    const double least = std::min(a, b);
    const double excess = (std::max(a, b) - least) / least;
    // the quotient loses its digits near a = b; there the first terms of its series are exact to rounding
    if (excess < 1e-5) return least * (1.0 + excess / 2.0 - excess * excess / 12.0);
    return least * excess / std::log1p(excess);
}

double share_for_logarithmic_mean(double a, double room_a, double b, double room_b, double mean) {
    SEATLOAD_ASSERT(room_a > 0.0 && room_b > 0.0 && mean > 0.0);
    const auto excess = [&](double share) { return logarithmic_mean(a + share * room_a, b + share * room_b) - mean; };
    // The mean rises with the share: where one number is 0 it is 0, where both reach it, it is passed.
    const double low = std::max(-a / room_a, -b / room_b);
    const double high = std::max((mean - a) / room_a, (mean - b) / room_b);
    if (!(excess(high) > 0.0)) return high;
    if (!(excess(low) < 0.0)) return low;
    std::uintmax_t steps = 200;
    const auto ends =
        boost::math::tools::toms748_solve(excess, low, high, boost::math::tools::eps_tolerance<double>(50), steps);
    return 0.5 * (ends.first + ends.second);
}

double return_time_s(double full_area_mm2, double stroke_mm, double conductance, double seated_net_n,
                     double full_travel_net_n) {
    const double mean = logarithmic_mean(seated_net_n, full_travel_net_n);
    if (mean <= 0.0) return std::numeric_limits<double>::infinity();
    return mean_load_for_return(full_area_mm2, stroke_mm, conductance, mean);
}

}  // namespace seatload::demand
