// SPDX-License-Identifier: MIT
#include <seatload/sizing/shared_grid.hpp>

#include <algorithm>
#include <cmath>

namespace seatload::sizing {
namespace {

bool holds(const Axis& axis, double value) {
    const long index = std::lround(value / axis.step) - axis.first;
    return index >= 0 && index < axis.count && axis.at(index) == value;
}

template <class Pick>
std::vector<Axis> axes_of(std::span<const Space* const> spaces, const Pick& pick) {
    std::vector<Axis> axes;
    for (std::size_t i = 0; i < spaces.size(); ++i) axes.push_back(pick(i));
    return axes;
}

std::vector<spring::Ends> common_ends(std::span<const Space* const> spaces) {
    std::vector<spring::Ends> ends = spaces[0]->ends;
    for (const Space* space : spaces)
        std::erase_if(ends, [&](spring::Ends each) {
            return std::find(space->ends.begin(), space->ends.end(), each) == space->ends.end();
        });
    std::sort(ends.begin(), ends.end());
    return ends;
}

}  // namespace

std::vector<double> common_points(std::span<const Axis> axes) {
    std::vector<double> points;
    if (axes.empty()) return points;
    for (long i = 0; i < axes[0].count; ++i)
        if (const double value = axes[0].at(i);
            std::all_of(axes.begin(), axes.end(), [&](const Axis& axis) { return holds(axis, value); }))
            points.push_back(value);
    return points;
}

SharedGrid shared_grid(std::span<const Space* const> spaces) {
    if (spaces.empty()) return {};
    return {wires_of_all(spaces), common_ends(spaces),
            common_points(axes_of(spaces, [&](std::size_t i) { return spaces[i]->total_coils; })),
            common_points(axes_of(spaces, [&](std::size_t i) { return spaces[i]->free_lengths; }))};
}

std::vector<double> mean_diameters_of(std::span<const Space* const> spaces, const WirePlaces& wire) {
    return common_points(axes_of(spaces, [&](std::size_t i) { return spaces[i]->wires[wire[i]].mean_diameters; }));
}

}  // namespace seatload::sizing
