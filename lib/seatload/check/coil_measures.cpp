// SPDX-License-Identifier: MIT
#include <seatload/check/coil_measures.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/demand/half_turn.hpp>

namespace seatload::check::detail {

Measure service_temperature(const Coil& c, double) { return {c.demand.temperature_c, c.wire.service_limit_c}; }
Measure static_wire(const Coil& c, double) { return {c.wire.static_duty_only ? 1.0 : 0.0, 0.0}; }
Measure smallest_index(const Coil& c, double) { return {c.index, c.demand.limits.smallest_index}; }
Measure largest_index(const Coil& c, double) { return {c.index, c.demand.limits.largest_index}; }
Measure fewest_coils(const Coil& c, double) { return {c.active_coils, c.demand.limits.fewest_active_coils}; }
Measure most_coils(const Coil& c, double) { return {c.active_coils, c.demand.limits.most_active_coils}; }
Measure ground_wire(const Coil& c, double) { return {c.wire.d_mm, in_mm(c.demand.limits.smallest_ground_wire)}; }
Measure ground_index(const Coil& c, double) { return {c.index, c.demand.limits.largest_ground_index}; }

Measure coil_step(const Coil& c, double) {
    const double steps = c.total_coils / *c.demand.limits.coil_step;
    const double off = std::abs(steps - std::round(steps));
    return {off < 1e-6 ? 0.0 : off * *c.demand.limits.coil_step, 0.0};
}

Measure half_turn(const Coil& c, double) {
    return {demand::off_half_turn(c.active_coils), c.demand.limits.half_turn_slack};
}

bool half_turn_between(double low, double high) { return std::floor(high + 0.5 + 1e-9) >= std::ceil(low + 0.5 - 1e-9); }

Measure kindest_half_turn(const Coil& low, const Coil& high, double L0) {
    const Measure at_low = half_turn(low, L0), at_high = half_turn(high, L0);
    if (half_turn_between(low.active_coils, high.active_coils)) return {0.0, at_low.limit};
    return {std::min(at_low.value, at_high.value), at_low.limit};
}

}  // namespace seatload::check::detail
