// SPDX-License-Identifier: MIT
#include <seatload/check/length_measures.hpp>

#include <algorithm>

namespace seatload::check::detail {

Measure made_length(const Coil& c, double L0) { return {L0, in_mm(*c.demand.limits.longest_free_length)}; }
Measure shortest(const Coil& c, double L0) { return {L0, *c.demand.shortest_mm}; }
Measure longest(const Coil& c, double L0) { return {L0, *c.demand.longest_mm}; }
Measure reach(const Coil& c, double L0) { return {L0, c.demand.seated_height_mm}; }
Measure open_coils(const Coil& c, double L0) { return {L0, c.solid_length_mm}; }

Measure gap(const Coil& c, double L0) {
    const double room = c.demand.full_travel_height_mm - c.solid_length_mm;
    if (c.demand.limits.gap_rule == demand::GapRule::en_sa) return {room, c.gap_mm};
    return {room, std::max(0.0, c.demand.limits.gap_share * (L0 - c.demand.full_travel_height_mm))};
}

}  // namespace seatload::check::detail
