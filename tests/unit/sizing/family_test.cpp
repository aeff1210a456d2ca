// SPDX-License-Identifier: MIT
// What serves several requirements at once, held against plain loops over all combinations.
#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <tuple>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/any_fit.hpp>
#include <seatload/sizing/conflicts.hpp>
#include <seatload/sizing/near_wire.hpp>
#include <seatload/sizing/shared_conflict.hpp>
#include <seatload/sizing/shared_grid.hpp>
#include <seatload/sizing/shared_spring.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "every_combination.hpp"
#include "family_pairs.hpp"

using namespace seatload;
using demand::Requirement;

namespace {

constexpr std::size_t kPairs = 60;

/// A spring, whatever requirement it is looked at under: grade, wire and mean diameter, ends, coils, free length.
using Key = std::tuple<std::string, double, spring::Ends, double, double, double>;
using WireKey = std::pair<std::string, double>;

/// A requirement searched.
struct Searched {
    Requirement requirement;
    sizing::Space space;
    sizing::Census census;

    explicit Searched(const Requirement& r, unsigned threads = 1)
        : requirement(r), space(sizing::search_space(r, test::wires())) {
        sizing::SearchOptions options;
        options.threads = threads;
        census = sizing::search(space, test::tolerances(), options);
    }
    sizing::Member member() const { return {requirement, space, census}; }
};

sizing::SharedCensus shared(const Searched& a, const Searched& b, unsigned threads = 1) {
    const std::vector<sizing::Member> family{a.member(), b.member()};
    sizing::SearchOptions options;
    options.threads = threads;
    return sizing::shared_springs(family, test::tolerances(), options);
}

bool keeps_all(const check::Coil& coil, double free_length) {
    return coil.active_coils > 0.0 &&
           std::all_of(check::rules().begin(), check::rules().end(), [&](const check::Rule& rule) {
               return !rule.applies(coil.demand, coil.ends) || check::passes(rule, coil, free_length);
           });
}

/// Calls `look(key, coil, free length)` for each combination of a space.
template <class Look>
void each_combination(const sizing::Space& space, const Look& look) {
    for (const sizing::WireOption& wire : space.wires)
        for (const spring::Ends ends : space.ends)
            for (long d = 0; d < wire.mean_diameters.count; ++d)
                for (long n = 0; n < space.total_coils.count; ++n)
                    for (long l = 0; l < space.free_lengths.count; ++l) {
                        const double D = wire.mean_diameters.at(d), nt = space.total_coils.at(n),
                                     L0 = space.free_lengths.at(l);
                        const check::Coil coil(space.demand, wire.numbers, test::tolerances(), D, ends, nt);
                        look(Key{space.grades[wire.grade].id, wire.numbers.d_mm, ends, D, nt, L0}, coil, L0);
                    }
}

/// Every combination that fits, with its merit.
std::map<Key, sizing::Merit> all_that_fit(const sizing::Space& space) {
    std::map<Key, sizing::Merit> fitting;
    each_combination(space, [&](const Key& key, const check::Coil& coil, double L0) {
        if (keeps_all(coil, L0)) fitting.emplace(key, sizing::merit(coil, L0));
    });
    return fitting;
}

sizing::Merit least(const sizing::Merit& a, const sizing::Merit& b) {
    sizing::Merit merit = a;
    merit.tolerance_room = std::min(a.tolerance_room, b.tolerance_room);
    merit.stress_margin = std::min(a.stress_margin, b.stress_margin);
    merit.cost = std::max(a.cost, b.cost);
    merit.release_n = std::max(a.release_n, b.release_n);
    merit.leans = a.leans || b.leans;
    merit.leans_too_far = a.leans_too_far || b.leans_too_far;
    return merit;
}

bool are_equally_good(const sizing::Merit& a, const sizing::Merit& b) {
    return !sizing::better(a, b) && !sizing::better(b, a);
}

Key key_of(const sizing::Space& space, const sizing::Candidate& c) {
    const sizing::WireOption& wire = space.wires[c.wire];
    return {space.grades[wire.grade].id, wire.numbers.d_mm, c.ends,
            c.mean_diameter_mm,          c.total_coils,     c.free_length_mm};
}

/// The limits of both requirements that a combination breaks.
std::vector<sizing::MemberRule> broken(std::span<const check::Coil> coils, double L0) {
    std::vector<sizing::MemberRule> limits;
    for (std::size_t i = 0; i < coils.size(); ++i)
        for (std::size_t r = 0; r < check::rules().size(); ++r)
            if (check::rules()[r].applies(coils[i].demand, coils[i].ends) &&
                !check::passes(check::rules()[r], coils[i], L0))
                limits.push_back({i, r});
    return limits;
}

bool holds(const std::vector<sizing::MemberRule>& limits, const sizing::MemberRule& limit) {
    return std::find(limits.begin(), limits.end(), limit) != limits.end();
}

/// Of each set of limits that can be made of a conflict, whether some combination of both wide spaces keeps it.
std::set<std::size_t> kept_sets(const Requirement& a, const Requirement& b,
                                const std::vector<sizing::MemberRule>& conflict) {
    const sizing::Space first = sizing::wide_space(a, test::wires());
    const sizing::Space second = sizing::wide_space(b, test::wires());
    std::set<Key> in_second;
    std::map<WireKey, const sizing::WireOption*> wires;
    for (const sizing::WireOption& wire : second.wires)
        wires[{second.grades[wire.grade].id, wire.numbers.d_mm}] = &wire;
    each_combination(second, [&](const Key& key, const check::Coil&, double) { in_second.insert(key); });
    std::set<std::size_t> kept;
    each_combination(first, [&](const Key& key, const check::Coil& coil, double L0) {
        if (!in_second.contains(key) || coil.active_coils <= 0.0) return;
        const sizing::WireOption& wire = *wires.at({std::get<0>(key), std::get<1>(key)});
        const std::vector<check::Coil> coils{
            coil, check::Coil(second.demand, wire.numbers, test::tolerances(), coil.D_mm, coil.ends, coil.total_coils)};
        const auto limits = broken(coils, L0);
        std::size_t set = 0;
        for (std::size_t i = 0; i < conflict.size(); ++i)
            if (!holds(limits, conflict[i])) set |= std::size_t{1} << i;
        kept.insert(set);
    });
    return kept;
}

/// Whether some kept set holds all of these limits.
bool is_kept(const std::set<std::size_t>& kept, std::size_t set) {
    return std::any_of(kept.begin(), kept.end(), [&](std::size_t each) { return (each & set) == set; });
}

}  // namespace

TEST_CASE("the springs that serve two requirements are those that testing every combination of both finds") {
    std::size_t empty = 0, filled = 0;
    for (const auto& [a, b] : test::family_pairs(kPairs)) {
        const Searched first(a), second(b);
        const auto in_first = all_that_fit(first.space), in_second = all_that_fit(second.space);
        unsigned long long fit = 0;
        std::optional<sizing::Merit> best;
        for (const auto& [key, merit] : in_first) {
            const auto there = in_second.find(key);
            if (there == in_second.end()) continue;
            ++fit;
            const sizing::Merit both = least(merit, there->second);
            if (!best || sizing::better(both, *best)) best = both;
        }
        const sizing::SharedCensus found = shared(first, second);
        CHECK(found.fit == fit);
        REQUIRE(found.best.has_value() == best.has_value());
        (fit == 0 ? empty : filled) += 1;
        if (!best) continue;
        CHECK(are_equally_good(found.best->merit, *best));
        const Key key = key_of(first.space, found.best->in_each[0]);
        CHECK(key == key_of(second.space, found.best->in_each[1]));
        CHECK(in_first.contains(key));
        CHECK(in_second.contains(key));
    }
    CHECK(empty >= 10);
    CHECK(filled >= 10);
}

TEST_CASE("the combinations looked at for one spring are those that lie on both grids") {
    for (const auto& [a, b] : test::family_pairs(12)) {
        const Searched first(a), second(b);
        std::set<Key> in_first;
        unsigned long long both = 0;
        each_combination(first.space, [&](const Key& key, const check::Coil&, double) { in_first.insert(key); });
        each_combination(second.space,
                         [&](const Key& key, const check::Coil&, double) { both += in_first.contains(key) ? 1 : 0; });
        CHECK(shared(first, second).looked_at == both);
    }
}

TEST_CASE("the wires that serve two requirements are those that both have a spring of") {
    std::size_t filled = 0;
    for (const auto& [a, b] : test::family_pairs(kPairs)) {
        const Searched first(a), second(b);
        std::map<WireKey, std::vector<std::optional<sizing::Merit>>> best;
        for (const Searched* one : {&first, &second})
            for (const auto& [key, merit] : all_that_fit(one->space)) {
                auto& of_wire = best[{std::get<0>(key), std::get<1>(key)}];
                of_wire.resize(2);
                auto& mine = of_wire[one == &first ? 0 : 1];
                if (!mine || sizing::better(merit, *mine)) mine = merit;
            }
        std::erase_if(best, [](const auto& wire) { return !wire.second[0] || !wire.second[1]; });
        const std::vector<sizing::Member> family{first.member(), second.member()};
        const auto wires = sizing::common_wires(family);
        CHECK(wires.size() == best.size());
        for (std::size_t i = 0; i < wires.size(); ++i) {
            const auto plain = best.find({wires[i].grade, in_mm(wires[i].diameter)});
            REQUIRE(plain != best.end());
            for (std::size_t m = 0; m < 2; ++m) CHECK(are_equally_good(wires[i].springs[m].merit, *plain->second[m]));
            if (i > 0) CHECK_FALSE(sizing::better(wires[i].merit, wires[i - 1].merit));
        }
        filled += wires.empty() ? 0 : 1;
    }
    CHECK(filled >= 10);
}

TEST_CASE("neither the order of the requirements nor the number of threads alters what serves both") {
    for (const auto& [a, b] : test::family_pairs(kPairs)) {
        const Searched first(a), second(b, 4);
        const sizing::SharedCensus there = shared(first, second, 1), back = shared(second, first, 4);
        CHECK(there.fit == back.fit);
        CHECK(there.looked_at == back.looked_at);
        CHECK(there.apart == back.apart);
        REQUIRE(there.best.has_value() == back.best.has_value());
        if (there.best)
            CHECK(key_of(first.space, there.best->in_each[0]) == key_of(second.space, back.best->in_each[0]));
        const std::vector<sizing::Member> forth{first.member(), second.member()};
        const std::vector<sizing::Member> turned{second.member(), first.member()};
        const auto wires = sizing::common_wires(forth), same = sizing::common_wires(turned);
        REQUIRE(wires.size() == same.size());
        for (std::size_t i = 0; i < wires.size(); ++i) {
            CHECK(wires[i].grade == same[i].grade);
            CHECK(wires[i].diameter == same[i].diameter);
        }
    }
}

TEST_CASE("one requirement twice is served by all that fits it, and best by its best") {
    for (const auto& [a, b] : test::family_pairs(20)) {
        const Searched one(a);
        const sizing::SharedCensus found = shared(one, one);
        CHECK(found.fit == one.census.fit);
        if (one.census.fit == 0) continue;
        std::optional<sizing::Merit> best;
        for (const auto& each : one.census.best)
            if (each && (!best || sizing::better(each->merit, *best))) best = each->merit;
        REQUIRE(found.best.has_value());
        CHECK(are_equally_good(found.best->merit, *best));
        const std::vector<sizing::Member> family{one.member(), one.member()};
        for (const sizing::CommonWire& wire : sizing::common_wires(family))
            CHECK(key_of(one.space, wire.springs[0]) == key_of(one.space, wire.springs[1]));
    }
}

TEST_CASE("the limits told to contradict each other are kept together by no combination, and all but any one are") {
    std::size_t told = 0;
    for (auto [a, b] : test::family_pairs(kPairs)) {
        for (Requirement* r : {&a, &b}) {  // few points: each is tested against each limit
            r->grid.mean_diameter_step = 0.4 * mm;
            r->grid.free_length_step = 1.0 * mm;
            r->grid.total_coils_step = 0.5;
            r->grid.mean_diameter = demand::LengthRange{6.8 * mm, 8.4 * mm};
        }
        const Requirement* both[] = {&a, &b};
        const auto conflict = sizing::shared_conflict(both, {test::wires(), test::tolerances(), {}});
        if (conflict.empty() || told >= 12) continue;
        ++told;
        const auto kept = kept_sets(a, b, conflict);
        const std::size_t whole = (std::size_t{1} << conflict.size()) - 1;
        CHECK_FALSE(is_kept(kept, whole));
        for (std::size_t i = 0; i < conflict.size(); ++i) CHECK(is_kept(kept, whole & ~(std::size_t{1} << i)));
    }
    CHECK(told >= 8);
}

TEST_CASE("a pair that a spring serves has no contradicting limits") {
    std::size_t served = 0;
    for (const auto& [a, b] : test::family_pairs(kPairs)) {
        if (shared(Searched(a), Searched(b)).fit == 0) continue;
        const Requirement* both[] = {&a, &b};
        CHECK(sizing::shared_conflict(both, {test::wires(), test::tolerances(), {}}).empty());
        ++served;
    }
    CHECK(served >= 10);
}

TEST_CASE("the wire that comes closest serves as many as any, and each change told lets in a spring of it") {
    auto [a, b] = test::family_pairs(1).front();
    a.wire.grades = b.wire.grades = {"EN10270-3-1.4310-NS"};
    a.wire.diameters = b.wire.diameters = {0.6 * mm, 0.7 * mm, 0.8 * mm};
    a.surroundings.temperature = b.surroundings.temperature = {90.0};
    a.space.seats = b.space.seats = demand::Seats::guided;
    b.seated_load = {22.0 * newton, 30.0 * newton};  // far too much for these wires
    b.full_travel_load = {};
    const Searched first(a), second(b);
    REQUIRE(first.census.fit > 0);
    const std::vector<sizing::Member> family{first.member(), second.member()};
    CHECK(sizing::common_wires(family).empty());
    const auto near = sizing::near_wire(family, {test::wires(), test::tolerances(), {}});
    REQUIRE(near.has_value());
    CHECK(near->springs[0].has_value());
    CHECK_FALSE(near->springs[1].has_value());
    REQUIRE(near->lacks.size() == 1);
    CHECK(near->lacks[0].member == 1);
    const auto alone = sizing::with_wire_alone(b, near->grade, near->diameter);
    CHECK(Searched(alone).census.fit == 0);
    const sizing::Shortfall& why = near->lacks[0].why;
    REQUIRE_FALSE(why.reliefs.empty());
    for (const sizing::Relief& relief : why.reliefs) {
        CHECK(relief.proof.grade == near->grade);
        CHECK(relief.proof.spring.wire_diameter == near->diameter);
        CHECK(Searched(sizing::with(alone, relief)).census.fit > 0);
    }
}

TEST_CASE("wires of one name that differ in strength are not the same wire") {
    Requirement a = test::family_pairs(1).front().first;
    wire::Grade own = *test::wires().find("EN10270-3-1.4310-NS");
    own.id = "coil 4711";
    own.strength = wire::StrengthGiven{1950.0 * MPa, 0.5 * mm, 1.0 * mm};
    a.wire.grades.clear();
    a.wire.own_grades = {own};
    Requirement b = a;
    const Searched first(a), like_first(b);
    const std::vector<const sizing::Space*> same{&first.space, &like_first.space};
    CHECK(sizing::wires_of_all(same).size() == first.space.wires.size());
    b.wire.own_grades[0].strength = wire::StrengthGiven{1900.0 * MPa, 0.5 * mm, 1.0 * mm};
    const Searched second(b);
    const std::vector<const sizing::Space*> spaces{&first.space, &second.space};
    CHECK(sizing::wires_of_all(spaces).empty());
    CHECK(shared(first, second).apart == sizing::Apart::wire);
}

TEST_CASE("what keeps two requirements from having a combination in common is told") {
    const Requirement a = test::family_pairs(1).front().first;
    const Searched first(a);
    const auto apart = [&](auto change) {
        Requirement b = a;
        change(b);
        return shared(first, Searched(b)).apart;
    };
    CHECK(apart([](Requirement&) {}) == sizing::Apart::nothing);
    CHECK(apart([](Requirement& r) { r.hand = spring::Hand::left; }) == sizing::Apart::hand);
    CHECK(apart([](Requirement& r) { r.wire.diameters = {0.9 * mm}; }) == sizing::Apart::wire);
    CHECK(apart([](Requirement& r) { r.ends = {spring::Ends::open_ground}; }) == sizing::Apart::ends);
    CHECK(apart([](Requirement& r) { r.grid.total_coils = {15.0, 17.0}; }) == sizing::Apart::total_coils);
    CHECK(apart([](Requirement& r) {
              r.grid.free_length = demand::LengthRange{30.0 * mm, 40.0 * mm};
          }) == sizing::Apart::free_length);
    CHECK(apart([](Requirement& r) {
              r.grid.mean_diameter = demand::LengthRange{5.0 * mm, 6.0 * mm};
          }) == sizing::Apart::mean_diameter);
}

TEST_CASE("axes of different steps share the points that lie on both") {
    const std::vector<sizing::Axis> axes{sizing::axis_between(1.0, 2.0, 0.1), sizing::axis_between(0.5, 2.25, 0.25)};
    CHECK(sizing::common_points(axes) == std::vector<double>{1.0, 1.5, 2.0});
    const std::vector<sizing::Axis> inches{sizing::axis_between(1.0, 30.0, 0.05),
                                           sizing::axis_between(1.0, 30.0, 0.254)};
    CHECK(sizing::common_points(inches) == std::vector<double>{6.35, 12.7, 19.05, 25.4});
}
