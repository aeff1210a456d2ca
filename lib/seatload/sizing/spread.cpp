// SPDX-License-Identifier: MIT
#include <seatload/sizing/spread.hpp>

#include <algorithm>

namespace seatload::sizing {
namespace {

/// A spring with at least this share of the best one's tolerance room is worth quoting for the sake of another wire.
constexpr double kGoodShare = 0.5;

/// What sets a candidate apart from all chosen ones.
struct Novelty {
    bool diameter = true;
    bool grade = true;
    bool ends = true;

    int score() const { return (diameter ? 3 : 0) + (grade ? 2 : 0) + (ends ? 1 : 0); }
};

Novelty novelty(const Space& space, const std::vector<Alternative>& chosen, const Candidate& candidate) {
    Novelty n;
    const WireOption& wire = space.wires[candidate.wire];
    for (const Alternative& other : chosen) {
        const WireOption& taken = space.wires[other.candidate.wire];
        n.diameter = n.diameter && taken.size.diameter != wire.size.diameter;
        n.grade = n.grade && taken.grade != wire.grade;
        n.ends = n.ends && other.candidate.ends != candidate.ends;
    }
    return n;
}

std::string reason(const Novelty& n) {
    if (n.diameter && n.grade) return "most tolerance room with another wire diameter and grade";
    if (n.diameter) return "most tolerance room with another wire diameter";
    if (n.grade) return "most tolerance room with another wire grade";
    if (n.ends) return "most tolerance room with other ends";
    return "next most tolerance room";
}

}  // namespace

std::vector<Alternative> spread(const Space& space, const Census& census, std::size_t count) {
    std::vector<Candidate> left;
    for (const auto& best : census.best)
        if (best) left.push_back(*best);
    std::stable_sort(left.begin(), left.end(),
                     [](const Candidate& a, const Candidate& b) { return better(a.merit, b.merit); });
    std::vector<Alternative> chosen;
    const double most = left.empty() ? 0.0 : room_in_tenths(left.front().merit.tolerance_room);
    const auto is_good = [&](const Candidate& c) {
        return room_in_tenths(c.merit.tolerance_room) >= kGoodShare * most;
    };
    while (chosen.size() < count && !left.empty()) {
        // A new wire is no gain when its loads hardly keep their limits: poorer springs come only when the good ones
        // are used up.
        const auto good =
            std::partition_point(left.begin(), left.end(), [&](const Candidate& c) { return is_good(c); });
        const auto end = good == left.begin() ? left.end() : good;
        const auto pick = std::max_element(left.begin(), end, [&](const Candidate& a, const Candidate& b) {
            return novelty(space, chosen, a).score() < novelty(space, chosen, b).score();
        });
        const Novelty n = novelty(space, chosen, *pick);
        chosen.push_back({*pick, chosen.empty() ? "most tolerance room of all" : reason(n)});
        left.erase(pick);
    }
    return chosen;
}

}  // namespace seatload::sizing
