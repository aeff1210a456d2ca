// SPDX-License-Identifier: MIT
#include <seatload/sizing/spread.hpp>

#include <algorithm>
#include <cmath>
#include <tuple>

#include <seatload/core/text.hpp>
#include <seatload/sizing/best_at.hpp>

namespace seatload::sizing {
namespace {

using demand::Criterion;

/// A spring with at least this share of what the best one has is worth quoting for the sake of another wire.
constexpr double kGoodShare = 0.5;

/// Wires no further apart than this are as good as one: a coil wound of either is the same spring.
constexpr double kSameWire = 0.04;

/// A spring that may be offered.
struct Choice {
    Candidate candidate;
    Standing steps{};
    bool is_on_front = true;
    bool is_poor = false;                  ///< has much less than the best of what decides
    std::vector<std::string> preferred{};  ///< wishes of the user's that it meets
};

/// More is better of what it tells, save that it is less than nothing for what is better small.
double amount(const Merit& m, Criterion criterion) {
    switch (criterion) {
        case Criterion::tolerance_room:
            return room_in_tenths(m.tolerance_room);
        case Criterion::stress_margin:
            return m.stress_margin;
        case Criterion::cost:
            return -m.cost;
        case Criterion::release:
            return -m.release_n;
    }
    return 0.0;
}

template <class T>
bool holds(const std::vector<T>& list, const T& value) {
    return std::find(list.begin(), list.end(), value) != list.end();
}

/// Its class, as in Standing; a lower one is offered first.
int class_of_steps(const Choice& c) { return c.steps[0]; }

bool is_same(const Candidate& a, const Candidate& b) { return !comes_before(a, b) && !comes_before(b, a); }

std::vector<std::string> wishes_met(const Space& space, const Candidate& c) {
    const demand::Preference& wish = space.demand.preference;
    const WireOption& wire = space.wires[c.wire];
    std::vector<std::string> met;
    if (holds(wish.grades, space.grades[wire.grade].id)) met.emplace_back("grade");
    if (holds(wish.diameters, wire.size.diameter)) met.emplace_back("wire size");
    if (holds(wish.ends, c.ends)) met.emplace_back("ends");
    return met;
}

/// What can be offered: the Pareto set, and of each wire and ends the best.
std::vector<Choice> choices(const Space& space, const Census& census) {
    std::vector<Choice> all;
    for (const FrontMember& member : census.front.members()) all.push_back({member.candidate, member.steps});
    for (const auto& best : census.best) {
        if (!best) continue;
        // Of springs with the same steps the front holds but one; the others are as good.
        const Standing steps = standing(best->merit);
        const auto is_it = [&](const Choice& c) { return c.is_on_front && is_same(c.candidate, *best); };
        if (std::none_of(all.begin(), all.end(), is_it)) all.push_back({*best, steps, !census.front.is_beyond(steps)});
    }
    for (Choice& choice : all) choice.preferred = wishes_met(space, choice.candidate);
    return all;
}

void mark_poor(std::vector<Choice>& all, Criterion leading) {
    double most = -std::numeric_limits<double>::infinity();
    for (const Choice& c : all) most = std::max(most, amount(c.candidate.merit, leading));
    const double least = most >= 0.0 ? kGoodShare * most : most / kGoodShare;
    for (Choice& c : all) c.is_poor = amount(c.candidate.merit, leading) < least;
}

/// The order in which they are offered: that of better(), save that wishes of the user's go before all but the class.
bool comes_before(const Choice& a, const Choice& b, const demand::Order& order) {
    const auto key = [](const Choice& c) {
        return std::tuple(class_of_steps(c), c.is_poor, -static_cast<int>(c.preferred.size()));
    };
    if (key(a) != key(b)) return key(a) < key(b);
    return comes_before(a.candidate, b.candidate, order);
}

bool is_same_wire(Length a, Length b) {
    return std::abs(in_mm(a) - in_mm(b)) <= kSameWire * std::max(in_mm(a), in_mm(b));
}

/// What sets a spring apart from all chosen ones.
int novelty(const Space& space, const std::vector<Choice>& chosen, const Choice& choice) {
    bool diameter = true, grade = true, ends = true;
    const WireOption& wire = space.wires[choice.candidate.wire];
    for (const Choice& other : chosen) {
        const WireOption& taken = space.wires[other.candidate.wire];
        diameter = diameter && !is_same_wire(taken.size.diameter, wire.size.diameter);
        grade = grade && taken.grade != wire.grade;
        ends = ends && other.candidate.ends != choice.candidate.ends;
    }
    return (diameter ? 3 : 0) + (grade ? 2 : 0) + (ends ? 1 : 0);
}

bool are_twins(const Space& space, const Choice& a, const Choice& b) {
    const WireOption& of_a = space.wires[a.candidate.wire];
    const WireOption& of_b = space.wires[b.candidate.wire];
    return of_a.grade == of_b.grade && a.candidate.ends == b.candidate.ends &&
           is_same_wire(of_a.size.diameter, of_b.size.diameter);
}

/// Picks springs one by one.
class Picker {
  public:
    Picker(const Space& space, std::vector<Choice> left) : space_(space), left_(std::move(left)) {}

    /// The best of what is left.
    void pick_first() {
        if (!left_.empty()) take(left_.begin());
    }

    /// The best at a criterion, when no chosen one is as good and it is no poor spring.
    void pick_best_at(Criterion criterion) {
        const std::size_t place = place_of(criterion);
        auto best = left_.end();
        for (auto it = left_.begin(); it != left_.end(); ++it) {
            if (!it->is_on_front || it->is_poor || class_of_steps(*it) != class_of_steps(chosen_[0])) continue;
            if (best == left_.end() || is_better_at(place, *it, *best)) best = it;
        }
        if (best == left_.end()) return;
        const auto is_behind = [&](const Choice& c) { return best->steps[place] < c.steps[place]; };
        if (std::all_of(chosen_.begin(), chosen_.end(), is_behind)) take(best);
    }

    /// The one that differs most from those chosen, out of the first class that is left; poor ones last.
    void pick_other() {
        const auto key = [&](const Choice& c) {
            return std::tuple(class_of_steps(c), c.is_poor, -novelty(space_, chosen_, c), !c.is_on_front);
        };
        take(std::min_element(left_.begin(), left_.end(),
                              [&](const Choice& a, const Choice& b) { return key(a) < key(b); }));
    }

    const std::vector<Choice>& chosen() const { return chosen_; }
    bool is_done(std::size_t count) const { return chosen_.size() >= count || left_.empty(); }

  private:
    bool is_better_at(std::size_t place, const Choice& a, const Choice& b) const {
        if (a.steps[place] != b.steps[place]) return a.steps[place] < b.steps[place];
        return novelty(space_, chosen_, a) > novelty(space_, chosen_, b);
    }

    void take(std::vector<Choice>::iterator at) {
        chosen_.push_back(*at);
        std::erase_if(left_, [&](const Choice& c) { return are_twins(space_, c, chosen_.back()); });
    }

    const Space& space_;
    std::vector<Choice> left_;
    std::vector<Choice> chosen_;
};

std::vector<Alternative> told(const Space& space, const Census& census, const std::vector<Choice>& chosen) {
    std::vector<Contender> contenders;
    for (const Choice& c : chosen)
        contenders.push_back({c.steps, std::isfinite(c.candidate.merit.tolerance_room), c.is_on_front,
                              c.candidate.merit.leans, c.candidate.merit.leans_too_far, join(c.preferred, " and ")});
    Standing best_of_all = chosen.empty() ? Standing{} : chosen[0].steps;
    for (const FrontMember& member : census.front.members())
        for (std::size_t i = 0; i < best_of_all.size(); ++i) best_of_all[i] = std::min(best_of_all[i], member.steps[i]);
    std::vector<Alternative> alternatives;
    for (std::size_t i = 0; i < chosen.size(); ++i)
        alternatives.push_back({chosen[i].candidate, best_at_words(contenders, i, best_of_all, space.demand),
                                best_at(contenders, i, space.demand), chosen[i].is_on_front});
    return alternatives;
}

}  // namespace

std::vector<Alternative> spread(const Space& space, const Census& census, std::size_t count) {
    const demand::Order& order = space.demand.preference.order;
    const auto is_before = [&](const Choice& a, const Choice& b) { return comes_before(a, b, order); };
    std::vector<Choice> all = choices(space, census);
    mark_poor(all, order[0]);
    std::sort(all.begin(), all.end(), is_before);
    Picker picker(space, std::move(all));
    if (!picker.is_done(count)) picker.pick_first();
    for (std::size_t i = 1; i < order.size() && !picker.is_done(count); ++i)
        if (order[i] != Criterion::release || space.demand.release_counts) picker.pick_best_at(order[i]);
    while (!picker.is_done(count)) picker.pick_other();
    std::vector<Choice> chosen = picker.chosen();
    std::sort(chosen.begin(), chosen.end(), is_before);
    return told(space, census, chosen);
}

}  // namespace seatload::sizing
