// SPDX-License-Identifier: MIT
#include <map>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/search.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "every_combination.hpp"
#include "varied_requirements.hpp"

using namespace seatload;

namespace {

sizing::Census searched(const sizing::Space& space, unsigned threads) {
    sizing::SearchOptions options;
    options.threads = threads;
    return sizing::search(space, test::tolerances(), options);
}

bool same(const sizing::Candidate& a, const sizing::Candidate& b) {
    return a.wire == b.wire && a.ends == b.ends && a.mean_diameter_mm == b.mean_diameter_mm &&
           a.total_coils == b.total_coils && a.free_length_mm == b.free_length_mm;
}

void check_map(const sizing::Census& census, const test::PlainCount& plain) {
    std::size_t filled = 0;
    for (const sizing::MapRow& row : census.map)
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            if (row.cells[i].fit == 0) continue;
            ++filled;
            const double D = row.mean_diameters.at(static_cast<long>(i));
            CAPTURE(in_mm(row.wire_diameter), D);
            const auto found = plain.at_diameters.find({in_mm(row.wire_diameter), D});
            REQUIRE(found != plain.at_diameters.end());
            CHECK(row.cells[i].fit == found->second.first);
            CHECK(row.cells[i].room_in_tenths == found->second.second);
        }
    CHECK(filled == plain.at_diameters.size());
}

}  // namespace

TEST_CASE("the search finds what testing every combination finds", "[slow]") {
    for (const auto& [name, requirement] : test::varied_requirements()) {
        CAPTURE(name);
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        const test::PlainCount plain = test::count_every_combination(space, test::tolerances());
        const sizing::Census census = searched(space, 1);
        CHECK(census.looked_at == plain.looked_at);
        CHECK(census.fit == plain.fit);
        for (std::size_t i = 0; i < check::rules().size(); ++i) {
            CAPTURE(check::rules()[i].id);
            CHECK(census.rejections[i].all == plain.rejections[i].all);
            CHECK(census.rejections[i].alone == plain.rejections[i].alone);
        }
        check_map(census, plain);
        REQUIRE(census.best.size() == plain.best.size());
        for (std::size_t i = 0; i < census.best.size(); ++i) {
            CAPTURE(i);
            REQUIRE(census.best[i].has_value() == plain.best[i].has_value());
            if (!census.best[i]) continue;
            // Objectives are compared, not designs: two springs may be equally good.
            CHECK_FALSE(sizing::better(plain.best[i]->merit, census.best[i]->merit));
            CHECK_FALSE(sizing::better(census.best[i]->merit, plain.best[i]->merit));
        }
    }
}

TEST_CASE("what is not counted on a fine grid changes nothing else") {
    for (const auto& [name, requirement] : test::varied_requirements()) {
        CAPTURE(name);
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        sizing::SearchOptions options;
        options.most_lines_counted = space.lines();
        const sizing::Census counted = sizing::search(space, test::tolerances(), options);
        if (space.lines() == 0) continue;
        options.most_lines_counted = space.lines() - 1;
        const sizing::Census fine = sizing::search(space, test::tolerances(), options);
        CHECK(counted.counts_all_rejections());
        CHECK_FALSE(fine.counts_all_rejections());
        CHECK(counted.fit == fine.fit);
        for (std::size_t i = 0; i < check::rules().size(); ++i) {
            CHECK(counted.rejections[i].all.has_value());
            CHECK_FALSE(fine.rejections[i].all.has_value());
            CHECK(counted.rejections[i].alone == fine.rejections[i].alone);
        }
    }
}

TEST_CASE("a search that counts no rejections finds the same springs") {
    for (const auto& [name, requirement] : test::varied_requirements()) {
        CAPTURE(name);
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        const sizing::Census counted = searched(space, 1);
        sizing::SearchOptions options;
        options.counts_rejections = false;
        const sizing::Census quick = sizing::search(space, test::tolerances(), options);
        CHECK(quick.rejections.empty());
        CHECK(quick.fit == counted.fit);
        REQUIRE(quick.best.size() == counted.best.size());
        for (std::size_t i = 0; i < quick.best.size(); ++i) {
            REQUIRE(quick.best[i].has_value() == counted.best[i].has_value());
            if (quick.best[i]) CHECK(same(*quick.best[i], *counted.best[i]));
        }
        REQUIRE(quick.map.size() == counted.map.size());
        for (std::size_t i = 0; i < quick.map.size(); ++i)
            for (std::size_t k = 0; k < quick.map[i].cells.size(); ++k) {
                CHECK(quick.map[i].cells[k].fit == counted.map[i].cells[k].fit);
                CHECK(quick.map[i].cells[k].room_in_tenths == counted.map[i].cells[k].room_in_tenths);
            }
        CHECK(quick.front.size() == counted.front.size());
    }
}

TEST_CASE("one thread and four give the same answer") {
    for (const auto& [name, requirement] : test::varied_requirements()) {
        CAPTURE(name);
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        const sizing::Census one = searched(space, 1);
        const sizing::Census four = searched(space, 4);
        CHECK(one.fit == four.fit);
        REQUIRE(one.map.size() == four.map.size());
        for (std::size_t i = 0; i < one.map.size(); ++i) {
            CHECK(one.map[i].wire_diameter == four.map[i].wire_diameter);
            CHECK(one.map[i].cells == four.map[i].cells);
        }
        for (std::size_t i = 0; i < one.rejections.size(); ++i) {
            CHECK(one.rejections[i].all == four.rejections[i].all);
            CHECK(one.rejections[i].alone == four.rejections[i].alone);
        }
        for (std::size_t i = 0; i < one.best.size(); ++i) {
            REQUIRE(one.best[i].has_value() == four.best[i].has_value());
            if (one.best[i]) CHECK(same(*one.best[i], *four.best[i]));
        }
    }
}

TEST_CASE("the varied requirements put every rule in play and make all of them bite") {
    std::map<std::string_view, unsigned long long> in_play, biting;
    std::size_t empty = 0, filled = 0;
    for (const auto& [name, requirement] : test::varied_requirements()) {
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        const sizing::Census census = searched(space, 2);
        (census.fit == 0 ? empty : filled) += 1;
        for (std::size_t i = 0; i < check::rules().size(); ++i) {
            const check::Rule& rule = check::rules()[i];
            for (const spring::Ends ends : space.ends) in_play[rule.id] += rule.applies(space.demand, ends) ? 1 : 0;
            biting[rule.id] += census.rejections[i].all.value();
        }
    }
    for (const check::Rule& rule : check::rules()) {
        CAPTURE(rule.id);
        CHECK(in_play[rule.id] > 0);
        CHECK(biting[rule.id] > 0);
    }
    CHECK(empty >= 3);
    CHECK(filled >= 12);
}
