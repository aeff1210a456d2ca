// SPDX-License-Identifier: MIT
#include <seatload/demand/plunger_point.hpp>

#include <algorithm>
#include <numbers>

#include <seatload/core/assert.hpp>
#include <seatload/core/text.hpp>
#include <seatload/demand/leakage.hpp>

namespace seatload::demand {
namespace {

constexpr int kPointDigits = 4;

std::string number(double value) { return significant(value, kPointDigits); }
std::string millimetres(double value) { return number(value) + " mm"; }
std::string square_millimetres(double value) { return number(value) + " mm²"; }
std::string newtons(double value) { return number(value) + " N"; }
std::string bars(double value) { return number(10.0 * value) + " bar"; }
std::string degrees(double value) { return number(value * 180.0 / std::numbers::pi) + "°"; }
std::string millipascal_seconds(double value) { return number(1e9 * value) + " mPa s"; }

using P = PlungerPoint;
using T = PlungerTrust;

constexpr std::array<PointInput, 21> kInputs{{
    {&P::seat_area_mm2, "A1", "seat area", "seat_diameter", square_millimetres, &T::areas},
    {&P::full_area_mm2, "A2", "full area", "full_diameter", square_millimetres, &T::areas},
    {&P::annulus_share, "η", "share of the pressure on the ring", "annulus_share", number, &T::areas},
    {&P::friction_n, "Ff", "friction", "friction", newtons, &T::friction},
    {&P::release_mpa, "p", "release pressure", "pressures.release", bars, &T::pressures},
    {&P::hold_open_mpa, "pH", "holding pressure", "pressures.hold_open", bars, &T::pressures},
    {&P::leak_mpa, "pL", "leak pressure", "pressures.leak", bars, &T::leakage},
    {&P::mechanism_mpa, "pM", "pressure that moves the mechanism", "pressures.mechanism", bars, &T::pressures},
    {&P::residual_mpa, "pR", "residual pressure", "pressures.residual", bars, &T::pressures},
    {&P::side_parked_n, "W", "side load", "side_load.force", newtons, &T::side_load},
    {&P::side_released_n, "WR", "side load at release", "side_load.release_force", newtons, &T::side_load},
    {&P::half_angle_rad, "α", "flank angle", "side_load.half_angle", degrees, &T::side_load},
    {&P::flank_friction, "μF", "flank friction", "side_load.flank_friction", number, &T::side_load},
    {&P::bore_friction, "μB", "bore friction", "side_load.bore_friction", number, &T::side_load},
    {&P::back_mpa, "pB", "back pressure", "back.pressure", bars, &T::back},
    {&P::back_area_mm2, "AB", "area at the back", "back.diameter", square_millimetres, &T::back},
    {&P::drain_diameter_mm, "D", "drain gap diameter", "drain.diameter", millimetres, &T::drain},
    {&P::drain_clearance_mm, "c", "drain gap, radial", "drain.clearance", millimetres, &T::drain},
    {&P::drain_length_mm, "L", "drain gap length", "drain.length", millimetres, &T::drain},
    {&P::drain_eccentricity, "ε", "drain gap eccentricity", "drain.eccentricity", number, &T::drain},
    {&P::drain_viscosity_mpa_s, "μ", "cold oil viscosity", "drain.viscosity", millipascal_seconds, &T::drain},
}};

/// Puts the ends of a range into both corners.
template <class Q>
void put(PlungerBox& box, PointMember member, const Interval<Q>& range) {
    if constexpr (std::is_same_v<Q, double>) {
        box.low.*member = range.low;
        box.high.*member = range.high;
    } else {
        box.low.*member = in_base_unit(range.low);
        box.high.*member = in_base_unit(range.high);
    }
}

void put_pressures(PlungerBox& box, const PlungerPressures& pressures) {
    put(box, &P::release_mpa, pressures.release);
    put(box, &P::hold_open_mpa, pressures.hold_open.value_or(pressures.release));
    put(box, &P::residual_mpa, pressures.residual);
    if (pressures.mechanism) put(box, &P::mechanism_mpa, *pressures.mechanism);
    if (const auto leak = leak_pressure(pressures)) put(box, &P::leak_mpa, *leak);
}

void put_side_load(PlungerBox& box, const SideLoad& side) {
    put(box, &P::side_parked_n, side.parked);
    put(box, &P::side_released_n, side.released);
    put(box, &P::half_angle_rad, side.half_angle);
    put(box, &P::flank_friction, side.flank_friction);
    put(box, &P::bore_friction, side.bore_friction);
}

void put_drain(PlungerBox& box, const AnnularGap& gap) {
    put(box, &P::drain_diameter_mm, gap.diameter);
    put(box, &P::drain_clearance_mm, gap.clearance);
    put(box, &P::drain_length_mm, gap.length);
    put(box, &P::drain_eccentricity, gap.eccentricity);
    SEATLOAD_ASSERT(gap.viscosity.has_value());
    put(box, &P::drain_viscosity_mpa_s, *gap.viscosity);
}

}  // namespace

PlungerBox box_of(const Plunger& plunger) {
    PlungerBox box;
    put(box, &P::seat_area_mm2, plunger.seat.area);
    put(box, &P::full_area_mm2, plunger.full.area);
    put(box, &P::annulus_share, plunger.annulus_share);
    put(box, &P::friction_n, plunger.friction);
    put_pressures(box, plunger.pressures);
    if (plunger.side_load) put_side_load(box, *plunger.side_load);
    if (plunger.back) {
        put(box, &P::back_mpa, plunger.back->pressure);
        put(box, &P::back_area_mm2, plunger.back->face.area);
    }
    if (plunger.drain) put_drain(box, plunger.drain->gap);
    return box;
}

std::span<const PointInput> point_inputs() { return kInputs; }

const PointInput& input_of(PointMember member) {
    const auto found =
        std::find_if(kInputs.begin(), kInputs.end(), [&](const PointInput& i) { return i.member == member; });
    SEATLOAD_ASSERT(found != kInputs.end());
    return *found;
}

}  // namespace seatload::demand
