// SPDX-License-Identifier: MIT
#include <cmath>
#include <set>

#include <seatload/demand/budget.hpp>
#include <seatload/demand/hydraulics.hpp>

#include "random_plunger.hpp"
#include "support/check.hpp"

using namespace seatload;
using demand::Budget;
using demand::exactly;
using demand::Interval;
using demand::Plunger;

namespace {

/// A plunger whose loads are reckoned by hand below: A1 = 50 mm2, A2 = 100 mm2.
Plunger plain_plunger() {
    Plunger p;
    p.seat.area = exactly(50.0 * square_mm);
    p.full.area = exactly(100.0 * square_mm);
    p.stroke = 6.0 * mm;
    p.friction = {0.2 * newton, 0.5 * newton};
    p.pressures.release = exactly(0.16 * MPa);
    p.pressures.hold_open = exactly(0.12 * MPa);
    p.pressures.leak = Interval<Stress>{0.0 * MPa, 0.05 * MPa};
    return p;
}

const demand::BudgetLimit& limit_of(const Budget& budget, std::string_view id) {
    for (const demand::BudgetLimit& limit : budget.limits)
        if (limit.id == id) return limit;
    FAIL("no limit " << id);
    return budget.limits.front();
}

bool has_limit(const Budget& budget, std::string_view id) {
    for (const demand::BudgetLimit& limit : budget.limits)
        if (limit.id == id) return true;
    return false;
}

double at_least(const demand::LoadBand& band) { return band.at_least ? in_newton(*band.at_least) : 0.0; }
double at_most(const demand::LoadBand& band) { return in_newton(band.at_most.value()); }

/// Widens a range at both ends.
template <class Q>
void widen(Interval<Q>& range, double share) {
    range.low = range.low * (1.0 - share);
    range.high = range.high * (1.0 + share);
}

}  // namespace

TEST_CASE("a budget reckoned by hand comes out") {
    const Budget budget = demand::plunger_budget(plain_plunger());
    CHECK_THAT(in_newton(limit_of(budget, "holds_leak").value), WithinRel(0.05 * 50.0 - 0.2, 1e-12));    // 2.3 N
    CHECK_THAT(in_newton(limit_of(budget, "comes_home").value), WithinRel(0.5, 1e-12));                  // friction
    CHECK_THAT(in_newton(limit_of(budget, "lets_go").value), WithinRel(0.16 * 50.0 - 0.5, 1e-12));       // 7.5 N
    CHECK_THAT(in_newton(limit_of(budget, "opens_fully").value), WithinRel(0.16 * 100.0 - 0.5, 1e-12));  // 15.5 N
    CHECK_THAT(in_newton(limit_of(budget, "stays_open").value), WithinRel(0.12 * 100.0 + 0.2, 1e-12));   // 12.2 N
    CHECK(at_least(budget.seated_rounded) == 2.3);
    CHECK(at_most(budget.seated_rounded) == 7.5);
    CHECK(at_most(budget.full_travel_rounded) == 12.2);
    CHECK_FALSE(budget.full_travel_rounded.at_least.has_value());  // F2 is not below F1 anyway
    CHECK(budget.is_possible());
    CHECK(limit_of(budget, "holds_leak").bites);
    CHECK_FALSE(limit_of(budget, "comes_home").bites);
    CHECK_FALSE(has_limit(budget, "holds_side_load"));
    CHECK_FALSE(has_limit(budget, "lets_go_first"));
}

TEST_CASE("margins make what pushes it off larger, and what the oil pushes with smaller") {
    Plunger p = plain_plunger();
    p.margins = {Share{0.1}, Share{0.2}};
    const Budget budget = demand::plunger_budget(p);
    CHECK_THAT(in_newton(limit_of(budget, "holds_leak").value), WithinRel(1.1 * 0.05 * 50.0 - 0.2, 1e-12));
    CHECK_THAT(in_newton(limit_of(budget, "lets_go").value), WithinRel(0.8 * 0.16 * 50.0 - 0.5, 1e-12));
    CHECK_THAT(in_newton(limit_of(budget, "stays_open").value), WithinRel(0.8 * 0.12 * 100.0 + 0.2, 1e-12));
}

TEST_CASE("back pressure helps to hold at its least, and hinders release at its most") {
    Plunger p = plain_plunger();
    p.back = demand::BackPressure{{0.002 * MPa, 0.006 * MPa}, {{}, exactly(100.0 * square_mm)}};
    const Budget budget = demand::plunger_budget(p);
    CHECK_THAT(in_newton(limit_of(budget, "holds_leak").value), WithinRel(2.3 - 0.2, 1e-12));
    CHECK_THAT(in_newton(limit_of(budget, "lets_go").value), WithinRel(7.5 - 0.6, 1e-12));
    CHECK_THAT(in_newton(limit_of(budget, "comes_home").value), WithinRel(0.5 - 0.2, 1e-12));
    CHECK_THAT(in_newton(limit_of(budget, "stays_open").value), WithinRel(12.2 - 0.6, 1e-12));
}

TEST_CASE("friction of a side load is not counted on to hold") {
    Plunger p = plain_plunger();
    demand::SideLoad side;
    side.parked = {0.0 * newton, 100.0 * newton};
    side.half_angle = exactly(0.0 * radian);
    side.flank_friction = {0.1, 0.2};
    p.side_load = side;
    const Budget budget = demand::plunger_budget(p);
    CHECK_THAT(in_newton(limit_of(budget, "holds_side_load").value), WithinAbs(-0.2, 1e-12));
    CHECK_THAT(in_newton(limit_of(budget, "holds_both").value), WithinRel(2.3, 1e-12));
    REQUIRE(budget.self_holding.has_value());
    CHECK_THAT(in_base_unit(budget.self_holding->low), WithinRel(std::atan(0.1), 1e-12));
}

TEST_CASE("a side load still there at release drags at the plunger") {
    Plunger p = plain_plunger();
    demand::SideLoad side;
    side.released = {0.0 * newton, 10.0 * newton};
    side.half_angle = exactly(0.0 * radian);
    side.flank_friction = exactly(0.1);
    side.bore_friction = exactly(0.05);
    p.side_load = side;
    const Budget drags = demand::plunger_budget(p);
    CHECK_THAT(in_newton(limit_of(drags, "lets_go").value), WithinRel(7.5 - 10.0 * 0.15, 1e-12));
    CHECK_THAT(in_newton(limit_of(drags, "opens_fully").value), WithinRel(15.5 - 10.0 * 0.15, 1e-12));
    p.side_load->clear_at_full_travel = true;
    CHECK_THAT(in_newton(limit_of(demand::plunger_budget(p), "opens_fully").value), WithinRel(15.5, 1e-12));
}

TEST_CASE("the terms of a limit add up to it, and their shares to one") {
    test::Dice dice(47);
    for (int i = 0; i < 50; ++i)
        for (const demand::BudgetLimit& limit : demand::plunger_budget(test::random_plunger(dice)).limits) {
            if (!std::isfinite(in_newton(limit.value)) || std::abs(in_newton(limit.value)) < 1e-3) continue;
            double sum = 0.0;
            double shares = 0.0;
            for (const demand::BudgetTerm& term : limit.terms) {
                sum += in_newton(term.value);
                shares += term.share;
            }
            INFO("seed 47, plunger " << i << ", " << limit.id);
            CHECK_THAT(sum, WithinAbs(in_newton(limit.value), 1e-9 * (1.0 + std::abs(sum))));
            CHECK_THAT(shares, WithinAbs(1.0, 1e-6));
        }
}

TEST_CASE("wider ranges never widen a band", "[slow]") {
    test::Dice dice(53);
    for (int i = 0; i < 80; ++i) {
        Plunger p = test::random_plunger(dice);
        p.drain.reset();  // its limits share what they cost between both loads
        const Budget narrow = demand::plunger_budget(p);
        widen(p.friction, 0.2);
        widen(p.pressures.release, 0.1);
        widen(p.pressures.residual, 0.3);
        widen(p.seat.area, 0.02);
        if (p.side_load) widen(p.side_load->parked, 0.2);
        if (p.pressures.leak) widen(*p.pressures.leak, 0.2);
        const Budget wide = demand::plunger_budget(p);
        INFO("seed 53, plunger " << i);
        CHECK(at_least(wide.seated) >= at_least(narrow.seated));
        CHECK(at_most(wide.seated) <= at_most(narrow.seated));
        CHECK(at_least(wide.full_travel) >= at_least(narrow.full_travel));
        CHECK(at_most(wide.full_travel) <= at_most(narrow.full_travel));
    }
}

TEST_CASE("each cause moves its end of a band one way only") {
    test::Dice dice(59);
    for (int i = 0; i < 80; ++i) {
        Plunger p = test::random_plunger(dice);
        const Budget before = demand::plunger_budget(p);
        if (!before.is_possible()) continue;
        Plunger more = p;
        more.pressures.leak =
            Interval<Stress>{0.0 * MPa, (p.pressures.leak ? p.pressures.leak->high : 0.0 * MPa) + 0.01 * MPa};
        CHECK(at_least(demand::plunger_budget(more).seated) >= at_least(before.seated));
        more = p;
        more.pressures.release = {p.pressures.release.low + 0.01 * MPa, p.pressures.release.high + 0.01 * MPa};
        CHECK(at_most(demand::plunger_budget(more).seated) >= at_most(before.seated));
        more = p;
        more.margins.hold = Share{p.margins.hold.value + 0.05};
        CHECK(at_least(demand::plunger_budget(more).seated) >= at_least(before.seated));
        more = p;
        more.margins.release = Share{p.margins.release.value + 0.05};
        CHECK(at_most(demand::plunger_budget(more).full_travel) <= at_most(before.full_travel));
    }
}

TEST_CASE("any pair of loads in the bands brings the plunger home in time", "[slow]") {
    test::Dice dice(61);
    int looked_at = 0;
    for (int i = 0; i < 150; ++i) {
        Plunger p = test::random_plunger(dice);
        if (!p.drain) continue;
        const Budget budget = demand::plunger_budget(p);
        if (!budget.is_possible()) continue;
        for (int k = 0; k < 5; ++k) {
            const double F1 = dice.between(at_least(budget.seated), at_most(budget.seated));
            const double F2 = dice.between(std::max(F1, at_least(budget.full_travel)), at_most(budget.full_travel));
            if (F2 < F1) continue;
            const Budget with =
                demand::plunger_budget(p, demand::SpringLoads{exactly(F1 * newton), exactly(F2 * newton)});
            const auto& time = with.behaviours.back().cold_return;
            INFO("seed 61, plunger " << i << ": F1 = " << F1 << ", F2 = " << F2);
            REQUIRE(time.has_value());
            CHECK(time->high <= p.drain->longest_time * (1.0 + 1e-9));
            ++looked_at;
        }
    }
    CHECK(looked_at > 20);
}

TEST_CASE("a leak that holds against no release is a contradiction, told with both loads and ways out that are true") {
    Plunger p = plain_plunger();
    p.pressures.leak = exactly(0.2 * MPa);
    const Budget budget = demand::plunger_budget(p);
    REQUIRE(budget.contradictions.size() == 1);
    const demand::Contradiction& told = budget.contradictions.front();
    CHECK(told.words ==
          "No seated load can do both: to stay shut against leak pressure it must be at least 9.8 N, to let go at the "
          "lowest release pressure it may be at most 7.5 N.");
    CHECK(budget.limits[told.lower].id == "holds_leak");
    CHECK(budget.limits[told.upper].id == "lets_go");
    CHECK(
        told.ways_out ==
        "Any one of these alone would mend it: release pressure at least 2.06 bar (now 1.6 bar); leak pressure at most "
        "1.54 bar (now 2 bar).");
    Plunger mended = p;
    mended.pressures.leak = exactly(0.154 * MPa);
    CHECK(demand::plunger_budget(mended).is_possible());
    mended.pressures.leak = exactly(0.155 * MPa);
    CHECK_FALSE(demand::plunger_budget(mended).is_possible());
    mended = p;
    mended.pressures.release = exactly(0.206 * MPa);
    CHECK(demand::plunger_budget(mended).is_possible());
    mended.pressures.release = exactly(0.205 * MPa);
    CHECK_FALSE(demand::plunger_budget(mended).is_possible());
}

TEST_CASE("a full-travel load below what the seat needs is a contradiction, for a spring pushes harder compressed") {
    Plunger p = plain_plunger();
    p.pressures.leak = exactly(0.14 * MPa);
    p.pressures.hold_open = exactly(0.06 * MPa);  // (0.06 * 100 + 0.2) N = 6.2 N; the seat needs (0.14 * 50 - 0.2) N
    const Budget budget = demand::plunger_budget(p);
    REQUIRE(budget.contradictions.size() == 1);
    CHECK(
        budget.contradictions.front().words ==
        "No full-travel load can do both: to push no less than at its seat it must be at least 6.8 N, to stay open at "
        "the lowest holding pressure it may be at most 6.2 N.");
}

TEST_CASE("friction that no release pressure overcomes leaves no load at all") {
    Plunger p = plain_plunger();
    p.pressures.leak.reset();
    p.friction = exactly(9.0 * newton);
    const Budget budget = demand::plunger_budget(p);
    REQUIRE_FALSE(budget.contradictions.empty());
    CHECK(budget.contradictions.front().words ==
          "No seated load is small enough: to let go at the lowest release pressure it may be at most -1 N, and no "
          "compression spring pulls.");
}

TEST_CASE("bands are rounded inwards, small ones finer, and never to nothing") {
    Plunger p = plain_plunger();
    p.friction = exactly(0.0 * newton);
    p.pressures.leak = exactly(0.0472 * MPa);     // 2.36 N
    p.pressures.release = exactly(0.1592 * MPa);  // 7.96 N
    Budget budget = demand::plunger_budget(p);
    CHECK(at_least(budget.seated_rounded) == 2.4);
    CHECK(at_most(budget.seated_rounded) == 7.9);
    p.pressures.leak = exactly(0.00123 * MPa);  // 0.0615 N
    budget = demand::plunger_budget(p);
    CHECK(at_least(budget.seated_rounded) == 0.062);
    p.pressures.leak = exactly(0.1586 * MPa);  // 7.93 N to 7.96 N: no tenth lies between
    budget = demand::plunger_budget(p);
    CHECK(budget.is_possible());
    CHECK_THAT(at_least(budget.seated_rounded), WithinRel(7.93, 1e-12));
    CHECK_THAT(at_most(budget.seated_rounded), WithinRel(7.96, 1e-12));
}

TEST_CASE("what was put in from memory or by estimate marks the limits it bears on, and no others") {
    Plunger p = plain_plunger();
    p.trust.leakage = wire::Evidence::estimate;
    p.trust.pressures = wire::Evidence::memory;
    const Budget budget = demand::plunger_budget(p);
    CHECK(limit_of(budget, "holds_leak").evidence == wire::Evidence::estimate);
    CHECK(limit_of(budget, "lets_go").evidence == wire::Evidence::memory);
    CHECK(limit_of(budget, "comes_home").evidence == wire::Evidence::given);  // there is no residual pressure
    CHECK(demand::trust_words(wire::Evidence::given).empty());
}

TEST_CASE("every member of a point is told of once, and is one of the plunger's ranges") {
    std::set<std::string_view> symbols;
    for (const demand::PointInput& input : demand::point_inputs()) symbols.insert(input.symbol);
    CHECK(symbols.size() == demand::point_inputs().size());
    CHECK(sizeof(demand::PlungerPoint) == demand::point_inputs().size() * sizeof(double));
}

TEST_CASE("a limit that stands on the least seated load is trusted no more than that load") {
    Plunger p = plain_plunger();
    CHECK(limit_of(demand::plunger_budget(p), "above_seated").evidence == wire::Evidence::given);
    p.trust.back = wire::Evidence::estimate;  // counts for nothing while there is no back pressure
    CHECK(limit_of(demand::plunger_budget(p), "above_seated").evidence == wire::Evidence::given);
    p.trust.leakage = wire::Evidence::estimate;  // the leak pressure bounds F1 from below, and so F2 >= F1
    const Budget budget = demand::plunger_budget(p);
    CHECK(limit_of(budget, "holds_leak").evidence == wire::Evidence::estimate);
    CHECK(limit_of(budget, "above_seated").evidence == wire::Evidence::estimate);
}
