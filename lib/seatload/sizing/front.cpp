// SPDX-License-Identifier: MIT
#include <seatload/sizing/front.hpp>

#include <algorithm>
#include <tuple>

namespace seatload::sizing {
namespace {

bool is_as_good(const Standing& a, const Standing& b) {
    bool all = true;  // no early end: five comparisons cost less than a branch guessed wrongly
    for (std::size_t i = 0; i < a.size(); ++i) all = all & (a[i] <= b[i]);
    return all;
}

/// At least as good in all respects, and better in one.
bool dominates(const Standing& a, const Standing& b) { return is_as_good(a, b) && a != b; }

}  // namespace

bool comes_before(const Candidate& a, const Candidate& b, const demand::Order& order) {
    if (better(a.merit, b.merit, order)) return true;
    if (better(b.merit, a.merit, order)) return false;
    const auto place = [](const Candidate& c) {
        return std::tie(c.wire, c.ends, c.mean_diameter_mm, c.total_coils, c.free_length_mm);
    };
    return place(a) < place(b);
}

bool Front::is_beyond(const Standing& steps) const {
    for (std::size_t i = 0; i < members_.size(); ++i)
        if (dominates(members_[i].steps, steps)) {
            std::swap(members_[i], members_[i / 2]);
            return true;
        }
    return false;
}

void Front::offer(const Candidate& candidate) { offer(FrontMember{standing(candidate.merit), candidate}); }

void Front::offer(const FrontMember& member) {
    if (is_beyond(member.steps)) return;
    const auto same =
        std::find_if(members_.begin(), members_.end(), [&](const FrontMember& m) { return m.steps == member.steps; });
    if (same != members_.end()) {
        if (comes_before(member.candidate, same->candidate)) same->candidate = member.candidate;
        return;
    }
    std::erase_if(members_, [&](const FrontMember& m) { return dominates(member.steps, m.steps); });
    members_.push_back(member);
}

void Front::merge(const Front& other) {
    for (const FrontMember& member : other.members_) offer(member);
}

std::vector<FrontMember> Front::members(const demand::Order& order) const {
    std::vector<FrontMember> sorted = members_;
    std::sort(sorted.begin(), sorted.end(), [&](const FrontMember& a, const FrontMember& b) {
        return comes_before(a.candidate, b.candidate, order);
    });
    return sorted;
}

}  // namespace seatload::sizing
