// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <seatload/bench/correction.hpp>
#include <seatload/bench/line_fit.hpp>
#include <seatload/bench/readings.hpp>

namespace seatload::bench {

/// Readings at one height in one direction: they share the error of the height and of the scale's linearity, so they
/// make one point of the line.
struct Group {
    double stated_height_mm = 0.0;
    std::vector<std::size_t> readings;  ///< indices in the run
    double height_mm = 0.0;             ///< means, corrected
    double force_n = 0.0;
};

/// The loading (or unloading) readings of a run by height, highest first. Readings that cannot be corrected are not
/// there.
std::vector<Group> groups_of(const Readings& session, const SpringRun& run, bool unloading,
                             const CommonErrors& errors = {});

/// Scatter of readings taken again at a height in the same direction, pooled over heights [N].
struct Repeatability {
    double deviation_n = 0.0;
    double degrees_of_freedom = 0.0;
};

/// From readings repeated at a height in one direction; nothing when none was.
std::optional<Repeatability> repeatability_of_repeats(const Readings& session, const SpringRun& run);

/// From heights between two limits read while loading and while unloading: what the differences scatter about their
/// straight line, over root two. Four such heights at least.
std::optional<Repeatability> repeatability_of_pairs(const std::vector<Group>& loading,
                                                    const std::vector<Group>& unloading, double lowest_mm,
                                                    double highest_mm);

/// Variances [N^2] of a group's force that are its own, kind by kind, at a rate.
struct GroupDoubt {
    double linearity = 0.0;
    double scale_step = 0.0;  ///< zero where `repeats` stands for it
    double height_error = 0.0;
    double height_step = 0.0;  ///< zero where `repeats` stands for it
    double repeats = 0.0;      ///< when repeats scatter more than the steps explain

    double sum() const { return linearity + scale_step + height_error + height_step + repeats; }
};
GroupDoubt doubt_of(const Readings& session, const SpringRun& run, const Group& group, double rate_n_mm,
                    const std::optional<Repeatability>& repeatability);

/// The groups as points of a line over height, with that doubt.
std::vector<LinePoint> line_points(const Readings& session, const SpringRun& run, const std::vector<Group>& groups,
                                   double rate_n_mm, const std::optional<Repeatability>& repeatability);

}  // namespace seatload::bench
