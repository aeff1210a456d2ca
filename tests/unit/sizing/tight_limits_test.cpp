// SPDX-License-Identifier: MIT
#include <algorithm>

#include <seatload/sizing/tight_limits.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "all_that_fit.hpp"
#include "varied_requirements.hpp"

using namespace seatload;

namespace {

struct Counted {
    unsigned long long fit = 0;
    double room_in_tenths = 0.0;
};

/// How many fit and with how much room the best of them, by testing every combination.
Counted counted(const demand::Requirement& requirement) {
    Counted all;
    std::optional<sizing::Merit> best;
    for (const sizing::Candidate& c : test::all_that_fit(sizing::search_space(requirement, test::wires()))) {
        ++all.fit;
        if (!best || sizing::better(c.merit, *best, requirement.preference.order)) best = c.merit;
    }
    if (best) all.room_in_tenths = sizing::room_in_tenths(best->tolerance_room);
    return all;
}

demand::Requirement with(const demand::Requirement& requirement, const sizing::Easing& easing) {
    demand::Requirement changed = requirement;
    // 1 % of the number, to the easy side, not beyond the farthest it is tried
    const double now = *easing.now(requirement), farthest = easing.farthest(requirement);
    const double by =
        std::min(0.01 * (now != 0.0 ? std::abs(now) : std::abs(farthest - now)), std::abs(farthest - now));
    easing.set(changed, farthest > now ? now + by : now - by);
    return changed;
}

sizing::TightLimits tight(const demand::Requirement& requirement) {
    const sizing::Setting setting{test::wires(), test::tolerances(), {}};
    const auto census = sizing::search(sizing::search_space(requirement, test::wires()), test::tolerances());
    return sizing::tight_limits(requirement, census, setting);
}

}  // namespace

TEST_CASE("each number eased by a hundredth brings what testing every combination finds") {
    std::size_t holding = 0, others = 0;
    for (auto& [name, requirement] : test::varied_requirements()) {
        if (name != "latch" && name != "latch, all ends" && name != "relief" && name != "relief, moving, Goodman" &&
            name != "latch, light and stiff against motion" &&
            name != "latch, maker of whole and half turns and short springs")
            continue;
        CAPTURE(name);
        requirement.grid.mean_diameter_step = 3.0 * requirement.grid.mean_diameter_step;
        requirement.grid.free_length_step = 2.0 * requirement.grid.free_length_step;
        const Counted now = counted(requirement);
        const sizing::TightLimits found = tight(requirement);
        CHECK(found.fit == now.fit);
        CHECK(found.room_in_tenths == now.room_in_tenths);
        for (const sizing::Eased& row : found.holding) {
            CAPTURE(row.easing->id);
            const Counted then = counted(with(requirement, *row.easing));
            CHECK(row.fit == then.fit);
            CHECK(row.room_in_tenths == then.room_in_tenths);
            CHECK((then.fit > now.fit || then.room_in_tenths > now.room_in_tenths));
            ++holding;
        }
        for (const sizing::Easing* easing : found.others) {
            CAPTURE(easing->id);
            const Counted then = counted(with(requirement, *easing));
            CHECK(then.fit <= now.fit);
            CHECK(then.room_in_tenths <= now.room_in_tenths);
            ++others;
        }
    }
    CHECK(holding >= 15);
    CHECK(others >= 15);
}

TEST_CASE("what brings the most room comes first, then what brings the most springs") {
    for (const auto& [name, requirement] : test::varied_requirements()) {
        if (name != "latch" && name != "relief") continue;
        const sizing::TightLimits found = tight(requirement);
        REQUIRE(found.holding.size() >= 2);
        for (std::size_t i = 1; i < found.holding.size(); ++i) {
            const sizing::Eased &before = found.holding[i - 1], &after = found.holding[i];
            CHECK(before.room_in_tenths >= after.room_in_tenths);
            if (before.room_in_tenths == after.room_in_tenths) CHECK(before.fit >= after.fit);
        }
    }
}

TEST_CASE("few fit when they are under a thousand or none has room for one load tolerance, and any does") {
    const auto census = [](unsigned long long fit, double room_in_tenths) {
        sizing::Census found;
        found.fit = fit;
        found.map.push_back({1.0 * mm, {}, {{fit, room_in_tenths}}});
        return found;
    };
    CHECK_FALSE(sizing::are_few(census(0, 0.0)));
    CHECK(sizing::are_few(census(1, 30.0)));
    CHECK(sizing::are_few(census(999, 30.0)));
    CHECK_FALSE(sizing::are_few(census(1000, 10.0)));
    CHECK(sizing::are_few(census(1000000, 9.0)));
}
