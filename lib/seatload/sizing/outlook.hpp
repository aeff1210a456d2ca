// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include <seatload/demand/requirement.hpp>
#include <seatload/sizing/made_allowance.hpp>
#include <seatload/sizing/made_count.hpp>
#include <seatload/spring/spring.hpp>
#include <seatload/wire/grade.hpp>

// What tolerances do to a spring before it is ordered. To time it: outlook() with OutlookOptions{} makes a million
// springs, each to all three grades; under 0.1 s is wanted on two cores.

namespace seatload::sizing {

/// Springs good to the demand of which a grade is said to keep it.
inline constexpr double kKeptShare = 0.99;

/// One quantity of springs made to a grade.
struct OutlookQuantity {
    std::string_view id;
    std::string_view name;
    std::string_view unit;
    double nominal = 0.0;
    MadeRange worst;                  ///< over all corners of the allowances
    MadeRange middle;                 ///< between which 99 of 100 springs simulated lie
    double mean = 0.0;                ///< of the springs simulated; infinite numbers count as they stand
    std::optional<double> deviation;  ///< standard deviation; nothing for what may be without bound
    std::optional<double> least;      ///< what the demand asks
    std::optional<double> most;
    long broken = 0;  ///< springs simulated that break a bound
};

/// Springs made to one pair of grades, after the maker has brought the lot's mean loads in.
struct OutlookCase {
    ToleranceGrades grades;
    tolerance::MadeAllowance allowance;
    long springs = 0;
    long good = 0;  ///< springs that meet the whole demand
    std::vector<OutlookQuantity> quantities;
    /// Standard deviation each dimension gives both loads [N], to first order: as made, and once adjusted.
    std::array<std::array<double, tolerance::kInfluences>, 2> as_made{};
    std::array<std::array<double, tolerance::kInfluences>, 2> adjusted{};

    double share() const { return static_cast<double>(good) / static_cast<double>(springs); }
    bool keeps() const { return share() >= kKeptShare; }
    /// The quantity most springs break, or null when none does.
    const OutlookQuantity* first_to_break() const;
    /// The dimension that moves the loads of an adjusted lot most, and its share in their variance.
    tolerance::Influence largest_influence() const;
    double largest_influence_share() const;
};

/// What is to be expected of a spring.
struct Outlook {
    tolerance::MadeOrder order;
    std::array<OutlookCase, tolerance::kGrades> by_grade;
    std::optional<OutlookCase> stated;  ///< the grades that are ordered

    /// The coarsest grade that keeps 99 %; nothing: a tighter tolerance must be agreed.
    std::optional<int> coarsest() const;
    /// The case of that grade, or of grade 1.
    const OutlookCase& recommended() const;
};

struct OutlookSubject {
    const spring::Spring& spring;
    const wire::Grade& grade;
    const demand::Requirement& requirement;
    const tolerance::Tables& tables;
    /// Loads at both heights, cold and new, that the maker brings the lot's means to; nothing: those of the spring.
    std::optional<std::array<double, 2>> ordered_loads_n = {};
    std::optional<ToleranceGrades> stated = {};
    /// De is the diameter inspected, else Di; nothing: De unless the spring stands over a rod in no bore.
    std::optional<bool> outside_rules = {};
};

struct OutlookOptions {
    long springs = 1'000'000;
    std::uint64_t seed = 13906;
    unsigned threads = 0;  ///< 0: as many as the machine has; the answer does not depend on it
};

/// Worst case and simulation of a spring made to grades 1, 2, 3 and to those stated: the same numbers for the same
/// seed, on any machine. The same strays serve all grades. Nothing when the wire has no numbers at its diameter, or the
/// spring does not press on both seats, full travel harder.
std::optional<Outlook> outlook(const OutlookSubject& subject, const OutlookOptions& options = {});

}  // namespace seatload::sizing
