// SPDX-License-Identifier: MIT
#include <seatload/demand/broken_limits.hpp>

#include <string>
#include <vector>

#include "support/check.hpp"

namespace seatload::test {
namespace {

using demand::exactly;
using Ids = std::vector<std::string>;

demand::Plunger plunger() {
    demand::Plunger p;
    p.seat.area = exactly(50.0 * square_mm);
    p.full.area = exactly(100.0 * square_mm);
    p.stroke = 6.0 * mm;
    p.friction = exactly(0.5 * newton);
    p.pressures.release = exactly(0.16 * MPa);
    p.pressures.hold_open = exactly(0.12 * MPa);
    p.pressures.leak = exactly(0.05 * MPa);
    return p;
}

// The gap lets pi D c^3 / (12 mu L) = 10 472 mm3/s per MPa through: to be home in 1 s, the logarithmic mean of the two
// net loads must be A2^2 h / (g t) = 100^2 6 / 10 472 = 5.7296 N (by hand).
demand::Plunger plunger_with_drain() {
    demand::Plunger p = plunger();
    demand::Drain drain;
    drain.gap.diameter = exactly(12.0 * mm);
    drain.gap.clearance = exactly(0.2 * mm);
    drain.gap.length = exactly(3.0 * mm);
    drain.gap.viscosity = exactly(Viscosity::from_value(8e-7));
    drain.longest_time = Time::from_value(1.0);
    p.drain = drain;
    return p;
}

Ids broken(const demand::Plunger& plunger, double F1, double F2) {
    const demand::Budget budget = demand::plunger_budget(plunger);
    Ids ids;
    for (const std::size_t i : demand::broken_limits(plunger, budget, {exactly(F1 * newton), exactly(F2 * newton)}))
        ids.emplace_back(budget.limits[i].id);
    return ids;
}

}  // namespace

TEST_CASE("a spring breaks the limits its loads lie beyond and no others") {
    CHECK(broken(plunger(), 2.0, 12.0) == Ids{});  // 0.05 MPa on 50 mm2, less 0.5 N of friction, exactly
    CHECK(broken(plunger(), 1.9, 12.0) == Ids{"holds_leak"});
    CHECK(broken(plunger(), 7.5, 12.5) == Ids{});  // 0.16 MPa on 50 mm2 less 0.5 N; 0.12 MPa on 100 mm2 and 0.5 N
    CHECK(broken(plunger(), 7.6, 12.6) == Ids{"lets_go", "stays_open"});
}

TEST_CASE("a spring that lies below the band for the time home may be home in time by its other load") {
    // nets 2.5 N and 11.5 N: mean 9 / ln 4.6 = 5.897 N, 0.972 s; nets 2.0 N and 11.5 N: 9.5 / ln 5.75 = 5.431 N, 1.055
    // s
    const demand::Plunger p = plunger_with_drain();
    CHECK(broken(p, 3.0, 12.0) == Ids{});
    CHECK(broken(p, 2.5, 12.0) == Ids{"seated_in_time"});
    for (const demand::BudgetLimit& limit : demand::plunger_budget(p).limits)
        if (limit.id == "seated_in_time") CHECK(in_newton(limit.value) > 3.0);
}

}  // namespace seatload::test
