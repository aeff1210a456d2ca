// SPDX-License-Identifier: MIT
#include <seatload/sizing/merit.hpp>

#include <algorithm>
#include <cmath>
#include <tuple>

#include <seatload/check/rule.hpp>
#include <seatload/spring/helix.hpp>
#include <seatload/tolerance/en15800.hpp>

namespace seatload::sizing {
namespace {

const check::Rule& stress_rule() {
    static const check::Rule& rule = *std::find_if(check::rules().begin(), check::rules().end(),
                                                   [](const check::Rule& r) { return r.id == "stress"; });
    return rule;
}

double wire_cost(const check::Coil& c, double L0) {
    if (!c.wire.relative_cost) return std::numeric_limits<double>::infinity();
    const double m = spring::pitch(c.ends, L0, c.wire.d_mm, c.active_coils);
    const double length = spring::wire_length(m, c.wire.d_mm, c.D_mm, c.active_coils, c.total_coils);
    return *c.wire.relative_cost * spring::wire_mass(c.wire.density_t_mm3, c.wire.d_mm, length);
}

}  // namespace

double room_in_tenths(double tolerance_room) { return std::floor(10.0 * tolerance_room + 1e-9); }

bool better(const Merit& a, const Merit& b) {
    const auto key = [](const Merit& m) {
        return std::tuple(-room_in_tenths(m.tolerance_room), -m.stress_margin, m.cost);
    };
    return key(a) < key(b);
}

Rooms tolerance_rooms(const check::Coil& c, double L0) {
    const double fixed_part =
        tolerance::load_tolerance_base_n(c.wire.d_mm, c.D_mm) * tolerance::coils_factor(c.active_coils);
    const double grade = tolerance::grade_factor(c.demand.load_grade);
    const double hot = c.wire.hot_share * c.wire.load_kept;
    Rooms rooms;
    const auto look = [&](double length, const std::optional<double>& least, const std::optional<double>& most) {
        const double load = c.cold_load_n(L0, length);
        const double tolerance = (fixed_part + 0.015 * load) * grade;
        if (least) rooms.below = std::min(rooms.below, (load - *least / hot) / tolerance);
        if (most) rooms.above = std::min(rooms.above, (*most - load) / tolerance);
    };
    look(c.demand.seated_height_mm, c.demand.seated_at_least_n, c.demand.seated_at_most_n);
    look(c.demand.full_travel_height_mm, c.demand.full_at_least_n, c.demand.full_at_most_n);
    return rooms;
}

Merit merit(const check::Coil& c, double L0) {
    const Rooms rooms = tolerance_rooms(c, L0);
    const check::Rule& stress = stress_rule();
    return {std::min(rooms.below, rooms.above), check::margin(stress.sense, stress.measure(c, L0)), wire_cost(c, L0)};
}

}  // namespace seatload::sizing
