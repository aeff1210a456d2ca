// SPDX-License-Identifier: MIT
// Every limit against the balance of forces on the plunger, written down anew: at the corner that bites the balance is
// just met, at no other point inside the ranges is it broken.
#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

#include <boost/math/quadrature/tanh_sinh.hpp>
#include <seatload/demand/budget_rule.hpp>

#include "random_plunger.hpp"
#include "support/check.hpp"

using namespace seatload;
using demand::Plunger;
using demand::PlungerPoint;

namespace {

/// The plunger with its loads at a point; each function says by how much a demand is kept [N, or s].
struct Balance {
    const Plunger& plunger;
    const PlungerPoint& p;
    double F1;
    double F2;

    double hold() const { return 1.0 + plunger.margins.hold.value; }
    double release() const { return 1.0 - plunger.margins.release.value; }
    double back() const { return p.back_mpa * p.back_area_mm2; }
    double flank() const { return std::tan(p.half_angle_rad - std::atan(p.flank_friction)) - p.bore_friction; }
    double leak() const { return hold() * p.leak_mpa * p.seat_area_mm2; }
    double parked_side() const { return hold() * p.side_parked_n * std::max(0.0, flank()); }
    double dragged() const { return p.side_released_n * flank(); }
    double opened_area() const { return p.seat_area_mm2 + p.annulus_share * (p.full_area_mm2 - p.seat_area_mm2); }
    bool drags_at_full_travel() const { return plunger.side_load && !plunger.side_load->clear_at_full_travel; }

    /// Spring, back pressure and friction together against what pushes it off its seat.
    double stays(double push) const { return F1 + back() + p.friction_n - push; }
    double leaves_seat(double pressure) const {
        return release() * pressure * p.seat_area_mm2 + dragged() - F1 - back() - p.friction_n;
    }
    double opens(double pressure) const {
        return release() * pressure * opened_area() + (drags_at_full_travel() ? dragged() : 0.0) - F2 - back() -
               p.friction_n;
    }
    double returns(double load) const {
        return load + back() - p.friction_n - hold() * p.residual_mpa * p.full_area_mm2;
    }
    /// The time allowed less the time it takes, integrated over the travel.
    double time_left() const {
        const double h = in_mm(plunger.stroke);
        const double conductance = 3.141592653589793 * p.drain_diameter_mm * std::pow(p.drain_clearance_mm, 3.0) *
                                   (1.0 + 1.5 * p.drain_eccentricity * p.drain_eccentricity) /
                                   (12.0 * p.drain_viscosity_mpa_s * p.drain_length_mm);
        const auto slowness = [&](double lift) {
            const double net = F1 + (F2 - F1) * lift / h + back() - p.friction_n - p.residual_mpa * p.full_area_mm2;
            return net <= 0.0 ? 1e9 : p.full_area_mm2 * p.full_area_mm2 / (conductance * net);
        };
        static boost::math::quadrature::tanh_sinh<double> integrator;
        return in_second(plunger.drain->longest_time) - integrator.integrate(slowness, 0.0, h);
    }
};

using Kept = std::function<double(const Balance&)>;

const std::map<std::string_view, Kept> kDemands{
    {"holds_leak", [](const Balance& b) { return b.stays(b.leak()); }},
    {"holds_side_load", [](const Balance& b) { return b.stays(b.parked_side()); }},
    {"holds_both", [](const Balance& b) { return b.stays(b.leak() + b.parked_side()); }},
    {"comes_home", [](const Balance& b) { return b.returns(b.F1); }},
    {"seated_in_time", [](const Balance& b) { return b.time_left(); }},
    {"lets_go", [](const Balance& b) { return b.leaves_seat(b.p.release_mpa); }},
    {"lets_go_first", [](const Balance& b) { return b.leaves_seat(b.p.mechanism_mpa); }},
    {"starts_home", [](const Balance& b) { return b.returns(b.F2); }},
    {"above_seated", [](const Balance& b) { return b.F2 - b.F1; }},
    {"full_travel_in_time", [](const Balance& b) { return b.time_left(); }},
    {"opens_fully", [](const Balance& b) { return b.opens(b.p.release_mpa); }},
    {"stays_open",
     [](const Balance& b) {
         return b.release() * b.p.hold_open_mpa * b.p.full_area_mm2 + b.p.friction_n - b.F2 - b.back();
     }},
    {"opens_first", [](const Balance& b) { return b.opens(b.p.mechanism_mpa); }},
};

/// The loads a rule is looked at with: its own limit, and the end of the other band that it stands on.
Balance with_limit(const demand::SolvedRule& solved, const demand::SolvedRules& all, const Plunger& plunger,
                   const PlungerPoint& point) {
    Balance b{plunger, point, all.seated_least_n, 0.0};
    for (const demand::SolvedRule& each : all.rules) {  // these two stand together
        if (each.rule->id == "seated_in_time" && solved.rule->id == "full_travel_in_time") b.F1 = each.extreme.value;
        if (each.rule->id == "full_travel_in_time" && solved.rule->id == "seated_in_time") b.F2 = each.extreme.value;
    }
    (solved.rule->place == demand::LoadPlace::seated ? b.F1 : b.F2) = solved.extreme.value;
    return b;
}

/// The smaller net load of the two limits on the time home [N]: next to none, and the time hangs on the last digits of
/// the loads.
double least_drive(const demand::SolvedRules& all, const demand::BudgetSetting& setting) {
    double least = INFINITY;
    for (const demand::SolvedRule& each : all.rules)
        if (each.rule->id.ends_with("in_time"))
            least = std::min(least, each.rule->terms(each.extreme.at, setting).back().value());
    return least;
}

constexpr std::uint64_t kSeed = 1126;
constexpr double kRounding = 1e-9;  // of newtons and seconds of the order of 1 to 100

}  // namespace

TEST_CASE("every limit is where the balance of forces is just met, and met at every point of the ranges") {
    test::Dice dice(kSeed);
    std::map<std::string_view, int> seen;
    for (int i = 0; i < 300; ++i) {
        const Plunger plunger = test::random_plunger(dice);
        const demand::PlungerBox box = demand::box_of(plunger);
        const demand::SolvedRules all = demand::solve_rules(plunger, box);
        for (const demand::SolvedRule& solved : all.rules) {
            const double limit = solved.extreme.value;
            if (!std::isfinite(limit) || limit > 1e6) continue;
            INFO("seed " << kSeed << ", plunger " << i << ", " << solved.rule->id << " = " << limit << " N");
            const Kept& kept = kDemands.at(solved.rule->id);
            const demand::BudgetSetting setting{plunger, all.seated_least_n, all.seated, all.full_travel};
            const bool in_time = solved.rule->id.ends_with("in_time");
            if (in_time && least_drive(all, setting) < 0.01) continue;
            const double unit = in_time ? in_second(plunger.drain->longest_time) : 1.0 + std::abs(limit);
            const double at_corner = kept(with_limit(solved, all, plunger, solved.extreme.at));
            const double rounding = in_time ? 1e-6 : kRounding;
            CHECK(at_corner >= -rounding * unit);
            CHECK(at_corner <= rounding * unit);
            for (int k = 0; k < 30; ++k) {
                const PlungerPoint point = test::random_point(box, dice);
                CHECK(kept(with_limit(solved, all, plunger, point)) >= -rounding * unit);
            }
            ++seen[solved.rule->id];
        }
    }
    for (const demand::BudgetRule& rule : demand::budget_rules()) {
        INFO(rule.id);
        CHECK(seen[rule.id] >= 20);
        CHECK(kDemands.contains(rule.id));
    }
}
