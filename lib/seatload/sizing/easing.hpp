// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include <seatload/demand/requirement.hpp>

namespace seatload::sizing {

/// One way in which one number of a requirement may give way.
struct Easing {
    std::string_view id;                  ///< in JSON and tests: "load.seated.at_least"
    std::string_view name;                ///< "seated load"
    std::string_view bound;               ///< "at least" or "at most"
    std::string_view unit;                ///< of the numbers below: "N"
    bool is_safeguard;                    ///< it guards against failure, and is no number of the mechanism
    bool is_steady;                       ///< a larger change never shuts out what a smaller one let in
    std::vector<std::string_view> mends;  ///< ids of the rules that it can make pass
    bool mends_more;                      ///< and it may bring in wire that is not looked at now
    std::optional<double> (*now)(const demand::Requirement&);  ///< nothing: the requirement does not limit it
    double (*farthest)(const demand::Requirement&);            ///< how far it is tried
    void (*set)(demand::Requirement&, double);
};

/// Every number that may give way, in the order they are told.
std::span<const Easing> easings();

/// The number after a change by a share of what it is now (of the way to the farthest, when it is 0), at most the
/// farthest.
double eased(const Easing& easing, const demand::Requirement& requirement, double share);

/// The share at which the number has got to its farthest; 0 when it cannot give way.
double farthest_share(const Easing& easing, const demand::Requirement& requirement);

/// The number rounded to the easy side, to a step of 1, 2 or 5 times a power of ten that is at most 2 % of the number
/// and at most half the change; `finer` divides the step by ten so many times.
double rounded(const Easing& easing, const demand::Requirement& requirement, double edge, int finer);

}  // namespace seatload::sizing
