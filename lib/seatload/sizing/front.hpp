// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sizing/candidate.hpp>

namespace seatload::sizing {

/// A spring that fits, and its merit in steps.
struct FrontMember {
    Standing steps{};
    Candidate candidate;
};

/// The Pareto set of the springs offered to it: those to which no other is better in one respect and as good in all
/// others, all counted in the steps of a standing. Of springs with the same steps the one that comes first is kept, so
/// that the set does not depend on the order in which they come, nor on how they were shared out before merge().
class Front {
  public:
    void offer(const Candidate& candidate);
    /// As if all that was offered to the other had been offered here.
    void merge(const Front& other);
    /// True when a member is better than these steps in one respect and as good in all others. Not to be asked from two
    /// threads at once.
    bool is_beyond(const Standing& steps) const;

    /// Best first, in the order given; equals by stress margin, cost, wire, ends and dimensions.
    std::vector<FrontMember> members(const demand::Order& order = demand::kUsualOrder) const;
    std::size_t size() const { return members_.size(); }

  private:
    void offer(const FrontMember& member);

    /// In no order, but those that keep others out move up: they are likely to do so again.
    mutable std::vector<FrontMember> members_;
};

/// Whether a spring comes before another: by better() in the order given, then by wire, ends, mean diameter, coils and
/// free length. Two springs of one space that differ never tie.
bool comes_before(const Candidate& a, const Candidate& b, const demand::Order& order = demand::kUsualOrder);

}  // namespace seatload::sizing
