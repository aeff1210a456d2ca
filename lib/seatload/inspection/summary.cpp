// SPDX-License-Identifier: MIT
#include <seatload/inspection/summary.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <seatload/core/assert.hpp>
#include <seatload/inspection/tolerance_factor.hpp>

namespace seatload::inspection {
namespace {

double deviation_of(const std::vector<double>& values, double mean) {
    if (values.size() < 2) return 0.0;
    double squares = 0.0;
    for (const double v : values) squares += (v - mean) * (v - mean);
    return std::sqrt(squares / static_cast<double>(values.size() - 1));
}

double half_width_of_mean(const Summary& s) {
    const boost::math::students_t curve(s.count - 1);
    return boost::math::quantile(curve, 0.5 + 0.5 * kConfidence) * s.deviation / std::sqrt(s.count);
}

void add_interval(Summary& s, const Limits& limits) {
    const bool one_sided = limits.least.has_value() != limits.most.has_value();
    s.factor = one_sided ? one_sided_tolerance_factor(s.count, kContent, kConfidence)
                         : two_sided_tolerance_factor(s.count, kContent, kConfidence);
    if (!one_sided || limits.least) s.interval.least = s.mean - s.factor * s.deviation;
    if (!one_sided || limits.most) s.interval.most = s.mean + s.factor * s.deviation;
}

std::optional<Capability> capability_of(const Summary& s, const Limits& limits) {
    if (limits.is_open() || !(s.deviation > 0.0)) return std::nullopt;
    double nearest = std::numeric_limits<double>::infinity();
    if (limits.least) nearest = std::min(nearest, s.mean - *limits.least);
    if (limits.most) nearest = std::min(nearest, *limits.most - s.mean);
    const double estimate = nearest / (3.0 * s.deviation);
    return Capability{estimate, capability_at_least(estimate, s.count, kConfidence)};
}

}  // namespace

double capability_at_least(double estimate, int n, double confidence) {
    SEATLOAD_ASSERT(n >= 2);
    const double z = boost::math::quantile(boost::math::normal(), confidence);
    return estimate - z * std::sqrt(1.0 / (9.0 * n) + estimate * estimate / (2.0 * (n - 1)));
}

Summary summarise(const std::vector<double>& values, const Limits& limits) {
    SEATLOAD_ASSERT(!values.empty());
    Summary s;
    s.count = static_cast<int>(values.size());
    s.mean = std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
    s.deviation = deviation_of(values, s.mean);
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    s.least = *least;
    s.most = *most;
    if (s.count >= 2) s.mean_within = half_width_of_mean(s);
    if (s.count < kFewestForInterval) return s;
    add_interval(s, limits);
    s.capability = capability_of(s, limits);
    return s;
}

}  // namespace seatload::inspection
