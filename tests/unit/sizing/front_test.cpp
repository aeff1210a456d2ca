// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <random>
#include <set>

#include <seatload/sizing/search.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "all_that_fit.hpp"
#include "varied_requirements.hpp"

using namespace seatload;
using sizing::Candidate;
using sizing::Standing;

namespace {

constexpr unsigned kSeed = 20261126;

/// At least as good in all respects, and better in one, said in the plainest way.
bool beats(const Standing& a, const Standing& b) {
    bool better = false;
    for (std::size_t i = 0; i < a.size(); ++i) {
        if (a[i] > b[i]) return false;
        better = better || a[i] < b[i];
    }
    return better;
}

/// The Pareto set by comparing each with each.
std::map<Standing, Candidate> plain_front(const std::vector<Candidate>& all) {
    std::map<Standing, Candidate> cells;
    for (const Candidate& c : all) {
        const auto [at, is_new] = cells.emplace(sizing::standing(c.merit), c);
        if (!is_new && sizing::comes_before(c, at->second)) at->second = c;
    }
    std::map<Standing, Candidate> front;
    for (const auto& [steps, candidate] : cells)
        if (std::none_of(cells.begin(), cells.end(), [&](const auto& other) { return beats(other.first, steps); }))
            front.emplace(steps, candidate);
    return front;
}

auto place(const Candidate& c) {
    return std::tuple(c.wire, c.ends, c.mean_diameter_mm, c.total_coils, c.free_length_mm);
}

bool same(const Candidate& a, const Candidate& b) { return place(a) == place(b); }

/// Small requirements, each unlike the next in heights, loads, bore, seats, steps and what ranks first.
std::vector<demand::Requirement> random_requirements(std::size_t count) {
    std::mt19937 engine(kSeed);
    // std distributions differ between libraries; the engine's own numbers do not.
    const auto between = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(engine()) / 4294967296.0;
    };
    std::vector<demand::Requirement> all;
    const auto from = test::varied_requirements();
    while (all.size() < count) {
        demand::Requirement r = from[engine() % from.size()].requirement;
        const double wider = between(0.0, 0.4);
        if (r.seated_load.at_least) r.seated_load.at_least = (1.0 - wider) * *r.seated_load.at_least;
        if (r.seated_load.at_most) r.seated_load.at_most = (1.0 + wider) * *r.seated_load.at_most;
        if (r.full_travel_load.at_most) r.full_travel_load.at_most = (1.0 + wider) * *r.full_travel_load.at_most;
        r.space.full_travel_height = between(0.9, 1.05) * r.space.full_travel_height;
        r.grid.mean_diameter_step = between(0.15, 0.4) * mm;
        r.grid.free_length_step = between(0.3, 0.9) * mm;
        if (engine() % 2 == 0) r.limits.half_turn_slack = 0.5;
        std::vector<demand::Criterion> order(demand::kUsualOrder.begin(), demand::kUsualOrder.end());
        std::rotate(order.begin(), order.begin() + engine() % 4, order.end());
        r.preference.order = demand::order_led_by(order);
        all.push_back(r);
    }
    return all;
}

sizing::Census searched(const sizing::Space& space, unsigned threads) {
    sizing::SearchOptions options;
    options.threads = threads;
    return sizing::search(space, test::tolerances(), options);
}

}  // namespace

TEST_CASE("the Pareto set is that of comparing every fitting combination with every other") {
    CAPTURE(kSeed);
    std::size_t filled = 0, members = 0;
    for (const demand::Requirement& requirement : random_requirements(40)) {
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        const auto expected = plain_front(test::all_that_fit(space));
        const auto found = searched(space, 1).front.members();
        REQUIRE(found.size() == expected.size());
        for (const sizing::FrontMember& member : found) {
            const auto at = expected.find(member.steps);
            REQUIRE(at != expected.end());
            CHECK(same(member.candidate, at->second));
        }
        filled += found.empty() ? 0 : 1;
        members += found.size();
    }
    CHECK(filled >= 20);
    CHECK(members >= 5 * filled);
}

TEST_CASE("the best of a wire and ends is the best of its fitting combinations, whatever ranks first") {
    for (const demand::Requirement& requirement : random_requirements(40)) {
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        const demand::Order& order = requirement.preference.order;
        std::map<std::pair<std::size_t, spring::Ends>, Candidate> expected;
        for (const Candidate& c : test::all_that_fit(space)) {
            const auto [at, is_new] = expected.emplace(std::pair(c.wire, c.ends), c);
            if (!is_new && sizing::comes_before(c, at->second, order)) at->second = c;
        }
        const sizing::Census census = searched(space, 1);
        for (std::size_t i = 0; i < census.best.size(); ++i) {
            const auto at = expected.find({i / space.ends.size(), space.ends[i % space.ends.size()]});
            REQUIRE(census.best[i].has_value() == (at != expected.end()));
            if (census.best[i]) CHECK(same(*census.best[i], at->second));
        }
    }
}

TEST_CASE("the Pareto set does not depend on the threads that looked for it") {
    for (const demand::Requirement& requirement : random_requirements(20)) {
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        const auto one = searched(space, 1).front.members();
        for (const unsigned threads : {2u, 5u}) {
            const auto more = searched(space, threads).front.members();
            REQUIRE(one.size() == more.size());
            for (std::size_t i = 0; i < one.size(); ++i) CHECK(same(one[i].candidate, more[i].candidate));
        }
    }
}

TEST_CASE("parts of a Pareto set give the same whole in any order") {
    std::mt19937 engine(kSeed);
    std::vector<Candidate> all;
    for (std::size_t i = 0; i < 400; ++i) {
        Candidate c;
        c.wire = i;
        c.merit = {static_cast<double>(engine() % 20) / 10.0, static_cast<double>(engine() % 15) / 100.0,
                   1e-6 * static_cast<double>(1 + engine() % 9), 10.0 + static_cast<double>(engine() % 6),
                   engine() % 3 == 0};
        all.push_back(c);
    }
    const auto expected = plain_front(all);
    REQUIRE(expected.size() >= 10);
    for (int round = 0; round < 20; ++round) {
        std::shuffle(all.begin(), all.end(), engine);
        std::vector<sizing::Front> parts(1 + engine() % 7);
        for (const Candidate& c : all) parts[engine() % parts.size()].offer(c);
        sizing::Front whole;
        for (const sizing::Front& part : parts) whole.merge(part);
        const auto members = whole.members();
        REQUIRE(members.size() == expected.size());
        for (const sizing::FrontMember& member : members)
            CHECK(member.candidate.wire == expected.at(member.steps).wire);
    }
}

TEST_CASE("finer differences than a step do not count") {
    const auto steps = [](double room, double margin, double cost, double release) {
        return sizing::standing({room, margin, cost, release, false});
    };
    CHECK(steps(0.70, 0.250, 1.0, 10.0) == steps(0.79, 0.259, 1.0, 10.0));
    CHECK(steps(0.70, 0.25, 1.0, 10.0) != steps(0.80, 0.25, 1.0, 10.0));
    CHECK(steps(0.70, 0.25, 1.0, 10.0) != steps(0.70, 0.26, 1.0, 10.0));
    CHECK(steps(0.70, 0.25, 1.0, 10.0) != steps(0.70, 0.25, 1.06, 10.0));
    CHECK(steps(0.70, 0.25, 1.0, 10.0) != steps(0.70, 0.25, 1.0, 10.3));
    // A tenth that rounding has lost by a hair still counts.
    CHECK(steps(0.3 - 1e-12, 0.29 - 1e-12, 1.0, 10.0) == steps(0.3, 0.29, 1.0, 10.0));
}
