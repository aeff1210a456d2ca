// SPDX-License-Identifier: MIT
#include <set>

#include <seatload/sizing/spread.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "varied_requirements.hpp"

using namespace seatload;

namespace {

struct Found {
    sizing::Space space;
    sizing::Census census;
};

Found found(const std::string& name) {
    for (const auto& [called, requirement] : test::varied_requirements())
        if (called == name) {
            sizing::Space space = sizing::search_space(requirement, test::wires());
            sizing::Census census = sizing::search(space, test::tolerances());
            return {std::move(space), std::move(census)};
        }
    FAIL("no requirement is called " << name);
    return {};
}

}  // namespace

TEST_CASE("the first alternative is the best spring of all") {
    const Found f = found("latch, all ends");
    const auto alternatives = sizing::spread(f.space, f.census, 5);
    REQUIRE(alternatives.size() == 5);
    for (const auto& best : f.census.best)
        if (best) CHECK_FALSE(sizing::better(best->merit, alternatives.front().candidate.merit));
}

TEST_CASE("no two alternatives share wire diameter, grade and ends") {
    const Found f = found("latch, all ends");
    std::set<std::tuple<double, std::size_t, spring::Ends>> seen;
    for (const auto& a : sizing::spread(f.space, f.census, 20)) {
        const auto& wire = f.space.wires[a.candidate.wire];
        CHECK(seen.insert({wire.numbers.d_mm, wire.grade, a.candidate.ends}).second);
    }
}

TEST_CASE("the second alternative has another wire diameter and grade when such a spring fits") {
    const Found f = found("latch, all ends");
    const auto alternatives = sizing::spread(f.space, f.census, 2);
    REQUIRE(alternatives.size() == 2);
    const auto& first = f.space.wires[alternatives[0].candidate.wire];
    const auto& second = f.space.wires[alternatives[1].candidate.wire];
    CHECK(first.grade != second.grade);
    CHECK(first.size.diameter != second.size.diameter);
}

TEST_CASE("nothing that fits gives no alternative") {
    const Found f = found("latch, more load than the space gives");
    CHECK(sizing::spread(f.space, f.census, 5).empty());
}
