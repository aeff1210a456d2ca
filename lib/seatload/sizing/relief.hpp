// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include <seatload/sizing/easing.hpp>
#include <seatload/sizing/search.hpp>
#include <seatload/spring/spring.hpp>

namespace seatload::sizing {

/// What a requirement is looked at with.
struct Setting {
    const wire::Catalogue& catalogue;
    const tolerance::Tables& tables;
    SearchOptions options;
};

/// A spring that fits a changed requirement, found by search() on its grid and evaluated against it.
struct Proof {
    std::string grade;
    spring::Spring spring;  ///< the best of its wire and ends
};

/// The proof that a changed requirement has a spring; nothing when it has none.
std::optional<Proof> proof(const demand::Requirement& changed, const Setting& setting);

/// A number that gives way.
struct EasedNumber {
    const Easing* easing = nullptr;
    double now = 0.0;
    double edge = 0.0;    ///< where the first spring fits, to 0.1 % of the number and 0.5 % of the change
    double needed = 0.0;  ///< the edge, rounded to the easy side
};

/// Numbers that, changed together, let in a spring.
struct Relief {
    std::vector<EasedNumber> numbers;
    double change = 0.0;  ///< the largest rounded change of one of them, as a share of the number
    Proof proof;          ///< with the rounded numbers
};

/// The requirement with the rounded numbers of a relief.
demand::Requirement with(const demand::Requirement& requirement, const Relief& relief);

/// The least change by one common share of each number that lets in a spring, or nothing when the farthest does not. A
/// change smaller by more than the tolerance of `edge` lets in nothing, on the grid of the requirement so changed; for
/// an easing that is not steady that holds down to the next smaller of the changes tried (1 %, then doubled).
std::optional<Relief> least_relief(const demand::Requirement& requirement, std::span<const Easing* const> easings,
                                   const Setting& setting);

}  // namespace seatload::sizing
