// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include <seatload/bench/correction.hpp>
#include <seatload/bench/hysteresis.hpp>
#include <seatload/bench/line_doubt.hpp>
#include <seatload/bench/line_results.hpp>
#include <seatload/bench/measured.hpp>
#include <seatload/bench/remarks.hpp>
#include <seatload/core/text.hpp>

namespace seatload::bench {

namespace {

constexpr double kBeyondReadings = 0.1;  // of the spread of the readings on the line: further out is reckoned only

struct Found {
    std::vector<Group> loading;
    std::vector<Group> unloading;
    std::vector<LinePoint> points;
    std::optional<Repeatability> repeatability;
    Stretch stretch;
};

double plain_rate(const std::vector<Group>& groups) {
    std::vector<LinePoint> points;
    for (const Group& g : groups) points.push_back({g.height_mm, g.force_n, 0.0, 1.0});
    return -refit(points, std::vector<double>(points.size(), 1.0)).slope;
}

// The doubt of a point depends on the rate, the rate on the points in the line: twice round settles it.
std::optional<Found> find_line(const Readings& session, const SpringRun& run) {
    Found f{
        groups_of(session, run, false), groups_of(session, run, true), {}, repeatability_of_repeats(session, run), {}};
    f.points = line_points(session, run, f.loading, plain_rate(f.loading), f.repeatability);
    for (int round = 0; round < 2; ++round) {
        const auto stretch = straight_stretch(f.points);
        if (!stretch) return std::nullopt;
        if (!f.repeatability)
            f.repeatability =
                repeatability_of_pairs(f.loading, f.unloading, f.points[stretch->last].x, f.points[stretch->first].x);
        f.points = line_points(session, run, f.loading, -stretch->fit.slope, f.repeatability);
    }
    const auto settled = straight_stretch(f.points);
    if (!settled) return std::nullopt;
    f.stretch = *settled;
    return f;
}

// Newtons with as many decimals as their standard uncertainty bears out.
std::string newtons(double value, double standard) {
    const double digits = standard > 0.0 ? std::ceil(-std::log10(standard)) : 3.0;
    return fixed(value, static_cast<int>(std::clamp(digits, 0.0, 6.0))) + " N";
}

std::string reason(Use use, double force, double line, double sigmas) {
    const double standard = sigmas != 0.0 ? std::abs((force - line) / sigmas) : 0.0;
    const std::string off = newtons(std::abs(force - line), standard);
    const std::string how_far = " (" + significant(std::abs(sigmas), 2) + " standard uncertainties)";
    if (use == Use::coils_closing)
        return off + " above the line" + how_far + ": coils touch and the spring grows stiffer";
    if (use == Use::outlier)
        return off + (force > line ? " above" : " below") + " the line" + how_far +
               ": more than chance explains; it counts all the same";
    if (line > 0.0) return off + " above the line" + how_far + ": end coils are still seating";
    return "carries " + newtons(force, standard) + ", where the line would stand at " + newtons(line, standard) +
           how_far + ": the plate does not bear on the whole spring yet";
}

Use use_of(const Found& f, std::size_t group, const std::vector<std::size_t>& far_off) {
    if (group < f.stretch.first) return Use::before_contact;
    if (group > f.stretch.last) return Use::coils_closing;
    return std::find(far_off.begin(), far_off.end(), group) == far_off.end() ? Use::line : Use::outlier;
}

Point point_of(const Readings& session, const SpringRun& run, const Line& line, std::size_t reading) {
    const Corrected c = corrected(session, run.readings[reading]).value();
    const OwnDoubt own = own_doubt(session, run.readings[reading]);
    Point p;
    p.reading = reading;
    p.stated_height = c.stated_height_mm * mm;
    p.height = c.height_mm * mm;
    p.force = c.force_n * newton;
    p.u_height = std::hypot(own.height_step_mm, own.height_error_mm) * mm;
    p.u_force = std::hypot(own.scale_step_n, own.linearity_n) * newton;
    p.residual = (c.force_n - load_on(line, c.height_mm)) * newton;
    const double doubt = std::hypot(in_newton(p.u_force), line.rate_n_mm * in_mm(p.u_height));
    p.sigmas = doubt > 0.0 ? in_newton(p.residual) / doubt : 0.0;
    return p;
}

std::vector<Point> points_of(const Readings& session, const SpringRun& run, const Found& f, const Line& line) {
    std::vector<Point> all;
    const auto far_off = outliers(f.points, f.stretch);
    for (std::size_t g = 0; g < f.loading.size(); ++g)
        for (const std::size_t i : f.loading[g].readings) {
            Point p = point_of(session, run, line, i);
            p.use = use_of(f, g, far_off);
            p.sigmas = f.stretch.above[g];
            if (p.use != Use::line) p.why = reason(p.use, f.points[g].y, load_on(line, f.points[g].x), p.sigmas);
            all.push_back(std::move(p));
        }
    for (const Group& group : f.unloading)
        for (const std::size_t i : group.readings) {
            all.push_back(point_of(session, run, line, i));
            all.back().use = Use::unloading;
        }
    std::sort(all.begin(), all.end(), [](const Point& a, const Point& b) { return a.reading < b.reading; });
    return all;
}

void add_loads(const Readings& session, const Found& f, MeasuredSpring& spring) {
    const double lowest = f.points[f.stretch.last].x, highest = f.points[f.stretch.first].x;
    const double beyond = kBeyondReadings * (highest - lowest);
    for (const AskedHeight& asked : session.heights) {
        const double L = in_mm(asked.height.value);
        spring.loads.push_back({asked, load_at(spring, asked.height), L < lowest - beyond || L > highest + beyond});
    }
}

void add_brackets(const Found& f, MeasuredSpring& spring) {
    const auto between = [&](std::size_t i) { return Bracket{f.points[i].x * mm, f.points[i + 1].x * mm}; };
    if (f.stretch.first > 0) spring.contact = between(f.stretch.first - 1);
    if (f.stretch.last + 1 < f.points.size()) spring.closing = between(f.stretch.last);
}

MeasuredSpring assembled(const Readings& session, const SpringRun& run, const Found& f) {
    MeasuredSpring spring;
    spring.name = run.name;
    spring.role = run.role;
    spring.coverage_factor = session.coverage_factor;
    spring.chi_square = judge(f.stretch.fit);
    spring.line = line_with_doubt({session, run, f.loading, f.stretch, f.repeatability}, spring.chi_square.verdict);
    spring.points = points_of(session, run, f, spring.line);
    spring.rate = rate_of(spring.line, session.coverage_factor);
    spring.free_length = free_length_of(spring.line, session.coverage_factor);
    add_brackets(f, spring);
    add_loads(session, f, spring);
    spring.hysteresis = hysteresis_of(f.loading, f.unloading, f.points[f.stretch.last].y);
    if (f.repeatability) {
        spring.repeatability = f.repeatability->deviation_n * newton;
        spring.repeatability_degrees_of_freedom = f.repeatability->degrees_of_freedom;
    }
    spring.remarks = remarks_on(session, run, spring);
    return spring;
}

bool hopeless(const std::vector<RunProblem>& problems) {
    return std::any_of(problems.begin(), problems.end(),
                       [](const RunProblem& p) { return p.severity == Severity::error; });
}

}  // namespace

Measurement measure(const Readings& session, const SpringRun& run) {
    Measurement result{std::nullopt, problems_of(session, run)};
    if (hopeless(result.problems)) return result;
    if (const auto found = find_line(session, run))
        result.spring = assembled(session, run, *found);
    else
        result.problems.push_back({Severity::error, "no-line"_id,
                                   "no three readings in a row make a line that rises clearly above its uncertainty",
                                   "press the spring further, or state how well scale and heights are known",
                                   std::nullopt});
    return result;
}

}  // namespace seatload::bench
