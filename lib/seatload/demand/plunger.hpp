// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <variant>

#include <seatload/demand/interval.hpp>
#include <seatload/units/quantities.hpp>
#include <seatload/wire/evidence.hpp>

namespace seatload::demand {

// A plunger that a spring holds on its seat and oil pressure pushes off it. Parked, the oil sees only the area inside
// the seat line (A1); once cracked it sees the full area (A2). Every range is an Interval: whatever is worked out must
// hold for all values inside.

/// A round face or piston: its area, as given or from its diameter.
struct Face {
    std::optional<Interval<Length>> diameter;  ///< absent when the area itself was given
    Interval<Area> area;
};

/// The narrow ring-shaped gap between a round part and its bore, filled with oil in laminar flow.
struct AnnularGap {
    Interval<Length> diameter;
    Interval<Length> clearance;  ///< radial
    Interval<Length> length;
    Interval<double> eccentricity{0.0, 0.0};       ///< 0 in the middle, 1 touching
    std::optional<Interval<Viscosity>> viscosity;  ///< absent: that of the other gap, which then does not matter
};

/// Oil leaks in through one sharp-edged orifice and out through a similar one.
struct LeakOrifices {
    Interval<Length> inlet;  ///< diameters
    Interval<Length> outlet;
};

/// Oil leaks in through one annular gap and out through another.
struct LeakGaps {
    AnnularGap inlet;
    AnnularGap outlet;
};

/// The pressure under the parked plunger as what supply and leakage make of it.
struct Leakage {
    Interval<Stress> supply;
    std::variant<LeakOrifices, LeakGaps> way;
};

/// What the pressures must and must not do; gauge pressures on the oil side.
struct PlungerPressures {
    Interval<Stress> release;                   ///< the lowest that must let the plunger go and open it fully
    std::optional<Interval<Stress>> hold_open;  ///< the lowest that must keep it open once there; absent: release
    std::optional<Interval<Stress>> leak;       ///< under the parked plunger; absent: none, or from the leakage
    std::optional<Leakage> leakage;
    std::optional<Interval<Stress>> mechanism;  ///< at which the mechanism itself would move: open before
    Interval<Stress> residual{};                ///< left while the plunger returns
};

/// A force across the plunger that its flank turns into one along it.
struct SideLoad {
    Interval<Force> parked;               ///< while the spring must hold
    Interval<Force> released;             ///< while the oil must let it go; zero when it is unloaded first
    bool clear_at_full_travel = false;    ///< the released side load no longer bears at the end of the travel
    Interval<Angle> half_angle;           ///< of the flank to the axis; 0: a cylinder
    Interval<double> flank_friction;      ///< coefficient on the flank
    Interval<double> bore_friction{};     ///< coefficient in the bore, which takes the side load up on one side
    bool acts_with_leak_pressure = true;  ///< both can come at once
};

/// Pressure on the side of the spring; absent in a plunger whose back is vented.
struct BackPressure {
    Interval<Stress> pressure;
    Face face;  ///< that it bears on
};

/// The way cold oil takes out when the plunger returns, and how long that may last.
struct Drain {
    AnnularGap gap;     ///< its viscosity is that of the coldest oil
    Time longest_time;  ///< from full travel to the seat
};

/// What is kept back for what nobody thought of.
struct BudgetMargins {
    Share hold;     ///< what pushes the plunger off its seat is taken as this share larger
    Share release;  ///< what the oil pushes with is taken as this share smaller
};

/// How far the numbers put in can be trusted.
struct PlungerTrust {
    wire::Evidence areas = wire::Evidence::given;
    wire::Evidence friction = wire::Evidence::given;
    wire::Evidence pressures = wire::Evidence::given;
    wire::Evidence leakage = wire::Evidence::given;
    wire::Evidence side_load = wire::Evidence::given;
    wire::Evidence back = wire::Evidence::given;
    wire::Evidence drain = wire::Evidence::given;
};

struct Plunger {
    Face seat;                                 ///< A1, inside the seat line
    Face full;                                 ///< A2, once cracked
    Length stroke;                             ///< h
    Interval<double> annulus_share{1.0, 1.0};  ///< eta: share of the pressure that reaches A2 - A1 while it opens
    Interval<Force> friction;                  ///< of guide and seal, against the motion
    PlungerPressures pressures;
    std::optional<SideLoad> side_load;
    std::optional<BackPressure> back;
    std::optional<Drain> drain;
    BudgetMargins margins;
    PlungerTrust trust;
};

/// The two loads of a spring, to tell what pressures move the plunger with it.
struct SpringLoads {
    Interval<Force> seated;       ///< F1
    Interval<Force> full_travel;  ///< F2
};

}  // namespace seatload::demand
