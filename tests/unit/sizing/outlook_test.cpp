// SPDX-License-Identifier: MIT
// What tolerances do to a spring: the same by any number of threads, and in order by grade.
#include <seatload/sizing/outlook.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>
#include <support/spring_a.hpp>

#include "requirement_a.hpp"

using namespace seatload;
using test::requirement_a;
using test::spring_a;
using test::wire_a;

TEST_CASE("an outlook is the same with one thread and with four, and again") {
    sizing::OutlookOptions options;
    options.springs = 50001;
    const auto grade = wire_a();
    const auto requirement = requirement_a();
    const sizing::OutlookSubject subject{spring_a(), grade, requirement, test::tolerances(), {}, {}, {}};
    options.threads = 1;
    const auto one = sizing::outlook(subject, options);
    REQUIRE(one);
    for (const unsigned threads : {4u, 4u, 0u}) {
        options.threads = threads;
        const auto other = sizing::outlook(subject, options);
        for (std::size_t g = 0; g < 3; ++g) {
            CHECK(one->by_grade[g].good == other->by_grade[g].good);
            for (std::size_t q = 0; q < one->by_grade[g].quantities.size(); ++q) {
                const auto& a = one->by_grade[g].quantities[q];
                const auto& b = other->by_grade[g].quantities[q];
                CHECK(a.mean == b.mean);
                CHECK(a.deviation == b.deviation);
                CHECK(a.middle.least == b.middle.least);
                CHECK(a.broken == b.broken);
            }
        }
    }
    options.seed = 2;
    CHECK(one->by_grade[0].quantities[0].mean != sizing::outlook(subject, options)->by_grade[0].quantities[0].mean);
}

TEST_CASE("coarser grades keep fewer springs, and the coarsest that keeps 99 % is named") {
    const auto grade = wire_a();
    const auto requirement = requirement_a();
    sizing::OutlookOptions options;
    options.springs = 100000;
    const auto found = sizing::outlook(
        {spring_a(), grade, requirement, test::tolerances(), {}, sizing::ToleranceGrades{1, 2}, {}}, options);
    REQUIRE(found);
    CHECK(found->by_grade[0].share() >= found->by_grade[1].share());
    CHECK(found->by_grade[1].share() > found->by_grade[2].share());
    std::optional<int> coarsest;
    for (int g = 1; g <= 3; ++g)
        if (found->by_grade[static_cast<std::size_t>(g - 1)].good >= 99000) coarsest = g;
    CHECK(found->coarsest() == coarsest);
    REQUIRE(found->stated);
    CHECK(found->stated->share() <= found->by_grade[0].share());
    CHECK(found->stated->share() >= found->by_grade[1].share());
    for (const auto& each : found->by_grade)
        for (const auto& q : each.quantities) {
            INFO(q.id);
            CHECK(q.worst.least <= q.middle.least);
            CHECK(q.middle.least <= q.middle.most);
            CHECK(q.middle.most <= q.worst.most);
            CHECK(q.broken <= each.springs - each.good);
        }
}

TEST_CASE("a spring that does not press on both seats has no outlook") {
    const auto grade = wire_a();
    auto requirement = requirement_a();
    requirement.space.seated_height = 61.0 * mm;
    CHECK_FALSE(sizing::outlook({spring_a(), grade, requirement, test::tolerances()}));
    requirement.space.seated_height = requirement.space.full_travel_height;
    CHECK_FALSE(sizing::outlook({spring_a(), grade, requirement, test::tolerances()}));
}
