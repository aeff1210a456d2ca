// SPDX-License-Identifier: MIT
#include <seatload/sizing/best_at.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>

namespace seatload::sizing {
namespace {

using demand::Criterion;

constexpr int kUnknown = std::numeric_limits<int>::max();  // the step of a cost that is not known

std::string superlative(Criterion criterion) {
    switch (criterion) {
        case Criterion::tolerance_room:
            return "widest tolerance room";
        case Criterion::stress_margin:
            return "least stress";
        case Criterion::cost:
            return "cheapest wire";
        case Criterion::release:
            return "easiest to release";
    }
    return {};
}

std::string thing(Criterion criterion) {
    switch (criterion) {
        case Criterion::tolerance_room:
            return "tolerance room";
        case Criterion::stress_margin:
            return "stress";
        case Criterion::cost:
            return "wire cost";
        case Criterion::release:
            return "ease of release";
    }
    return {};
}

bool counts(Criterion criterion, const Contender& c, const check::DemandNumbers& demand) {
    if (criterion == Criterion::tolerance_room) return c.has_room;
    if (criterion == Criterion::release) return demand.release_counts;
    return c.steps[place_of(criterion)] != kUnknown;
}

struct Ends {
    int best, worst;
};

Ends ends_of(std::span<const Contender> contenders, std::size_t place) {
    const auto less = [&](const Contender& a, const Contender& b) { return a.steps[place] < b.steps[place]; };
    const auto [best, worst] = std::minmax_element(contenders.begin(), contenders.end(), less);
    return {best->steps[place], worst->steps[place]};
}

/// The two criteria at which one that is best at nothing comes nearest the best, both in the better half.
std::vector<Criterion> balanced(std::span<const Contender> contenders, std::size_t which,
                                const check::DemandNumbers& demand) {
    std::vector<std::pair<double, Criterion>> near;
    for (const Criterion criterion : demand.preference.order) {
        const std::size_t place = place_of(criterion);
        const Ends ends = ends_of(contenders, place);
        if (!counts(criterion, contenders[which], demand) || ends.worst == ends.best || ends.worst == kUnknown)
            continue;
        const double behind =
            static_cast<double>(contenders[which].steps[place] - ends.best) / (ends.worst - ends.best);
        if (behind <= 0.5) near.emplace_back(behind, criterion);
    }
    std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Criterion> two;
    for (std::size_t i = 0; near.size() >= 2 && i < 2; ++i) two.push_back(near[i].second);
    return two;
}

/// " (as A)" when one before it is as good.
std::string equal_before(std::span<const Contender> contenders, std::size_t which, std::size_t place) {
    for (std::size_t i = 0; i < which; ++i)
        if (contenders[i].steps[place] == contenders[which].steps[place])
            return " (as " + std::string(1, static_cast<char>('A' + static_cast<char>(i))) + ')';
    return {};
}

std::string superlatives(std::span<const Contender> contenders, std::size_t which, const std::vector<Criterion>& best,
                         const Standing& best_of_all) {
    std::vector<std::string> of_all, of_these;
    for (const Criterion criterion : best) {
        const std::size_t place = place_of(criterion);
        (contenders[which].steps[place] == best_of_all[place] ? of_all : of_these)
            .push_back(superlative(criterion) + equal_before(contenders, which, place));
    }
    std::vector<std::string> parts;
    if (!of_all.empty()) parts.push_back(join(of_all, " and ") + " of all");
    if (!of_these.empty()) parts.push_back(join(of_these, " and ") + " of these");
    return join(parts, ", ");
}

}  // namespace

std::string_view word(Criterion criterion) {
    switch (criterion) {
        case Criterion::tolerance_room:
            return "tolerance room";
        case Criterion::stress_margin:
            return "stress margin";
        case Criterion::cost:
            return "cost";
        case Criterion::release:
            return "release force";
    }
    return {};
}

std::vector<Criterion> best_at(std::span<const Contender> contenders, std::size_t which,
                               const check::DemandNumbers& demand) {
    std::vector<Criterion> best;
    for (const Criterion criterion : demand.preference.order) {
        const Ends ends = ends_of(contenders, place_of(criterion));
        const bool differs = ends.best != ends.worst || contenders.size() == 1;
        if (differs && counts(criterion, contenders[which], demand) &&
            contenders[which].steps[place_of(criterion)] == ends.best)
            best.push_back(criterion);
    }
    return best;
}

std::string best_at_words(std::span<const Contender> contenders, std::size_t which, const Standing& best_of_all,
                          const check::DemandNumbers& demand) {
    const Contender& one = contenders[which];
    std::string words;
    if (const auto best = best_at(contenders, which, demand); !best.empty()) {
        words = superlatives(contenders, which, best, best_of_all);
    } else if (const auto two = balanced(contenders, which, demand); !two.empty() && one.is_on_front) {
        words = "balances " + thing(two[0]) + " and " + thing(two[1]);
    } else {
        words = "best of its wire and ends, should the maker stock it";
    }
    if (!one.preferred.empty()) words += ", of preferred " + one.preferred;
    if (one.leans_too_far)
        words += one.leans ? ", but it leans further than its room, its end tips standing anyhow"
                           : ", but it leans further than its room, however close its end tips are held";
    else if (one.leans)
        words += ", but not half a turn over, so it leans on the sliding seat";
    return words;
}

}  // namespace seatload::sizing
