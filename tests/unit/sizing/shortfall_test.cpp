// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <set>

#include <seatload/check/evaluation.hpp>
#include <seatload/sizing/alteration.hpp>
#include <seatload/sizing/shortfall.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "infeasible_requirements.hpp"

using namespace seatload;
using demand::Requirement;

namespace {

sizing::Setting setting(unsigned threads = 2) {
    sizing::SearchOptions options;
    options.threads = threads;
    return {test::wires(), test::tolerances(), options};
}

struct Explained {
    std::string name;
    Requirement requirement;
    sizing::Shortfall why;
};

const std::vector<Explained>& explained() {
    static const std::vector<Explained> all = [] {
        std::vector<Explained> made;
        for (const auto& [name, requirement] : test::infeasible_requirements())
            made.push_back({name, requirement, sizing::shortfall(requirement, setting())});
        return made;
    }();
    return all;
}

/// The whole search, which has an early end nowhere.
bool fits(const Requirement& requirement) {
    return sizing::search(sizing::search_space(requirement, test::wires()), test::tolerances()).fit > 0;
}

bool is_on(const sizing::Axis& axis, double value) {
    for (long i = 0; i < axis.count; ++i)
        if (axis.at(i) == value) return true;
    return false;
}

/// The spring is a combination of the requirement's grid and keeps every limit.
void check_proof(const sizing::Proof& proof, const Requirement& requirement) {
    const sizing::Space space = sizing::search_space(requirement, test::wires());
    const auto wire = std::find_if(space.wires.begin(), space.wires.end(), [&](const sizing::WireOption& w) {
        return space.grades[w.grade].id == proof.grade && w.size.diameter == proof.spring.wire_diameter;
    });
    REQUIRE(wire != space.wires.end());
    CHECK(is_on(wire->mean_diameters, in_mm(proof.spring.mean_diameter)));
    CHECK(is_on(space.total_coils, proof.spring.total_coils));
    CHECK(is_on(space.free_lengths, in_mm(proof.spring.free_length)));
    CHECK(std::find(space.ends.begin(), space.ends.end(), proof.spring.ends) != space.ends.end());
    const auto evaluation = check::evaluate(proof.spring, space.grades[wire->grade], requirement, test::tolerances());
    REQUIRE(evaluation.has_value());
    CHECK(evaluation->fits());
}

/// The requirement with each number of a relief taken so far: 0 as it is, 1 to the edge.
Requirement part_way(const Requirement& requirement, const sizing::Relief& relief, double part) {
    Requirement changed = requirement;
    for (const sizing::EasedNumber& n : relief.numbers) n.easing->set(changed, n.now + part * (n.edge - n.now));
    return changed;
}

const sizing::Easing& easing(std::string_view id) {
    const auto all = sizing::easings();
    const auto found = std::find_if(all.begin(), all.end(), [&](const sizing::Easing& e) { return e.id == id; });
    REQUIRE(found != all.end());
    return *found;
}

bool is_told(const sizing::Shortfall& why, const sizing::Easing& easing) {
    return std::any_of(why.reliefs.begin(), why.reliefs.end(),
                       [&](const sizing::Relief& r) { return r.numbers[0].easing == &easing; });
}

Requirement with_seated_load(double at_least) {
    Requirement r;
    r.space.seated_height = 15.0 * mm;
    r.space.full_travel_height = 9.0 * mm;
    r.seated_load.at_least = at_least * newton;
    return r;
}

}  // namespace

TEST_CASE("every change told lets in the spring told with it, on the grid, by every limit") {
    std::set<std::string_view> told;
    std::size_t changes = 0;
    for (const Explained& e : explained()) {
        CAPTURE(e.name);
        for (const auto* reliefs : {&e.why.reliefs, &e.why.joint})
            for (const sizing::Relief& relief : *reliefs) {
                for (const sizing::EasedNumber& n : relief.numbers) told.insert(n.easing->id);
                CAPTURE(relief.numbers[0].easing->id, relief.numbers[0].needed);
                check_proof(relief.proof, sizing::with(e.requirement, relief));
                ++changes;
            }
    }
    CHECK(changes >= 100);
    CHECK(told.size() >= 12);
}

TEST_CASE("a change one per cent smaller than the edge lets in nothing, the edge itself something") {
    for (const Explained& e : explained()) {
        CAPTURE(e.name);
        for (const auto* reliefs : {&e.why.reliefs, &e.why.joint})
            for (const sizing::Relief& relief : *reliefs) {
                CAPTURE(relief.numbers[0].easing->id, relief.numbers[0].now, relief.numbers[0].edge);
                CHECK(fits(part_way(e.requirement, relief, 1.0)));
                CHECK_FALSE(fits(part_way(e.requirement, relief, 0.99)));
            }
    }
}

TEST_CASE("a smaller change of a steady number lets in nothing, however small") {
    for (const Explained& e : explained()) {
        CAPTURE(e.name);
        for (const sizing::Relief& relief : e.why.reliefs) {
            if (!relief.numbers[0].easing->is_steady) continue;
            CAPTURE(relief.numbers[0].easing->id);
            for (const double part : {0.1, 0.3, 0.5, 0.7, 0.9, 0.97})
                CHECK_FALSE(fits(part_way(e.requirement, relief, part)));
        }
    }
}

TEST_CASE("the number told is the edge rounded to the easy side by at most 2 % of the number or half the change") {
    for (const Explained& e : explained())
        for (const sizing::Relief& relief : e.why.reliefs) {
            const sizing::EasedNumber& n = relief.numbers[0];
            CAPTURE(e.name, n.easing->id, n.now, n.edge, n.needed);
            const double change = n.edge - n.now, more = n.needed - n.edge;
            CHECK(more * change >= 0.0);
            CHECK(std::abs(more) <= 0.5 * std::abs(change) * (1.0 + 1e-9));
            if (n.now != 0.0) CHECK(std::abs(more) <= 0.02 * std::abs(n.now) * (1.0 + 1e-9));
        }
}

TEST_CASE("no number that could give way alone is left out") {
    std::size_t told = 0, not_told = 0;
    for (const Explained& e : explained())
        for (const sizing::Easing& each : sizing::easings()) {
            if (!each.now(e.requirement)) continue;
            CAPTURE(e.name, each.id);
            Requirement farthest = e.requirement;
            each.set(farthest, each.farthest(e.requirement));
            const bool lets_in = fits(farthest);
            if (each.is_steady) CHECK(is_told(e.why, each) == lets_in);
            if (lets_in) CHECK(is_told(e.why, each));
            (is_told(e.why, each) ? told : not_told) += 1;
        }
    CHECK(told >= 100);
    CHECK(not_told >= 100);
}

/// Any wire in any size, and half the steps, make spaces that take long to search to their end.
constexpr unsigned long long kQuickToSearch = 3'000'000;

TEST_CASE("no change but of a number that lets in a spring is left out, and none is told that does not") {
    for (const Explained& e : explained())
        for (const sizing::Alteration& alteration : sizing::alterations(e.requirement)) {
            CAPTURE(e.name, alteration.id);
            const auto told = std::find_if(e.why.altered.begin(), e.why.altered.end(),
                                           [&](const sizing::AlteredRelief& r) { return r.id == alteration.id; });
            if (told != e.why.altered.end())
                check_proof(told->proof, alteration.changed);
            else if (sizing::search_space(alteration.changed, test::wires()).size() < kQuickToSearch)
                CHECK_FALSE(fits(alteration.changed));
        }
}

TEST_CASE("of numbers changed together none would do alone") {
    std::size_t joint = 0;
    for (const Explained& e : explained())
        for (const sizing::Relief& relief : e.why.joint) {
            CAPTURE(e.name);
            ++joint;
            REQUIRE(relief.numbers.size() >= 2);
            for (const sizing::EasedNumber& n : relief.numbers) {
                Requirement alone = e.requirement;
                n.easing->set(alone, n.needed);
                CAPTURE(n.easing->id, n.needed);
                CHECK_FALSE(fits(alone));
            }
        }
    CHECK(joint >= 10);
}

TEST_CASE("changes are told by their size, the smallest first") {
    for (const Explained& e : explained()) {
        CAPTURE(e.name);
        for (const auto* reliefs : {&e.why.reliefs, &e.why.joint})
            CHECK(std::is_sorted(reliefs->begin(), reliefs->end(),
                                 [](const auto& a, const auto& b) { return a.change < b.change; }));
    }
}

TEST_CASE("one thread and four explain alike") {
    std::size_t compared = 0;
    for (const Explained& e : explained()) {
        if (++compared > 40) break;
        CAPTURE(e.name);
        const sizing::Shortfall one = sizing::shortfall(e.requirement, setting(1));
        const sizing::Shortfall four = sizing::shortfall(e.requirement, setting(4));
        CHECK(one.contradictions == four.contradictions);
        REQUIRE(one.reliefs.size() == four.reliefs.size());
        for (std::size_t i = 0; i < one.reliefs.size(); ++i) {
            CHECK(one.reliefs[i].numbers[0].easing == four.reliefs[i].numbers[0].easing);
            CHECK(one.reliefs[i].numbers[0].edge == four.reliefs[i].numbers[0].edge);
            CHECK(one.reliefs[i].numbers[0].needed == four.reliefs[i].numbers[0].needed);
            CHECK(one.reliefs[i].proof.grade == four.reliefs[i].proof.grade);
            CHECK(one.reliefs[i].proof.spring.free_length == four.reliefs[i].proof.spring.free_length);
        }
        CHECK(one.altered.size() == four.altered.size());
        CHECK(one.joint.size() == four.joint.size());
    }
}

namespace {

/// A requirement that was met until one number of it was made harder.
struct Hardened {
    const sizing::Easing* easing = nullptr;
    Requirement before;
    Requirement after;
};

/// Makes a number harder, away from where it would be eased, until nothing fits; nothing when that never comes.
std::optional<Hardened> hardened(const Requirement& met, const sizing::Easing& easing) {
    const double now = *easing.now(met);
    const bool eases_upwards = easing.farthest(met) > now;
    for (double share = 0.05; share < 20.0; share *= 1.6) {
        const double harder = eases_upwards ? now * (1.0 - share) : now * (1.0 + share);
        if (harder <= 0.0) return std::nullopt;
        Hardened made{&easing, met, met};
        easing.set(made.after, harder);
        const demand::Space& space = made.after.space;
        if (space.seated_height <= space.full_travel_height) return std::nullopt;
        if (!fits(made.after)) return made;
    }
    return std::nullopt;
}

/// Of each number up to two requirements that were met until it was made harder.
std::vector<Hardened> all_hardened() {
    std::vector<Hardened> all;
    for (const sizing::Easing& easing : sizing::easings()) {
        std::size_t made = 0;
        for (const auto& [name, requirement] : test::varied_requirements()) {
            if (made == 2) break;
            if (!easing.now(requirement) || easing.farthest(requirement) == *easing.now(requirement)) continue;
            if (!fits(requirement)) continue;
            if (auto found = hardened(requirement, easing)) {
                all.push_back(*found);
                ++made;
            }
        }
    }
    return all;
}

}  // namespace

TEST_CASE("a number made so hard that nothing fits is told, with an edge between where it was and where it is") {
    std::set<std::string_view> kinds;
    for (const Hardened& h : all_hardened()) {
        const double was = *h.easing->now(h.before), is = *h.easing->now(h.after);
        CAPTURE(h.easing->id, was, is);
        const sizing::Easing* alone[] = {h.easing};
        const auto relief = sizing::least_relief(h.after, alone, setting());
        const double reach = std::abs(h.easing->farthest(h.after) - is);
        if (!relief) {
            CHECK(reach < std::abs(was - is));  // only when it is not tried so far
            continue;
        }
        kinds.insert(h.easing->id);
        const double edge = relief->numbers[0].edge;
        constexpr double kTolerance = 1e-3;  // of the number, as least_relief() promises
        CHECK(std::abs(edge - is) <= std::abs(was - is) + kTolerance * std::abs(is));
        CHECK((edge - is) * (was - is) > 0.0);
        check_proof(relief->proof, sizing::with(h.after, *relief));
    }
    for (const std::string_view id : kinds) UNSCOPED_INFO(id);
    CHECK(kinds.size() >= 25);
}

TEST_CASE("every rule that an easing or a change names is one of the rules") {
    std::set<std::string_view> ids;
    for (const sizing::Easing& each : sizing::easings()) {
        CAPTURE(each.id);
        CHECK(ids.insert(each.id).second);
        CHECK_FALSE(each.mends.empty());
        for (const std::string_view rule : each.mends) CHECK(sizing::rule_called(rule) != 0);
    }
}

TEST_CASE("a number is rounded to 1, 2 or 5 of a decimal place, to the easy side") {
    const sizing::Easing& least = easing("load.seated.at_least");
    CHECK(sizing::rounded(least, with_seated_load(4.8), 4.637, 0) == 4.6);    // steps of 0.05
    CHECK(sizing::rounded(least, with_seated_load(4.8), 4.6, 0) == 4.6);      // already round
    CHECK(sizing::rounded(least, with_seated_load(4.8), 4.787, 0) == 4.785);  // 0.005: half the change is 0.0065
    CHECK(sizing::rounded(least, with_seated_load(4.8), 4.637, 1) == 4.635);  // 0.005
    CHECK(sizing::rounded(least, with_seated_load(480.0), 463.7, 0) == 460.0);
    const sizing::Easing& height = easing("space.full_travel_height.at_least");
    CHECK(sizing::rounded(height, with_seated_load(4.8), 9.61, 0) == 9.7);    // steps of 0.1, upwards
    CHECK(sizing::rounded(height, with_seated_load(4.8), 14.69, 0) == 14.7);  // never past the farthest
}
