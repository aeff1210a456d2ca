// SPDX-License-Identifier: MIT
#include <seatload/inspection/tolerance_factor.hpp>

#include <cmath>

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/non_central_t.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/tools/roots.hpp>

#include <seatload/core/assert.hpp>

namespace seatload::inspection {
namespace {

constexpr double kFarthestMean = 8.0;  ///< in its standard errors; what lies beyond weighs under 1e-14

/// Half width r of the interval about `off` that holds a share of the standard normal curve.
double half_width(double off, double content) {
    const boost::math::normal curve;
    const auto excess = [&](double r) {
        return boost::math::cdf(curve, off + r) - boost::math::cdf(curve, off - r) - content;
    };
    const double centred = boost::math::quantile(curve, 0.5 + 0.5 * content);
    std::uintmax_t steps = 100;
    const auto [low, high] = boost::math::tools::toms748_solve(excess, 0.5 * centred, centred + off + 1.0,
                                                               boost::math::tools::eps_tolerance<double>(48), steps);
    return 0.5 * (low + high);
}

/// Chance that mean +- k s holds the share, of n values.
double confidence_of(double k, int n, double content) {
    const boost::math::normal curve;
    const boost::math::chi_squared spread(n - 1);
    const auto weighed = [&](double z) {
        const double r = half_width(z / std::sqrt(n), content) / k;
        return boost::math::pdf(curve, z) * boost::math::cdf(boost::math::complement(spread, (n - 1) * r * r));
    };
    return 2.0 * boost::math::quadrature::gauss_kronrod<double, 61>::integrate(weighed, 0.0, kFarthestMean, 5, 1e-10);
}

}  // namespace

double one_sided_tolerance_factor(int n, double content, double confidence) {
    SEATLOAD_ASSERT(n >= 2);
    const double root = std::sqrt(n);
    const double z = boost::math::quantile(boost::math::normal(), content);
    return boost::math::quantile(boost::math::non_central_t(n - 1, z * root), confidence) / root;
}

double two_sided_tolerance_factor(int n, double content, double confidence) {
    SEATLOAD_ASSERT(n >= 2);
    const auto excess = [&](double k) { return confidence_of(k, n, content) - confidence; };
    // Near the truth: Howe's approximation (1969).
    const double z = boost::math::quantile(boost::math::normal(), 0.5 + 0.5 * content);
    const double chi = boost::math::quantile(boost::math::chi_squared(n - 1), 1.0 - confidence);
    const double guess = z * std::sqrt((n - 1) * (1.0 + 1.0 / n) / chi);
    std::uintmax_t steps = 100;
    const auto [low, high] = boost::math::tools::bracket_and_solve_root(
        excess, guess, 1.2, true, boost::math::tools::eps_tolerance<double>(30), steps);
    return 0.5 * (low + high);
}

}  // namespace seatload::inspection
