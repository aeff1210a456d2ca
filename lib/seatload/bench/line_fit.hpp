// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

namespace seatload::bench {

/// A point of a straight line with the standard uncertainty of both coordinates.
struct LinePoint {
    double x = 0.0;
    double y = 0.0;
    double u_x = 0.0;
    double u_y = 0.0;
};

/// y = y_centre + slope (x - x_centre).
struct LineFit {
    double slope = 0.0;
    double x_centre = 0.0;  ///< weighted mean of x, where slope and height of the line are not correlated
    double y_centre = 0.0;
    double variance_slope = 0.0;
    double variance_y_centre = 0.0;
    double chi_square = 0.0;
    double degrees_of_freedom = 0.0;
    std::vector<double> weights;  ///< 1/variance of each residual

    double at(double x) const { return y_centre + slope * (x - x_centre); }
    /// Variance of the line's y at x from the scatter of its points.
    double variance_at(double x) const { return variance_y_centre + (x - x_centre) * (x - x_centre) * variance_slope; }
};

/// The straight line of least squares with effective variance weights 1/(u_y^2 + slope^2 u_x^2), iterated until the
/// slope stands. Needs two points of different x at least, and an uncertainty that is not zero for each.
LineFit fit_line(std::span<const LinePoint> points);

/// Part of each point in slope and in y_centre (their derivatives by the point's y), weights taken as fixed.
struct PointPull {
    double slope = 0.0;
    double y_centre = 0.0;
};
std::vector<PointPull> pulls(const LineFit& fit, std::span<const LinePoint> points);

/// The line of the same points with the weights of another fit.
LineFit refit(std::span<const LinePoint> points, const std::vector<double>& weights);

}  // namespace seatload::bench
