// SPDX-License-Identifier: MIT
// The line of least squares against Eigen's QR and LDLT of the same weighted problem.
#include <Eigen/Dense>

#include <cmath>
#include <random>

#include <seatload/bench/line_fit.hpp>
#include <support/check.hpp>

using namespace seatload::bench;

namespace {

constexpr unsigned kFitSeed = 4711;

struct Reference {
    double slope = 0.0;
    double intercept = 0.0;
    Eigen::Matrix2d covariance;
};

/// Rows scaled by the root of their weight, solved by QR with column pivoting; covariance by LDLT of the normal matrix.
/// The weights 1/(u_y^2 + slope^2 u_x^2) are found by going round until the slope stands.
Reference by_eigen(const std::vector<LinePoint>& points) {
    const auto n = static_cast<Eigen::Index>(points.size());
    Reference r;
    for (int round = 0; round < 200; ++round) {
        Eigen::MatrixXd a(n, 2);
        Eigen::VectorXd b(n);
        for (Eigen::Index i = 0; i < n; ++i) {
            const LinePoint& p = points[static_cast<std::size_t>(i)];
            const double root = 1.0 / std::hypot(p.u_y, r.slope * p.u_x);
            a.row(i) << root, root * p.x;
            b(i) = root * p.y;
        }
        const Eigen::Vector2d solved = a.colPivHouseholderQr().solve(b);
        r = {solved(1), solved(0), (a.transpose() * a).ldlt().solve(Eigen::Matrix2d::Identity())};
    }
    return r;
}

std::vector<LinePoint> random_points(std::mt19937& engine) {
    std::uniform_real_distribution<double> unit(0.0, 1.0);
    std::normal_distribution<double> normal;
    const auto count = 3 + static_cast<std::size_t>(20.0 * unit(engine));
    const double slope = std::pow(10.0, 3.0 * unit(engine) - 1.5) * (unit(engine) < 0.5 ? -1.0 : 1.0);
    std::vector<LinePoint> points;
    for (std::size_t i = 0; i < count; ++i) {
        const double x = 60.0 * unit(engine), u_x = 0.02 * unit(engine), u_y = 0.001 + 0.1 * unit(engine);
        points.push_back({x + u_x * normal(engine), 5.0 + slope * x + u_y * normal(engine), u_x, u_y});
    }
    return points;
}

}  // namespace

TEST_CASE("lines of random points agree with a general least-squares solver") {
    std::mt19937 engine(kFitSeed);
    for (int i = 0; i < 500; ++i) {
        const auto points = random_points(engine);
        CAPTURE(kFitSeed, i, points.size());
        const LineFit fit = fit_line(points);
        const Reference r = by_eigen(points);
        // The normal matrix loses digits with the square of its condition, up to 1e6 for heights of tens of
        // millimetres.
        CHECK_THAT(fit.slope, WithinRel(r.slope, 1e-9));
        CHECK_THAT(fit.at(0.0), WithinAbs(r.intercept, 1e-8 * (1.0 + std::abs(r.intercept))));
        CHECK_THAT(fit.variance_slope, WithinRel(r.covariance(1, 1), 1e-8));
        CHECK_THAT(fit.variance_at(0.0), WithinRel(r.covariance(0, 0), 1e-8));
        CHECK_THAT(-fit.x_centre * fit.variance_slope, WithinRel(r.covariance(0, 1), 1e-8));
    }
}

TEST_CASE("the pull of a point is what its load moves slope and height of the line by") {
    std::mt19937 engine(kFitSeed + 1);
    for (int i = 0; i < 50; ++i) {
        const auto points = random_points(engine);
        const LineFit fit = fit_line(points);
        const auto pull = pulls(fit, points);
        for (std::size_t k = 0; k < points.size(); ++k) {
            auto moved = points;
            moved[k].y += 1.0;
            const LineFit other = refit(moved, fit.weights);
            const double scale = std::abs(fit.slope) + 1.0;
            CHECK_THAT(other.slope - fit.slope, WithinAbs(pull[k].slope, 1e-11 * scale));
            CHECK_THAT(other.at(fit.x_centre) - fit.y_centre, WithinAbs(pull[k].y_centre, 1e-9 * scale));
        }
    }
}

TEST_CASE("points on a line give that line and no chi-square") {
    const std::vector<LinePoint> points{{0.0, 1.0, 0.1, 0.1}, {1.0, 3.0, 0.2, 0.1}, {4.0, 9.0, 0.0, 0.3}};
    const LineFit fit = fit_line(points);
    CHECK_THAT(fit.slope, WithinRel(2.0, 1e-14));
    CHECK_THAT(fit.at(0.0), WithinRel(1.0, 1e-13));
    CHECK_THAT(fit.chi_square, WithinAbs(0.0, 1e-24));
    CHECK(fit.degrees_of_freedom == 1.0);
}
