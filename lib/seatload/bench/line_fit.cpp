// SPDX-License-Identifier: MIT
#include <seatload/bench/line_fit.hpp>

#include <cmath>
#include <limits>

#include <seatload/bench/square.hpp>
#include <seatload/core/assert.hpp>

namespace seatload::bench {

namespace {

constexpr int kMostRounds = 100;
constexpr double kSettled = 4.0 * std::numeric_limits<double>::epsilon();

std::vector<double> effective_weights(std::span<const LinePoint> points, double slope) {
    std::vector<double> weights;
    weights.reserve(points.size());
    for (const LinePoint& p : points) weights.push_back(1.0 / (square(p.u_y) + square(slope * p.u_x)));
    return weights;
}

// A slope to begin with: that of all points alike.
double plain_slope(std::span<const LinePoint> points) {
    return refit(points, std::vector<double>(points.size(), 1.0)).slope;
}

}  // namespace

LineFit refit(std::span<const LinePoint> points, const std::vector<double>& weights) {
    SEATLOAD_ASSERT(points.size() >= 2 && weights.size() == points.size());
    double sw = 0.0, sx = 0.0, sy = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        sw += weights[i];
        sx += weights[i] * points[i].x;
        sy += weights[i] * points[i].y;
    }
    LineFit fit;
    fit.x_centre = sx / sw;
    fit.y_centre = sy / sw;
    double sxx = 0.0, sxy = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double dx = points[i].x - fit.x_centre;
        sxx += weights[i] * dx * dx;
        sxy += weights[i] * dx * (points[i].y - fit.y_centre);
    }
    SEATLOAD_ASSERT(sxx > 0.0);
    fit.slope = sxy / sxx;
    fit.variance_slope = 1.0 / sxx;
    fit.variance_y_centre = 1.0 / sw;
    for (std::size_t i = 0; i < points.size(); ++i)
        fit.chi_square += weights[i] * square(points[i].y - fit.at(points[i].x));
    fit.degrees_of_freedom = static_cast<double>(points.size()) - 2.0;
    fit.weights = weights;
    return fit;
}

LineFit fit_line(std::span<const LinePoint> points) {
    double slope = plain_slope(points);
    LineFit fit;
    for (int round = 0; round < kMostRounds; ++round) {
        fit = refit(points, effective_weights(points, slope));
        if (std::abs(fit.slope - slope) <= kSettled * std::abs(slope)) break;
        slope = fit.slope;
    }
    return fit;
}

std::vector<PointPull> pulls(const LineFit& fit, std::span<const LinePoint> points) {
    std::vector<PointPull> result;
    result.reserve(points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double weight = fit.weights[i];
        result.push_back({weight * (points[i].x - fit.x_centre) * fit.variance_slope, weight * fit.variance_y_centre});
    }
    return result;
}

}  // namespace seatload::bench
