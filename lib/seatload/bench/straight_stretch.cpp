// SPDX-License-Identifier: MIT
#include <seatload/bench/straight_stretch.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/bench/probability.hpp>
#include <seatload/bench/square.hpp>

namespace seatload::bench {

namespace {

constexpr std::size_t kFewestOnLine = 3;  // two points make a line of anything

// A plate that does not yet bear on the whole spring carries little: at most this share of the largest load of the
// line. The stretch from 20 % on is the one that JIS B 2702:1987 cl. 3.1 takes for loads at heights.
constexpr double kFullContact = 0.2;

constexpr double kRises = 3.0;              // sigmas of a slope that is there at all
constexpr double kSoundRunsAlarmed = 0.01;  // share of sound runs in which a point is called an outlier

double own_variance(const LinePoint& p, double slope) { return square(p.u_y) + square(slope * p.u_x); }

// Sigmas of a point that is not of the line above it.
double sigmas_above(const LinePoint& p, const LineFit& fit) {
    return (p.y - fit.at(p.x)) / std::sqrt(own_variance(p, fit.slope) + fit.variance_at(p.x));
}

// Sigmas of a point of the line itself: its residual has the line's variance taken off.
double sigmas_within(const LinePoint& p, const LineFit& fit) {
    const double own = own_variance(p, fit.slope);
    const double left = std::max(own - fit.variance_at(p.x), 1e-9 * own);
    return (p.y - fit.at(p.x)) / std::sqrt(left);
}

// How much wider the points scatter than stated, by the middle one, so that a single outlier does not count.
double scatter(std::span<const LinePoint> points, const LineFit& fit) {
    if (points.size() <= kFewestOnLine) return 1.0;
    std::vector<double> off;
    for (const LinePoint& p : points) off.push_back(std::abs(sigmas_within(p, fit)));
    const auto middle = off.begin() + static_cast<std::ptrdiff_t>(off.size() / 2);
    std::nth_element(off.begin(), middle, off.end());
    constexpr double kMedianOfNormal = 0.6745;  // half the normal curve lies within 0.6745 sigma
    return std::max(1.0, *middle / kMedianOfNormal);
}

std::vector<LinePoint> without(std::span<const LinePoint> points, std::size_t left_out) {
    std::vector<LinePoint> others(points.begin(), points.end());
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(left_out));
    return others;
}

// Chi-square of a run in which one point may be an outlier: such a point costs a fixed amount instead of its square,
// more than a point left out at an end does, so that it neither breaks the run in two nor tilts the judgement of its
// ends.
struct Judgement {
    double cost = 0.0;
    std::vector<LinePoint> points;  ///< that the ends are judged by
    LineFit fit;
};

Judgement judged(std::span<const LinePoint> inside, const LineFit& fit) {
    Judgement all{fit.chi_square, {inside.begin(), inside.end()}, fit};
    constexpr std::size_t kEnoughWithoutOne = kFewestOnLine + 2;
    if (inside.size() < kEnoughWithoutOne) return all;
    std::size_t worst = 0;
    double furthest = 0.0;
    for (std::size_t i = 0; i < inside.size(); ++i)
        if (const double off = std::abs(sigmas_within(inside[i], fit)); off > furthest) {
            furthest = off;
            worst = i;
        }
    const double price = 1.5 * square(kClearly);
    if (square(furthest) <= price) return all;
    const auto others = without(inside, worst);
    if (others.front().x == others.back().x) return all;
    const LineFit cleared = fit_line(others);
    return {cleared.chi_square + price, others, cleared};
}

bool no_contact_yet(const LinePoint& p, double largest_load) {
    return p.y <= std::max(kFullContact * largest_load, 3.0 * p.u_y);
}

struct Candidate {
    Stretch stretch;
    double cost = 0.0;
};

// The stretch first..last, when all points beyond it lie where no contact or closing coils would put them.
std::optional<Candidate> candidate(std::span<const LinePoint> points, std::size_t first, std::size_t last) {
    const auto inside = points.subspan(first, last - first + 1);
    if (inside.front().x == inside.back().x) return std::nullopt;
    // Asked before any line is laid through: it turns most stretches away.
    const double largest_load = points[last].y;
    const auto bears = [&](const LinePoint& p) { return !no_contact_yet(p, largest_load); };
    if (std::ranges::any_of(points.first(first), bears)) return std::nullopt;
    Stretch s{first, last, fit_line(inside), {}};
    if (!(-s.fit.slope > kRises * std::sqrt(s.fit.variance_slope))) return std::nullopt;
    const Judgement judgement = judged(inside, s.fit);
    const double clearly = inside.size() < points.size() ? kClearly * scatter(judgement.points, judgement.fit) : 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const bool outside = i < first || i > last;
        s.above.push_back(outside ? sigmas_above(points[i], s.fit) : sigmas_within(points[i], s.fit));
        if (outside && sigmas_above(points[i], judgement.fit) < clearly) return std::nullopt;
    }
    const double left_out = static_cast<double>(points.size() - inside.size());
    return Candidate{std::move(s), judgement.cost + square(kClearly) * left_out};
}

bool is_straight(std::span<const LinePoint> points) {
    if (points.front().x == points.back().x) return false;
    const LineFit fit = fit_line(points);
    return fit.degrees_of_freedom >= 1.0 &&
           chance_of_larger(fit.chi_square, fit.degrees_of_freedom) >= kSoundRunsAlarmed;
}

// Among few points one wrong reading tilts the line so far that sound ones seem off it too. When the others are
// straight without one of those found, and without that one only, it is the wrong one.
std::vector<std::size_t> without_the_misled(std::span<const LinePoint> inside, const std::vector<std::size_t>& found) {
    if (found.size() < 2) return found;
    std::vector<std::size_t> wrong;
    for (const std::size_t i : found)
        if (is_straight(without(inside, i))) wrong.push_back(i);
    return wrong.size() == 1 ? wrong : found;
}

}  // namespace

std::optional<Stretch> straight_stretch(std::span<const LinePoint> points) {
    std::optional<Candidate> best;
    for (std::size_t length = points.size(); length >= kFewestOnLine; --length) {
        // Shorter stretches cost more for what they leave out alone.
        if (best && square(kClearly) * static_cast<double>(points.size() - length) >= best->cost) break;
        for (std::size_t first = 0; first + length <= points.size(); ++first) {
            auto found = candidate(points, first, first + length - 1);
            if (found && (!best || found->cost < best->cost)) best = std::move(found);
        }
    }
    if (!best) return std::nullopt;
    return std::move(best->stretch);
}

std::vector<std::size_t> outliers(std::span<const LinePoint> points, const Stretch& stretch) {
    const auto inside = points.subspan(stretch.first, stretch.last - stretch.first + 1);
    std::vector<std::size_t> found;
    if (inside.size() <= kFewestOnLine) return found;
    for (std::size_t i = 0; i < inside.size(); ++i) {
        const auto others = without(inside, i);
        if (others.front().x == others.back().x) continue;
        const LineFit fit = fit_line(others);
        const double off = sigmas_above(inside[i], fit) / scatter(others, fit);
        if (static_cast<double>(inside.size()) * chance_beyond(off) < kSoundRunsAlarmed) found.push_back(i);
    }
    found = without_the_misled(inside, found);
    for (std::size_t& i : found) i += stretch.first;
    return found;
}

}  // namespace seatload::bench
