// SPDX-License-Identifier: MIT
#include <seatload/bench/groups.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/bench/load_path.hpp>
#include <seatload/bench/square.hpp>

namespace seatload::bench {

namespace {

constexpr double kSameHeight = 1e-9;  // mm: heights are equal as written

void take_means(const Readings& session, const SpringRun& run, const CommonErrors& errors, Group& group) {
    for (const std::size_t i : group.readings) {
        const Corrected c = corrected(session, run.readings[i], errors).value();
        group.height_mm += c.height_mm / static_cast<double>(group.readings.size());
        group.force_n += c.force_n / static_cast<double>(group.readings.size());
    }
}

void add_spread(const Readings& session, const SpringRun& run, const Group& group, Repeatability& sum) {
    for (const std::size_t i : group.readings)
        sum.deviation_n += square(corrected(session, run.readings[i])->force_n - group.force_n);
    sum.degrees_of_freedom += static_cast<double>(group.readings.size()) - 1.0;
}

}  // namespace

std::vector<Group> groups_of(const Readings& session, const SpringRun& run, bool unloading,
                             const CommonErrors& errors) {
    std::vector<Group> groups;
    for (std::size_t i = 0; i < run.readings.size(); ++i) {
        if (run.readings[i].unloading != unloading) continue;
        const auto c = corrected(session, run.readings[i]);
        if (!c) continue;
        const auto same = std::find_if(groups.begin(), groups.end(), [&](const Group& g) {
            return std::abs(g.stated_height_mm - c->stated_height_mm) < kSameHeight;
        });
        if (same == groups.end())
            groups.push_back({c->stated_height_mm, {i}, 0.0, 0.0});
        else
            same->readings.push_back(i);
    }
    for (Group& group : groups) take_means(session, run, errors, group);
    std::stable_sort(groups.begin(), groups.end(),
                     [](const Group& a, const Group& b) { return a.stated_height_mm > b.stated_height_mm; });
    return groups;
}

std::optional<Repeatability> repeatability_of_repeats(const Readings& session, const SpringRun& run) {
    Repeatability sum;
    for (const bool unloading : {false, true})
        for (const Group& group : groups_of(session, run, unloading)) add_spread(session, run, group, sum);
    if (sum.degrees_of_freedom < 1.0) return std::nullopt;
    return Repeatability{std::sqrt(sum.deviation_n / sum.degrees_of_freedom), sum.degrees_of_freedom};
}

std::optional<Repeatability> repeatability_of_pairs(const std::vector<Group>& loading,
                                                    const std::vector<Group>& unloading, double lowest_mm,
                                                    double highest_mm) {
    std::vector<LinePoint> differences;
    for (const Group& up : loading)
        for (const Group& down : unloading)
            if (std::abs(up.stated_height_mm - down.stated_height_mm) < kSameHeight && up.height_mm >= lowest_mm &&
                up.height_mm <= highest_mm)
                differences.push_back({up.stated_height_mm, up.force_n - down.force_n, 0.0, 1.0});
    constexpr std::size_t kFewest = 4;
    if (differences.size() < kFewest) return std::nullopt;
    const LineFit fit = refit(differences, std::vector<double>(differences.size(), 1.0));
    return Repeatability{std::sqrt(fit.chi_square / fit.degrees_of_freedom / 2.0), fit.degrees_of_freedom};
}

GroupDoubt doubt_of(const Readings& session, const SpringRun& run, const Group& group, double rate_n_mm,
                    const std::optional<Repeatability>& repeatability) {
    const OwnDoubt own = own_doubt(session, run.readings[group.readings.front()]);
    const double readings = static_cast<double>(group.readings.size());
    // A force read too high also makes the give of the load path too large: both push the point the same way.
    const double raised = 1.0 + rate_n_mm * compliance_of(session).value;
    GroupDoubt doubt;
    doubt.linearity = square(raised * own.linearity_n);
    doubt.height_error = square(rate_n_mm * own.height_error_mm);
    doubt.scale_step = square(raised * own.scale_step_n) / readings;
    doubt.height_step = square(rate_n_mm * own.height_step_mm) / readings;
    if (!repeatability) return doubt;
    const double seen = square(repeatability->deviation_n) / readings;
    if (seen <= doubt.scale_step + doubt.height_step) return doubt;
    // What repeats scatter holds the steps already.
    doubt.repeats = seen;
    doubt.scale_step = doubt.height_step = 0.0;
    return doubt;
}

std::vector<LinePoint> line_points(const Readings& session, const SpringRun& run, const std::vector<Group>& groups,
                                   double rate_n_mm, const std::optional<Repeatability>& repeatability) {
    std::vector<LinePoint> points;
    for (const Group& group : groups) {
        const GroupDoubt doubt = doubt_of(session, run, group, rate_n_mm, repeatability);
        const double of_height = std::sqrt(doubt.height_error + doubt.height_step);
        points.push_back({group.height_mm, group.force_n, rate_n_mm != 0.0 ? of_height / std::abs(rate_n_mm) : 0.0,
                          std::sqrt(doubt.linearity + doubt.scale_step + doubt.repeats)});
    }
    return points;
}

}  // namespace seatload::bench
