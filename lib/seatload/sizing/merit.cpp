// SPDX-License-Identifier: MIT
#include <seatload/sizing/merit.hpp>

#include <algorithm>
#include <cmath>
#include <tuple>

#include <seatload/check/rule.hpp>
#include <seatload/check/tips.hpp>
#include <seatload/demand/half_turn.hpp>
#include <seatload/spring/helix.hpp>

namespace seatload::sizing {
namespace {

const check::Rule& stress_rule() {
    static const check::Rule& rule = check::rule_named("stress");
    return rule;
}

double wire_cost(const check::Coil& c, double L0) {
    if (!c.wire.relative_cost) return std::numeric_limits<double>::infinity();
    const double m = spring::pitch(c.ends, L0, c.wire.d_mm, c.active_coils);
    const double length = spring::wire_length(m, c.wire.d_mm, c.D_mm, c.active_coils, c.total_coils);
    return *c.wire.relative_cost * spring::wire_mass(c.wire.density_t_mm3, c.wire.d_mm, length);
}

/// The steps of a share in which a positive number is counted: each is so much larger than the one before.
int step_of(double number, double share) {
    if (number <= 0.0) return std::numeric_limits<int>::min();
    if (!std::isfinite(number)) return std::numeric_limits<int>::max();
    return static_cast<int>(std::ceil(std::log(number) / std::log1p(share) - 1e-9));
}

constexpr double kCostStep = 0.05;     // prices of wire differ more than this between two orders
constexpr double kReleaseStep = 0.02;  // well under the tolerance of any load
constexpr double kMostTenths = 1e6;    // more room than any number has to hold; also that of unlimited loads

bool leans(const check::Coil& c) {
    return c.demand.slides && demand::off_half_turn(c.active_coils) > demand::kHalfTurnKept + 1e-9;
}

/// Springs that lean too far in the worst case and springs that few lots keep are told apart by the criteria alone, as
/// the room counts the lean too.
int class_of(const Merit& m, double tenths) {
    if (m.leans_too_far || tenths < kFewKeepTenths) return 2;
    return m.leans ? 1 : 0;
}

}  // namespace

double room_in_tenths(double tolerance_room) { return std::floor(10.0 * tolerance_room + 1e-9); }

Standing standing(const Merit& m) {
    const double tenths = std::clamp(room_in_tenths(m.tolerance_room), -kMostTenths, kMostTenths);
    const double per_cent = std::floor(100.0 * m.stress_margin + 1e-9);
    return {class_of(m, tenths), -static_cast<int>(tenths), -static_cast<int>(per_cent), step_of(m.cost, kCostStep),
            step_of(m.release_n, kReleaseStep)};
}

Standing ranked(const Standing& steps, const demand::Order& order) {
    Standing sorted{steps[0]};
    for (std::size_t i = 0; i < order.size(); ++i) sorted[1 + i] = steps[place_of(order[i])];
    return sorted;
}

bool better(const Merit& a, const Merit& b, const demand::Order& order) {
    const Standing of_a = ranked(standing(a), order), of_b = ranked(standing(b), order);
    if (of_a != of_b) return of_a < of_b;
    const auto fine = [](const Merit& m) { return std::tuple(-m.stress_margin, m.cost, m.release_n); };
    return fine(a) < fine(b);
}

Rooms tolerance_rooms(const check::Coil& c, double L0) { return ToleranceRooms(c).at(L0); }

Merit merit(const check::Coil& c, const ToleranceRooms& rooms, double L0) {
    const check::Rule& stress = stress_rule();
    return {rooms.at(L0).least(),
            check::margin(stress.sense, stress.measure(c, L0)),
            wire_cost(c, L0),
            c.demand.release_counts ? c.cold_load_n(L0, c.demand.full_travel_height_mm) : 0.0,
            leans(c),
            check::leans_too_far(c, L0)};
}

Merit merit(const check::Coil& c, double L0) { return merit(c, ToleranceRooms(c), L0); }

}  // namespace seatload::sizing
