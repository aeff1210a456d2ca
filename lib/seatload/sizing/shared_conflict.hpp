// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include <seatload/sizing/relief.hpp>

namespace seatload::sizing {

/// A limit of one of several requirements.
struct MemberRule {
    std::size_t member = 0;  ///< which requirement
    std::size_t rule = 0;    ///< index in check::rules()
    bool operator==(const MemberRule&) const = default;
};

/// A set of as few limits as can be, of several requirements, that no spring keeps together, by rule; empty when a
/// spring keeps all, when their grids have nothing in common, or when more than four would have to be named. As with
/// conflicts(), the springs are those of wide_space().
std::vector<MemberRule> shared_conflict(std::span<const demand::Requirement* const> requirements,
                                        const Setting& setting);

}  // namespace seatload::sizing
