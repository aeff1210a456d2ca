// SPDX-License-Identifier: MIT
#include <seatload/bench/line_doubt.hpp>

#include <seatload/bench/budget.hpp>
#include <seatload/bench/probability.hpp>
#include <seatload/core/text.hpp>

namespace seatload::bench {

namespace {

constexpr double kDoubtful = 0.02;  // two-sided: one sound run in a hundred is blamed either way

using Covariance = std::array<double, 3>;

struct Kind {
    std::string_view name;
    double GroupDoubt::*variance;
};
constexpr std::array kKinds{
    Kind{"scale: step of a reading", &GroupDoubt::scale_step}, Kind{"scale: linearity", &GroupDoubt::linearity},
    Kind{"height: step of a reading", &GroupDoubt::height_step},
    Kind{"height: each setting", &GroupDoubt::height_error}, Kind{"readings repeated", &GroupDoubt::repeats}};

std::span<const Group> inside(const LineBasis& basis) {
    return std::span(basis.groups).subspan(basis.stretch.first, basis.stretch.last - basis.stretch.first + 1);
}

std::vector<LinePoint> plain_points(std::span<const Group> groups) {
    std::vector<LinePoint> points;
    for (const Group& group : groups) points.push_back({group.height_mm, group.force_n, 0.0, 0.0});
    return points;
}

std::vector<IndependentPart> independent_parts(const LineBasis& basis) {
    const auto groups = inside(basis);
    const auto pull = pulls(basis.stretch.fit, plain_points(groups));
    std::vector<IndependentPart> parts;
    for (const Kind& kind : kKinds) {
        IndependentPart part{std::string(kind.name), {}, std::numeric_limits<double>::infinity()};
        if (kind.variance == &GroupDoubt::repeats && basis.repeatability)
            part.degrees_of_freedom = basis.repeatability->degrees_of_freedom;
        for (std::size_t i = 0; i < groups.size(); ++i) {
            const double v =
                doubt_of(basis.session, basis.run, groups[i], -basis.stretch.fit.slope, basis.repeatability).*
                kind.variance;
            part.covariance[0] += pull[i].slope * pull[i].slope * v;
            part.covariance[1] -= pull[i].slope * pull[i].y_centre * v;  // the rate is minus the slope
            part.covariance[2] += pull[i].y_centre * pull[i].y_centre * v;
        }
        if (part.covariance[0] > 0.0 || part.covariance[2] > 0.0) parts.push_back(std::move(part));
    }
    return parts;
}

// The line of the same groups, were these errors there.
LineFit shifted(const LineBasis& basis, const CommonErrors& errors) {
    const auto groups = groups_of(basis.session, basis.run, false, errors);
    const auto used = std::span(groups).subspan(basis.stretch.first, basis.stretch.last - basis.stretch.first + 1);
    return refit(plain_points(used), basis.stretch.fit.weights);
}

CommonShift shift_of(const LineBasis& basis, const CommonSource& source) {
    CommonErrors up, down;
    up.*source.error = source.standard;
    down.*source.error = -source.standard;
    const LineFit more = shifted(basis, up), less = shifted(basis, down);
    const double centre = basis.stretch.fit.x_centre;
    return {source.name, 0.5 * (less.slope - more.slope), 0.5 * (more.at(centre) - less.at(centre))};
}

IndependentPart excess_scatter(const std::vector<IndependentPart>& parts, const LineFit& fit) {
    IndependentPart excess{"scatter beyond what was stated", {}, fit.degrees_of_freedom};
    const double more = fit.chi_square / fit.degrees_of_freedom - 1.0;
    for (const IndependentPart& part : parts)
        for (std::size_t i = 0; i < 3; ++i) excess.covariance[i] += more * part.covariance[i];
    return excess;
}

std::string verdict_text(const ChiSquare& c) {
    const std::string numbers = "chi-square " + significant(c.value, 3) + " for " +
                                significant(c.degrees_of_freedom, 3) +
                                (c.degrees_of_freedom == 1.0 ? " degree of freedom" : " degrees of freedom");
    switch (c.verdict) {
        case Straightness::not_judged:
            return "No more points than a line needs: whether it is straight cannot be judged.";
        case Straightness::as_stated:
            return "The points scatter about the line as the stated uncertainties let one expect (" + numbers + ").";
        case Straightness::too_large:
            return "The points lie further off the line than the stated uncertainties explain (" + numbers +
                   "): the uncertainties are stated too small, or the spring is not straight there. What the results "
                   "say is widened accordingly.";
        case Straightness::too_small:
            return "The points lie closer to the line than the stated uncertainties let one expect (" + numbers +
                   "): the uncertainties are stated too large.";
    }
    return {};
}

}  // namespace

ChiSquare judge(const LineFit& fit) {
    ChiSquare c{fit.chi_square, fit.degrees_of_freedom, 1.0, Straightness::not_judged, {}};
    if (c.degrees_of_freedom >= 1.0) {
        c.p = two_sided(c.value, c.degrees_of_freedom);
        const bool large = chance_of_larger(c.value, c.degrees_of_freedom) < 0.5;
        c.verdict = c.p >= kDoubtful ? Straightness::as_stated
                    : large          ? Straightness::too_large
                                     : Straightness::too_small;
    }
    c.text = verdict_text(c);
    return c;
}

Line line_with_doubt(const LineBasis& basis, Straightness straightness) {
    const LineFit& fit = basis.stretch.fit;
    Line line{fit.x_centre, fit.y_centre, -fit.slope, independent_parts(basis), {}};
    if (straightness == Straightness::too_large) line.independent.push_back(excess_scatter(line.independent, fit));
    for (const CommonSource& source : common_sources(basis.session)) line.common.push_back(shift_of(basis, source));
    const double warm = kRateLossPerKelvin * rectangular(basis.session.temperature.plus_minus);
    if (warm != 0.0) line.common.push_back({"temperature", line.rate_n_mm * warm, line.centre_force_n * warm});
    return line;
}

}  // namespace seatload::bench
