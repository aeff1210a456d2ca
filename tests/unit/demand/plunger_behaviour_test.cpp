// SPDX-License-Identifier: MIT
// The pressures told against the balance of forces solved for the pressure (Boost.Math root finding), at all corners
// and inside.
#include <cmath>

#include <boost/math/tools/toms748_solve.hpp>
#include <seatload/demand/plunger_behaviour.hpp>

#include "random_plunger.hpp"
#include "support/check.hpp"

using namespace seatload;
using demand::Interval;
using demand::PlungerPoint;

namespace {

/// What the oil opens against, friction included, and what it opens with.
struct Moving {
    PlungerPoint p;
    double stroke;
    double F1;
    double F2;
    bool drags;

    double flank() const { return std::tan(p.half_angle_rad - std::atan(p.flank_friction)) - p.bore_friction; }
    double load(double lift) const { return F1 + (F2 - F1) * lift / stroke; }
    double area(double lift) const {
        return lift <= 0.0 ? p.seat_area_mm2 : p.seat_area_mm2 + p.annulus_share * (p.full_area_mm2 - p.seat_area_mm2);
    }
    /// Net force outwards when it is about to move out.
    double out(double pressure, double lift) const {
        const double side = lift <= 0.0 || drags ? p.side_released_n * flank() : 0.0;
        return pressure * area(lift) + side - load(lift) - p.friction_n - p.back_mpa * p.back_area_mm2;
    }
    /// Net force homewards when it is about to move back.
    double home(double pressure, double lift) const {
        return load(lift) + p.back_mpa * p.back_area_mm2 - p.friction_n - pressure * p.full_area_mm2;
    }
};

template <class Force>
double pressure_of(const Force& net) {
    std::uintmax_t steps = 300;
    const auto ends =
        boost::math::tools::toms748_solve(net, -50.0, 50.0, boost::math::tools::eps_tolerance<double>(48), steps);
    return 0.5 * (ends.first + ends.second);
}

struct Seen {
    double low = INFINITY;
    double high = -INFINITY;
    void take(double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    }
    void check(const Interval<double>& told) const {
        CHECK_THAT(told.low, WithinAbs(low, 1e-10 * (1.0 + std::abs(low))));
        CHECK_THAT(told.high, WithinAbs(high, 1e-10 * (1.0 + std::abs(high))));
    }
};

Interval<double> plain(const Interval<Stress>& r) { return {in_mpa(r.low), in_mpa(r.high)}; }

std::vector<PlungerPoint> corners(const demand::PlungerBox& box) {
    std::vector<PlungerPoint> points{box.low};
    for (const demand::PointInput& input : demand::point_inputs()) {
        // neither leak nor drain bears on these pressures
        if (!box.is_range(input.member) || input.key.starts_with("drain") || input.key.starts_with("pressures") ||
            input.key == "side_load.force")
            continue;
        const std::size_t count = points.size();
        for (std::size_t i = 0; i < count; ++i) {
            points.push_back(points[i]);
            points.back().*input.member = box.high.*input.member;
        }
    }
    return points;
}

}  // namespace

TEST_CASE("the pressures told are those at which the forces balance, over all corners") {
    test::Dice dice(31);
    for (int i = 0; i < 60; ++i) {
        const demand::Plunger plunger = test::random_plunger(dice);
        const double F1 = dice.between(1.0, 20.0);
        const double F2 = F1 + dice.between(0.0, 20.0);
        const demand::PlungerBehaviour told =
            demand::behaviour(plunger, {demand::exactly(F1 * newton), demand::exactly(F2 * newton)}, "these");
        const bool drags = plunger.side_load && !plunger.side_load->clear_at_full_travel;
        const double h = in_mm(plunger.stroke);
        Seen crack;
        Seen open;
        Seen starts_back;
        Seen reseats;
        for (const PlungerPoint& point : corners(demand::box_of(plunger))) {
            const Moving m{point, h, F1, F2, drags};
            const double cracks = pressure_of([&](double p) { return m.out(p, 0.0); });
            crack.take(cracks);
            open.take(std::max(cracks, pressure_of([&](double p) { return m.out(p, h); })));
            starts_back.take(pressure_of([&](double p) { return m.home(p, h); }));
            reseats.take(pressure_of([&](double p) { return m.home(p, 0.0); }));
        }
        INFO("seed 31, plunger " << i);
        crack.check(plain(told.crack));
        open.check(plain(told.fully_open));
        starts_back.check(plain(told.return_start));
        reseats.check(plain(told.reseat));
    }
}

TEST_CASE("it snaps open where no lift holds it at the pressure that cracked it") {
    test::Dice dice(37);
    int snaps = 0;
    int stays = 0;
    for (int i = 0; i < 400; ++i) {
        demand::Plunger plunger = test::random_plunger(dice);
        plunger.side_load.reset();  // one that bears on part of the travel only is not the textbook's
        const demand::PlungerBox box = demand::box_of(plunger);
        const double F1 = dice.between(1.0, 20.0);
        const double F2 = F1 * dice.between(1.0, 6.0);
        const demand::PlungerBehaviour told =
            demand::behaviour(plunger, {demand::exactly(F1 * newton), demand::exactly(F2 * newton)}, "these");
        for (int k = 0; k < 10; ++k) {
            const Moving m{test::random_point(box, dice), in_mm(plunger.stroke), F1, F2, false};
            const double cracks = pressure_of([&](double p) { return m.out(p, 0.0); });
            bool is_held = false;
            for (int step = 1; step <= 200; ++step) is_held = is_held || m.out(cracks, m.stroke * step / 200.0) < -1e-9;
            if (told.always_snaps) CHECK_FALSE(is_held);
            if (told.never_snaps) CHECK(is_held);
            snaps += told.always_snaps ? 1 : 0;
            stays += told.never_snaps ? 1 : 0;
        }
    }
    CHECK(snaps > 200);
    CHECK(stays > 200);
}

TEST_CASE("the share of pressure told lets it just snap open") {
    test::Dice dice(41);
    int looked_at = 0;
    for (int i = 0; i < 300; ++i) {
        demand::Plunger plunger = test::random_plunger(dice);
        plunger.side_load.reset();
        plunger.back.reset();
        plunger.seat.area = demand::exactly(plunger.seat.area.low);
        plunger.full.area = demand::exactly(plunger.full.area.low);
        plunger.friction = demand::exactly(plunger.friction.low);
        const double F1 = dice.between(1.0, 20.0);
        const demand::SpringLoads loads{demand::exactly(F1 * newton),
                                        demand::exactly(F1 * dice.between(1.0, 4.0) * newton)};
        const double share = demand::behaviour(plunger, loads, "these").least_share.high;
        if (share <= 0.01 || share >= 0.99) continue;
        plunger.annulus_share = demand::exactly(share + 1e-9);
        CHECK(demand::behaviour(plunger, loads, "these").always_snaps);
        plunger.annulus_share = demand::exactly(share - 1e-9);
        CHECK(demand::behaviour(plunger, loads, "these").never_snaps);
        ++looked_at;
    }
    CHECK(looked_at > 50);
}

TEST_CASE("pressures along the lift run from cracking to full travel and back to the seat") {
    test::Dice dice(43);
    for (int i = 0; i < 50; ++i) {
        const demand::Plunger plunger = test::random_plunger(dice);
        const double F1 = dice.between(1.0, 20.0);
        const demand::SpringLoads loads{demand::exactly(F1 * newton),
                                        demand::exactly((F1 + dice.between(0.0, 20.0)) * newton)};
        const demand::PlungerBehaviour told = demand::behaviour(plunger, loads, "these");
        CHECK(demand::opening_pressure(plunger, loads, 0.0 * mm) == told.crack);
        CHECK(demand::closing_pressure(plunger, loads, plunger.stroke) == told.return_start);
        CHECK_THAT(in_mpa(demand::closing_pressure(plunger, loads, 0.0 * mm).high),
                   WithinRel(in_mpa(told.reseat.high), 1e-12));
        const Interval<Stress> half = demand::opening_pressure(plunger, loads, 0.5 * plunger.stroke);
        const Interval<Stress> end = demand::opening_pressure(plunger, loads, plunger.stroke);
        CHECK(half.low <= end.low + 1e-12 * MPa);
        CHECK(std::max(told.crack.high, end.high) == told.fully_open.high);
    }
}
