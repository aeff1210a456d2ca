// SPDX-License-Identifier: MIT
#include <seatload/bench/load_path.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

#include <seatload/bench/budget.hpp>
#include <seatload/bench/correction.hpp>
#include <seatload/bench/gravity.hpp>
#include <seatload/bench/line_fit.hpp>
#include <seatload/bench/square.hpp>

namespace seatload::bench {

namespace {

// Travel over force: the slope is then the compliance itself, which may be near zero, not its inverse.
std::vector<LinePoint> block_points(const Readings& session) {
    const double gravity = gravity_of(session.scale.adjusted_at).value;
    std::vector<LinePoint> points;
    for (const BlockReading& r : session.load_path.block_run) {
        // An indicator reads so small a travel where there is one; else the height gauge does.
        const bool by_indicator = session.indicator.resolution > Length{};
        Reading as_read;
        (by_indicator ? as_read.travel : as_read.height) = r.travel;
        const OwnDoubt doubt = own_doubt(session, as_read);
        const double force = force_from_scale(r.scale, session.scale.tare, gravity, Bearing::none, 0.0, 0.0);
        points.push_back({force, in_mm(r.travel), std::hypot(doubt.scale_step_n, doubt.linearity_n),
                          std::hypot(doubt.height_step_mm, doubt.height_error_mm)});
    }
    return points;
}

bool spans_a_line(const std::vector<LinePoint>& points) {
    if (points.size() < 2) return false;
    const bool doubted = std::all_of(points.begin(), points.end(), [](const LinePoint& p) { return p.u_y > 0.0; });
    return doubted && std::any_of(points.begin(), points.end(), [&](const LinePoint& p) { return p.x != points[0].x; });
}

}  // namespace

Compliance compliance_of(const Readings& session) {
    if (const auto& stated = session.load_path.stiffness) {
        const double k = in_newton_per_mm(stated->value);
        return {1.0 / k, rectangular(in_newton_per_mm(stated->plus_minus)) / square(k)};
    }
    const auto points = block_points(session);
    if (!spans_a_line(points)) return {};
    const LineFit fit = fit_line(points);
    const double excess = points.size() > 2 ? std::max(1.0, fit.chi_square / fit.degrees_of_freedom) : 1.0;
    const double span = fit.slope * rectangular(session.scale.span_error.value);
    return {std::max(0.0, fit.slope), std::sqrt(fit.variance_slope * excess + square(span))};
}

std::optional<Estimate<Rate>> load_path_stiffness(const Readings& session) {
    const Compliance c = compliance_of(session);
    if (!(c.value > 2.0 * c.standard)) return std::nullopt;
    const Rate k = newton_per_mm / c.value;
    return combine<Rate>(k, {{"load path", k * (c.standard / c.value)}}, session.coverage_factor);
}

}  // namespace seatload::bench
