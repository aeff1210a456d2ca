// SPDX-License-Identifier: MIT
#include <seatload/bench/probability.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <seatload/bench/budget.hpp>

namespace seatload::bench {

namespace {

// Beyond this many degrees of freedom the t curve is the normal one to every digit that counts.
constexpr double kManyReadings = 1e6;

}  // namespace

double chance_of_larger(double chi_square, double degrees_of_freedom) {
    const boost::math::chi_squared curve(degrees_of_freedom);
    return boost::math::cdf(boost::math::complement(curve, chi_square));
}

double two_sided(double chi_square, double degrees_of_freedom) {
    const double upper = chance_of_larger(chi_square, degrees_of_freedom);
    return std::min(1.0, 2.0 * std::min(upper, 1.0 - upper));
}

double chance_beyond(double sigmas) { return std::erfc(std::abs(sigmas) / std::numbers::sqrt2); }

double coverage_factor(double normal_factor, double degrees_of_freedom) {
    if (!(degrees_of_freedom < kManyReadings)) return normal_factor;
    // GUM G.4.1 truncates to the next lower whole number; below one there is no curve to take.
    const double whole = std::max(1.0, std::floor(degrees_of_freedom));
    const boost::math::students_t curve(whole);
    return boost::math::quantile(boost::math::complement(curve, 0.5 * chance_beyond(normal_factor)));
}

}  // namespace seatload::bench
