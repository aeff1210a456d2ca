// SPDX-License-Identifier: MIT
#include <seatload/sizing/shared_conflict.hpp>

#include <algorithm>
#include <mutex>
#include <optional>
#include <tuple>

#include <seatload/sizing/any_fit.hpp>
#include <seatload/sizing/conflicts.hpp>
#include <seatload/sizing/shared_lines.hpp>
#include <seatload/sizing/workers.hpp>

namespace seatload::sizing {
namespace {

constexpr std::size_t kMostSharedRules = 4;  // larger sets explain little

using Limits = std::vector<MemberRule>;

bool holds(const Limits& limits, const MemberRule& limit) {
    return std::find(limits.begin(), limits.end(), limit) != limits.end();
}

bool meets(const Limits& a, const Limits& b) {
    return std::any_of(a.begin(), a.end(), [&](const MemberRule& limit) { return holds(b, limit); });
}

Limits in_order(Limits set) {
    std::sort(set.begin(), set.end(), [](const MemberRule& a, const MemberRule& b) {
        return std::tie(a.rule, a.member) < std::tie(b.rule, b.member);
    });
    return set;
}

/// Grows a set until it has a limit of each of `broken`, one of the first it misses at a time, up to `size` limits;
/// false when there is no such set.
bool grow(const std::vector<Limits>& broken, std::size_t size, Limits& set) {
    const auto missed =
        std::find_if(broken.begin(), broken.end(), [&](const Limits& other) { return !meets(other, set); });
    if (missed == broken.end()) return true;
    if (set.size() == size) return false;
    for (const MemberRule& limit : *missed) {
        set.push_back(limit);
        if (grow(broken, size, set)) return true;
        set.pop_back();
    }
    return false;
}

/// The spaces looked at, and the first spring of them that keeps some limits.
class Springs {
  public:
    Springs(std::span<const demand::Requirement* const> requirements, const Setting& setting) : setting_(setting) {
        for (const demand::Requirement* requirement : requirements)
            held_.push_back(wide_space(*requirement, setting.catalogue));
        for (const Space& space : held_) spaces_.push_back(&space);
        grid_ = shared_grid(spaces_);
    }

    bool is_empty() const { return grid_.parts() == 0 || grid_.total_coils.empty() || grid_.free_lengths.empty(); }

    /// The limits that the first spring breaks that keeps these; nothing when none does.
    std::optional<Limits> broken_by_one_that_keeps(const Limits& kept) const {
        std::vector<RuleSet> asked(spaces_.size(), 0);
        for (const MemberRule& limit : kept) asked[limit.member] |= rule_at(limit.rule);
        std::atomic<std::size_t> first = grid_.parts();  // the lowest part that found a spring
        std::mutex mutex;
        Limits broken;
        share_out(
            grid_.parts(), worker_count(setting_.options.threads, grid_.parts()), [&](std::size_t i, std::size_t) {
                const WirePlaces& wire = grid_.wires[i / grid_.ends.size()];
                SharedLines lines(spaces_, grid_, setting_.tables, wire, grid_.ends[i % grid_.ends.size()], asked);
                if (first < i) return;
                lines.each([&](std::span<const check::Coil> coils, Interval fits) {
                    const std::scoped_lock lock(mutex);
                    if (first < i) return false;
                    first = i;
                    broken = broken_by(coils, wire, grid_.free_lengths[static_cast<std::size_t>(fits.from)]);
                    return false;
                });
            });
        if (first == grid_.parts()) return std::nullopt;
        return broken;
    }

  private:
    Limits broken_by(std::span<const check::Coil> coils, const WirePlaces& wire, double L0) const {
        Limits broken;
        for (std::size_t i = 0; i < coils.size(); ++i) {
            const Candidate spring{wire[i], coils[i].ends, coils[i].D_mm, coils[i].total_coils, L0, {}};
            for (const std::size_t rule : indices(broken_rules(*spaces_[i], setting_.tables, spring)))
                broken.push_back({i, rule});
        }
        return broken;
    }

    const Setting& setting_;
    std::vector<Space> held_;
    std::vector<const Space*> spaces_;
    SharedGrid grid_;
};

}  // namespace

std::vector<MemberRule> shared_conflict(std::span<const demand::Requirement* const> requirements,
                                        const Setting& setting) {
    const Springs springs(requirements, setting);
    if (springs.is_empty()) return {};
    // A set that a spring keeps is answered by what this spring breaks, of which each contradiction must hold one: the
    // set is not asked again, and the first that no spring keeps is as small as any.
    std::vector<Limits> broken;
    for (std::size_t size = 0; size <= kMostSharedRules; ++size)
        for (Limits set; grow(broken, size, set); set.clear()) {
            auto found = springs.broken_by_one_that_keeps(set);
            if (!found) return in_order(std::move(set));
            if (found->empty()) return {};
            broken.push_back(std::move(*found));
        }
    return {};
}

}  // namespace seatload::sizing
