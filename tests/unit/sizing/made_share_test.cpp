// SPDX-License-Identifier: MIT
// The share of good springs that is counted, against exact integrals where one number alone strays.
#include <algorithm>
#include <cmath>

#include <boost/math/distributions/normal.hpp>

#include <seatload/spring/lean.hpp>
#include <support/check.hpp>

#include "count_a.hpp"
#include "requirement_a.hpp"

using namespace seatload;
using test::CountA;
using test::kRate;
using test::noise;
using test::requirement_a;
using test::wire_a;

namespace {

const boost::math::normal kNormal;

/// Share of the normal curve cut off at three standard deviations that lies below u, in thirds of the tolerance.
double share_below(double u) {
    const double end = cdf(kNormal, 3.0);
    if (u <= -1.0) return 0.0;
    if (u >= 1.0) return 1.0;
    return (cdf(kNormal, 3.0 * u) - (1.0 - end)) / (2.0 * end - 1.0);
}

}  // namespace

TEST_CASE("the share of good springs is the exact integral when the free length alone strays") {
    tolerance::MadeAllowance only;
    only.free_length = 1.5;
    auto r = requirement_a();
    // F1 = R (12 + 1.5 u) from 106 N to 116 N, F2 unbounded.
    r.seated_load = {106.0 * newton, 116.0 * newton};
    r.full_travel_load = {};
    const double low = (106.0 / kRate - 12.0) / 1.5, high = (116.0 / kRate - 12.0) / 1.5;
    const double exact = share_below(high) - share_below(low);
    REQUIRE((exact > 0.5 && exact < 0.95));
    const CountA a(r, only);
    CHECK_THAT(a.share(), WithinAbs(exact, noise(exact)));
    // The same by what is counted of the seated load alone, and its middle 99 of 100.
    CHECK(a.tally.counts[0].broken == a.tally.springs - a.tally.good);
    const auto range = a.counter.corners()[0];
    CHECK_THAT(range.least, WithinRel(kRate * 10.5, 1e-12));
    CHECK_THAT(range.most, WithinRel(kRate * 13.5, 1e-12));
    const double end = cdf(kNormal, 3.0);
    const double z = quantile(kNormal, 0.995 * (2.0 * end - 1.0) + 1.0 - end);
    // A bin is 1/400 of the range, and a quantile of so many springs is good to 5 sqrt(p (1-p)/N)/pdf.
    const double allowed = kRate * (3.0 / 400.0 + 0.5 * 5.0 * std::sqrt(0.005 / CountA::kSprings) / pdf(kNormal, z));
    CHECK_THAT(value_at_share(a.tally.counts[0], range, a.tally.springs, 0.995),
               WithinAbs(kRate * (12.0 + 0.5 * z), allowed));
}

TEST_CASE("the share of good springs is the exact integral when the coil diameter of the piece alone strays") {
    tolerance::MadeAllowance only;
    only.coil_diameter = 0.4;
    auto r = requirement_a();
    r.space.bore.reset();
    // F = F_nominal (24 / (24 + 0.4 u))^3, so that a floor under F1 and a ceiling over F2 bound u.
    r.seated_load = {108.0 * newton, std::nullopt};
    r.full_travel_load = {std::nullopt, 223.0 * newton};
    const double high = (24.0 * std::cbrt(kRate * 12.0 / 108.0) - 24.0) / 0.4;
    const double low = (24.0 * std::cbrt(kRate * 24.0 / 223.0) - 24.0) / 0.4;
    const double exact = share_below(high) - share_below(low);
    REQUIRE((exact > 0.4 && exact < 0.95));
    CHECK_THAT(CountA(r, only).share(), WithinAbs(exact, noise(exact)));
}

TEST_CASE("the share of good springs is the exact integral when tooling alone strays and the bore is tight") {
    tolerance::MadeAllowance only;
    only.lot_coil_diameter = 0.4;
    auto r = requirement_a();
    // The maker keeps the loads; De + its growth must leave the play. Growth (EN 13906-1 cl. 9.11, ends free) is 0.1
    // (m^2
    // - 0.8 m d - 0.2 d^2)/D with m = (L0 - 2d)/n, and n follows D^-3 as the lot is brought in: found by halving here.
    r.limits.bore_clearance = 1.3 * mm;
    r.limits.growth_form = demand::GrowthForm::ends_free;
    const auto clearance = [](double u) {
        const double D = 24.0 + 0.4 * u, n = 6.5 * std::pow(24.0 / D, 3), m = (60.0 - 6.0) / n;
        return 28.5 - (D + 3.0) - 0.1 * (m * m - 0.8 * m * 3.0 - 0.2 * 9.0) / D;
    };
    double low = -1.0, high = 1.0;
    for (int i = 0; i < 60; ++i) (clearance(0.5 * (low + high)) > 1.3 ? low : high) = 0.5 * (low + high);
    const double exact = share_below(low);
    REQUIRE((exact > 0.1 && exact < 0.95));
    CHECK_THAT(CountA(r, only).share(), WithinAbs(exact, noise(exact)));
}

TEST_CASE("what must be there hot and after load loss is raised for the cold spring") {
    tolerance::MadeAllowance only;
    only.free_length = 1.5;
    auto r = requirement_a();
    r.surroundings.temperature = {120.0};
    r.limits.load_loss = Share{0.04};
    r.seated_load = {103.0 * newton, std::nullopt};
    r.full_travel_load = {};
    // G falls by 0.25e-3 a kelvin over 100 K, and 4 % is lost: 103 / (0.975 x 0.96) = 110.04 N cold.
    const double exact = 1.0 - share_below((103.0 / (0.975 * 0.96) / kRate - 12.0) / 1.5);
    REQUIRE((exact > 0.3 && exact < 0.7));
    CHECK_THAT(CountA(r, only).share(), WithinAbs(exact, noise(exact)));
}

TEST_CASE("the share that has room to lean is the exact integral when the tips alone stray") {
    // A spring of D 10, d 1, n 8.5, slim enough to lean with its tips off: L0 40 mm, pressed to 30 mm.
    demand::Requirement r;
    r.limits = demand::school_defaults(spring::School::en_13906);
    r.space.seats = demand::Seats::slides;
    r.space.seated_height = 36.0 * mm;
    r.space.full_travel_height = 33.0 * mm;
    r.limits.half_turn_slack = 0.1;
    const auto demand = check::numbers(r);
    const auto wire = check::numbers(wire_a(), 1.0 * mm, r).value();
    const double moduli = wire.shear_modulus_mpa / wire.young_modulus_mpa;
    // The formula of spring/lean.hpp, which finite elements hold up; active coils are L0 - 2 d long.
    const auto lean = [&](double n) { return spring::sideways_lean(38.0 / n, 10.0, n, 40.0 - 33.0, moduli); };
    r.limits.lean_share = 0.1 * lean(8.5 + 0.025);
    const auto bounded = check::numbers(r);
    const check::Coil coil(bounded, wire, test::tolerances(), 10.0, spring::Ends::closed_ground, 10.5);
    tolerance::MadeOrder order =
        sizing::made_order(coil, 40.0, true, {coil.cold_load_n(40.0, 36.0), coil.cold_load_n(40.0, 33.0)});
    order.tips = 0.05;
    double low = 8.4, high = 8.5;
    for (int i = 0; i < 60; ++i)
        (lean(0.5 * (low + high)) > 10.0 * r.limits.lean_share ? low : high) = 0.5 * (low + high);
    const double exact = share_below(0.025 / 0.05) - share_below((low - 8.5) / 0.05);
    REQUIRE((exact > 0.5 && exact < 0.95));
    const auto quantities = sizing::made_quantities(coil);
    const auto at = std::find_if(quantities.begin(), quantities.end(), [](const auto& q) { return q.id == "lean"; });
    REQUIRE(at != quantities.end());
    tolerance::MadeStrays strays;
    tolerance::MadeSprings made;
    tolerance::MadeColumn values;
    long good = 0;
    for (long first = 0; first < CountA::kSprings; first += static_cast<long>(tolerance::kMadeChunk)) {
        tolerance::draw_strays(17, static_cast<std::uint64_t>(first), strays);
        tolerance::make_springs(order, {}, strays, made);
        at->measure(coil, made, values);
        for (const double left : values) good += left >= at->least ? 1 : 0;
    }
    CHECK_THAT(static_cast<double>(good) / CountA::kSprings, WithinAbs(exact, noise(exact)));
}
