// SPDX-License-Identifier: MIT
#include <seatload/check/lean_measures.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include <seatload/check/clearance_measures.hpp>
#include <seatload/check/coil_measures.hpp>
#include <seatload/check/free_pitch.hpp>
#include <seatload/spring/lean.hpp>

namespace seatload::check::detail {
namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

/// What bore and rod leave beside the largest coil, each with its clearance; without them the stated share of D.
double room_left(const DemandNumbers& d, const Measure& in_bore, const Measure& over_rod, double D) {
    double room = kInfinite;
    if (d.bore_smallest_mm) room = in_bore.limit - in_bore.value;
    if (d.rod_largest_mm) room = std::min(room, over_rod.value - over_rod.limit);
    return d.bore_smallest_mm || d.rod_largest_mm ? std::max(0.0, room) : d.limits.lean_share * D;
}

double room_to_lean(const Coil& c, double L0) {
    const DemandNumbers& d = c.demand;
    return room_left(d, d.bore_smallest_mm ? bore(c, L0) : Measure{}, d.rod_largest_mm ? rod(c, L0) : Measure{},
                     c.D_mm);
}

double most_room_to_lean(const Coil& low, const Coil& high, double L0) {
    const DemandNumbers& d = low.demand;
    return room_left(d, d.bore_smallest_mm ? kindest_bore(low, high, L0) : Measure{},
                     d.rod_largest_mm ? kindest_rod(low, high, L0) : Measure{}, high.D_mm);
}

double least_room_to_lean(const Coil& low, const Coil& high, double L0) {
    const DemandNumbers& d = low.demand;
    return room_left(d, d.bore_smallest_mm ? harshest_bore(low, high, L0) : Measure{},
                     d.rod_largest_mm ? harshest_rod(low, high, L0) : Measure{}, low.D_mm);
}

/// The lean of active coils so long, of their whole turns' part and of the rest each as if the number of turns had it
/// in full: a spring has |cos(pi n)| of the first and |sin(pi n)|/(4 n) of the second.
struct LeanParts {
    double whole = 0.0, rest = 0.0;

    LeanParts(const Coil& c, double active_length, double deflection) {
        const double moduli = c.wire.shear_modulus_mpa / c.wire.young_modulus_mpa, n = c.active_coils;
        whole = spring::sideways_lean(active_length / n, c.D_mm, n, {1.0, 0.0}, deflection, moduli);
        if (whole > 0.0 && is_finite())
            rest = whole * spring::rest_of_phase(
                               spring::bending_phase(active_length / c.D_mm, deflection / active_length, moduli),
                               deflection / active_length);
    }
    bool is_finite() const { return std::isfinite(whole); }
    double at(const Coil& c, double at_half) const {
        return whole * c.turns_lean.tilt + at_half * (c.turns_lean.rest * 4.0 * c.active_coils);
    }
};

}  // namespace

Measure lean(const Coil& c, double L0) {
    const double moduli = c.wire.shear_modulus_mpa / c.wire.young_modulus_mpa;
    const double deflection = L0 - c.demand.full_travel_height_mm;
    return {spring::sideways_lean(free_pitch(c, L0), c.D_mm, c.active_coils, c.turns_lean, deflection, moduli),
            room_to_lean(c, L0)};
}

Measure kindest_lean(const Coil& low, const Coil& high, double L0) {
    const double room = most_room_to_lean(low, high, L0);
    const double deflection = L0 - low.demand.full_travel_height_mm;
    const double shortest = free_pitch(low, L0) * low.active_coils, longest = free_pitch(high, L0) * high.active_coils;
    if (deflection >= shortest && deflection < longest) return {0.0, room};
    const LeanParts parts(high, shortest, deflection);
    if (!parts.is_finite()) return {kInfinite, room};
    const double at_half = parts.rest / (4.0 * high.active_coils);
    const double least = std::min({parts.at(low, at_half), parts.at(high, at_half), parts.whole});
    return {half_turn_between(low.active_coils, high.active_coils) ? std::min(least, at_half) : least, room};
}

Measure harshest_lean(const Coil& low, const Coil& high, double L0) {
    const double room = least_room_to_lean(low, high, L0);
    const double deflection = L0 - low.demand.full_travel_height_mm;
    const double shortest = free_pitch(low, L0) * low.active_coils, longest = free_pitch(high, L0) * high.active_coils;
    if (deflection >= shortest && deflection < longest) return {kInfinite, room};
    const LeanParts parts(low, std::max(shortest, longest), deflection);
    if (!parts.is_finite()) return {kInfinite, room};
    const double at_half = parts.rest / (4.0 * low.active_coils);
    const double highest = std::hypot(parts.whole, at_half);
    const double slope = highest * std::numbers::pi;
    const double ends = std::max(parts.at(low, at_half), parts.at(high, at_half));
    return {std::min(highest, ends + 0.5 * slope * (high.active_coils - low.active_coils)), room};
}

}  // namespace seatload::check::detail
