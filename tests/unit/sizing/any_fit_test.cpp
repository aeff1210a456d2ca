// SPDX-License-Identifier: MIT
#include <seatload/sizing/any_fit.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "every_combination.hpp"
#include "varied_requirements.hpp"

using namespace seatload;

namespace {

std::optional<sizing::Candidate> asked(const sizing::Space& space, unsigned threads) {
    sizing::SearchOptions options;
    options.threads = threads;
    return sizing::any_fit(space, test::tolerances(), options);
}

}  // namespace

TEST_CASE("any spring is found just when testing every combination finds one") {
    for (const auto& [name, requirement] : test::varied_requirements()) {
        CAPTURE(name);
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        const bool fits = test::count_every_combination(space, test::tolerances()).fit > 0;
        const auto found = asked(space, 2);
        REQUIRE(found.has_value() == fits);
        if (found) CHECK(sizing::broken_rules(space, test::tolerances(), *found) == 0);
    }
}

TEST_CASE("any spring is the same one for one thread and for four") {
    for (const auto& [name, requirement] : test::varied_requirements()) {
        CAPTURE(name);
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        const auto one = asked(space, 1), four = asked(space, 4);
        REQUIRE(one.has_value() == four.has_value());
        if (!one) continue;
        CHECK(one->wire == four->wire);
        CHECK(one->ends == four->ends);
        CHECK(one->mean_diameter_mm == four->mean_diameter_mm);
        CHECK(one->total_coils == four->total_coils);
        CHECK(one->free_length_mm == four->free_length_mm);
    }
}

TEST_CASE("a space cut down to one wire and ends has as many springs as that wire in the whole space") {
    for (const auto& [name, requirement] : test::varied_requirements()) {
        CAPTURE(name);
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        unsigned long long sum = 0;
        for (const sizing::WireOption& wire : space.wires)
            for (const spring::Ends ends : space.ends) {
                const auto one = sizing::only(space, space.grades[wire.grade].id, wire.size.diameter, ends);
                REQUIRE(one.wires.size() == 1);
                sum += sizing::search(one, test::tolerances()).fit;
            }
        CHECK(sum == sizing::search(space, test::tolerances()).fit);
    }
}
