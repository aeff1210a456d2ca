// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include <seatload/bench/line_fit.hpp>

namespace seatload::bench {

/// How many standard uncertainties above the line a point at an end must lie before it is taken for one before contact,
/// or for one with coils closing. One of 2000 sound end points lies there by chance (3.3 sigma, one-sided).
inline constexpr double kClearly = 3.3;

/// The loading points that make one straight line.
struct Stretch {
    std::size_t first = 0;      ///< index of the first point of the line
    std::size_t last = 0;       ///< and of its last
    LineFit fit;                ///< of those points
    std::vector<double> above;  ///< of every point: how many standard uncertainties it lies above the line
};

/// The straight stretch of points ordered by falling height (x) with rising load (y): all points, unless those at an
/// end lie clearly above the line through the others, as points with no contact yet (load near zero) and points with
/// coils closing do. Of the stretches that leave out only such points the one is taken with the least chi-square plus
/// kClearly^2 for each point left out; one point may be an outlier there, which counts as one and a half left out and
/// stays. Where points scatter more than stated, "clearly" grows alike. Three points stay at least. Nothing when no
/// stretch rises clearly.
std::optional<Stretch> straight_stretch(std::span<const LinePoint> points);

/// The indices within the stretch of points too far off for chance: further from the line of the others than in one
/// sound run in a hundred. Where several are, and the points are straight without one of them alone, it is that one.
std::vector<std::size_t> outliers(std::span<const LinePoint> points, const Stretch& stretch);

}  // namespace seatload::bench
