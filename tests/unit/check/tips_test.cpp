// SPDX-License-Identifier: MIT
// How nearly end tips are ordered half a turn apart, held to the rule of lean on springs built with other coils.
#include <cmath>
#include <limits>

#include <seatload/check/lean_bounds.hpp>
#include <seatload/check/rule.hpp>
#include <seatload/check/tips.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>
#include <support/spring_a.hpp>

using namespace seatload;
using test::wire_a;

namespace {

/// A latch spring of 1 mm wire that is pressed to 20 mm in a bore, its far seat sliding.
struct Latch {
    explicit Latch(double bore_mm) {
        r.limits = demand::school_defaults(spring::School::en_13906);
        r.space.seats = demand::Seats::slides;
        r.space.bore = demand::Fit{bore_mm * mm, bore_mm * mm, bore_mm * mm};
        r.space.seated_height = 24.0 * mm;
        r.space.full_travel_height = 20.0 * mm;
        demand = check::numbers(r);
        wire = check::numbers(wire_a(), 1.0 * mm, r).value();
    }
    check::Coil coil(double n) const {
        return {demand, wire, test::tolerances(), 10.0, spring::Ends::closed_ground, n + 2.0};
    }
    bool has_room(double n, double L0) const {
        for (const check::Rule& rule : check::rules())
            if (rule.id == "lean") return check::passes(rule, coil(n), L0);
        FAIL("no rule of lean");
        return false;
    }

    demand::Requirement r;
    check::DemandNumbers demand;
    check::WireNumbers wire;
};

constexpr double kDegree = 1.0 / 360.0;
constexpr double kUsual = 36.0 * kDegree;  // common practice, no source

}  // namespace

TEST_CASE("tips are ordered as closely as lean wants, in whole steps of five degrees that a winder can hold") {
    bool seen_usual = false, seen_closer = false, seen_never = false;
    for (const double bore : {11.4, 11.6, 11.8, 12.2, 13.0})
        for (const double L0 : {24.5, 26.0, 27.0, 28.0, 29.0})
            for (const double n : {4.5, 6.5}) {
                const Latch latch(bore);
                if (!latch.has_room(n, L0)) continue;
                CAPTURE(bore, L0, n);
                const auto tips = check::tips(latch.coil(n), L0);
                REQUIRE(tips);
                CHECK(tips->usual == kUsual);
                const auto both = [&](double turns) {
                    return latch.has_room(n - turns, L0) && latch.has_room(n + turns, L0);
                };
                CHECK(tips->is_enough() == both(tips->ordered));
                CHECK(check::leans_too_far(latch.coil(n), L0) == !both(15.0 * kDegree));
                CHECK(tips->is_enough() == !check::leans_too_far(latch.coil(n), L0));
                seen_usual = seen_usual || !tips->is_closer();
                seen_never = seen_never || !tips->is_enough();
                if (!tips->is_closer()) continue;
                CHECK_FALSE(both(kUsual));
                const double steps = tips->ordered / (5.0 * kDegree);
                CHECK_THAT(steps, WithinAbs(std::round(steps), 1e-9));
                CHECK(steps >= 3.0 - 1e-9);
                const double next = std::min(kUsual, tips->ordered + 5.0 * kDegree);
                CHECK_FALSE(both(next));
                CHECK(both(0.999 * tips->leaves_room));
                CHECK_FALSE(both(1.001 * tips->leaves_room + 1e-6));
                seen_closer = seen_closer || tips->is_enough();
            }
    CHECK(seen_usual);
    CHECK(seen_closer);
    CHECK(seen_never);
}

TEST_CASE("tips that need not be half a turn apart are not ordered") {
    const Latch latch(13.0);
    CHECK_FALSE(check::tips(latch.coil(6.0), 24.5));
    demand::Requirement held = latch.r;
    held.space.seats = demand::Seats::fixed;
    const auto demand = check::numbers(held);
    const check::Coil coil(demand, latch.wire, test::tolerances(), 10.0, spring::Ends::closed_ground, 8.5);
    CHECK_FALSE(check::tips(coil, 24.5));
    CHECK_FALSE(check::leans_too_far(coil, 60.0));
}

TEST_CASE("without half a turn over it leans too far unless whole turns have room") {
    for (const double bore : {11.6, 12.2, 13.0, 14.0})
        for (const double L0 : {24.5, 26.0, 28.0}) {
            const Latch latch(bore);
            CAPTURE(bore, L0);
            // 6.2 turns may come out as 6.
            CHECK(check::leans_too_far(latch.coil(6.2), L0) == !latch.has_room(6.0, L0));
        }
}

TEST_CASE("a spring may be as long as leaves its lean room with the tips at either end of what is ordered") {
    bool seen_bound = false, seen_closer = false, seen_none = false;
    for (const double bore : {11.4, 11.6, 11.8, 12.2, 13.0})
        for (const double L0 : {24.5, 26.0, 27.0, 28.0})
            for (const double n : {4.5, 6.5}) {
                const Latch latch(bore);
                if (!latch.has_room(n, L0)) continue;
                CAPTURE(bore, L0, n);
                const auto tips = check::tips(latch.coil(n), L0);
                const auto bounds = check::lean_bounds(latch.coil(n), L0, tips);
                CHECK(bounds.has_value() == tips->is_enough());
                seen_none = seen_none || !bounds;
                if (!bounds) continue;
                const auto both = [&](double turns, double length) {
                    return latch.has_room(n - turns, length) && latch.has_room(n + turns, length);
                };
                CHECK(both(tips->ordered, bounds->longest_mm - 1e-6));
                CHECK_FALSE(both(tips->ordered, bounds->longest_mm + 1e-6));
                CHECK(both(tips->ordered, check::printed_bound(bounds->longest_mm, L0)));
                seen_bound = true;
                if (!bounds->closer) continue;
                const auto& closer = *bounds->closer;
                CHECK(closer.tips < tips->ordered - 1e-9);
                CHECK(closer.tips >= 15.0 * kDegree - 1e-9);  // what a winder holds (estimate)
                const double steps = closer.tips / (5.0 * kDegree);
                CHECK_THAT(steps, WithinAbs(std::round(steps), 1e-9));
                CHECK(closer.longest_mm > bounds->longest_mm);
                CHECK(both(closer.tips, closer.longest_mm - 1e-6));
                CHECK_FALSE(both(closer.tips, closer.longest_mm + 1e-6));
                seen_closer = true;
            }
    CHECK(seen_bound);
    CHECK(seen_closer);
    CHECK(seen_none);
}

TEST_CASE("a spring whose tips stand anyhow may be as long as leaves whole turns their room") {
    for (const double bore : {13.0, 14.0}) {
        const Latch latch(bore);
        const auto bounds = check::lean_bounds(latch.coil(6.2), 24.5, std::nullopt);
        REQUIRE(bounds);
        CHECK_FALSE(bounds->closer);
        // 6.2 turns may be a quarter of a turn off (JIS B 2707), whole ones in between.
        const auto all = [&](double length) {
            return latch.has_room(5.95, length) && latch.has_room(6.0, length) && latch.has_room(6.45, length);
        };
        CHECK(all(bounds->longest_mm - 1e-6));
        CHECK_FALSE(all(bounds->longest_mm + 1e-6));
    }
}

TEST_CASE("how long a spring may be is said in tenths, rounded down but not below the length drawn") {
    CHECK(check::printed_bound(20.19, 19.8) == 20.1);
    CHECK(check::printed_bound(19.86, 19.85) == 19.85);
    CHECK(check::lean_bounds_in_words({20.19, std::nullopt}, 19.8) == "For that L0 must stay at or below 20.1 mm.");
    CHECK(check::lean_bounds_in_words({19.86, {{15.0 * kDegree, 20.37}}}, 19.8) ==
          "For that L0 must stay at or below 19.8 mm, or 20.3 mm where the tips are within ±15°.");
    CHECK(check::lean_bounds_in_words({std::numeric_limits<double>::infinity(), std::nullopt}, 19.8).empty());
}

TEST_CASE("what is said of the tips names their tolerance, the lean it lets in and its room") {
    check::Tips tips{36.0 * kDegree, 20.0 * kDegree, 23.46 * kDegree, 0.55, 0.6};
    CHECK(check::tips_apart(tips) == "180° ±20°");
    CHECK(check::tips_in_words(tips) ==
          "End tips 180° ±20° apart, not ±36° as is usual: with its tips so far off the spring leans up to 0.55 mm, "
          "where there is room for 0.6 mm; from ±23.4° on there is no room.");
    tips = {36.0 * kDegree, 15.0 * kDegree, 1.16 * kDegree, 0.93, 0.27};
    CHECK(check::tips_in_words(tips) ==
          "End tips 180° ±15° apart, as close as a winder holds them (an estimate): even so the spring may lean up to "
          "0.93 mm, where there is room for 0.27 mm, and rub. Room is left up to ±1.1°: try the first pieces in the "
          "mechanism, or take a spring with more.");
    tips = {36.0 * kDegree, 36.0 * kDegree, 36.0 * kDegree, 0.21, 0.6};
    CHECK(check::tips_in_words(tips) ==
          "End tips 180° ±36° apart: with its tips so far off the spring leans up to 0.21 mm, where there is room for "
          "0.6 mm.");
    CHECK(check::tips_in_words({}).empty());
}

TEST_CASE("what a spec orders of its tips stays, whatever would be ordered without it") {
    bool seen_enough = false, seen_not = false;
    for (const double bore : {11.4, 11.8, 13.0})
        for (const double L0 : {24.5, 26.0, 28.0})
            for (const double degrees : {10.0, 15.0, 22.5, 36.0, 50.0}) {
                Latch latch(bore);
                if (!latch.has_room(4.5, L0)) continue;
                CAPTURE(bore, L0, degrees);
                latch.demand.limits.tips_degrees = degrees;
                const double turns = degrees * kDegree;
                const auto tips = check::tips(latch.coil(4.5), L0);
                REQUIRE(tips);
                CHECK_THAT(tips->ordered, WithinAbs(turns, 1e-15));
                const bool both = latch.has_room(4.5 - turns, L0) && latch.has_room(4.5 + turns, L0);
                CHECK(tips->is_enough() == both);
                CHECK(check::leans_too_far(latch.coil(4.5), L0) == !both);
                (both ? seen_enough : seen_not) = true;
            }
    CHECK(seen_enough);
    CHECK(seen_not);
}
