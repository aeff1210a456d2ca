// SPDX-License-Identifier: MIT
#pragma once

#include <numbers>

#include <seatload/spring/spring.hpp>

namespace seatload::sheet {

/// A turn [rad].
inline constexpr double kTwoPi = 2.0 * std::numbers::pi;

/// The centre line of a spring's wire in its free state, by the turn u from 0 to nt [mm]; the axis is x, and a ground
/// end's face lies at x = 0 and at x = L0. The viewer of a side view looks against z, with y upwards.
/// Closed ends keep to the wire diameter for one turn, so that the tip touches the next coil; ground ends taper over
/// three quarters of a turn to a tip d/4 thick (common practice, no source).
class CoilCurve {
  public:
    explicit CoilCurve(const spring::Spring& spring);

    double turns() const { return turns_; }
    double radius() const { return radius_; }            ///< D/2
    double wire_radius() const { return wire_radius_; }  ///< d/2
    double length() const { return length_; }            ///< L0
    bool ground() const { return ground_; }

    double x(double u) const;
    double lead(double u) const;        ///< dx/du
    double lead_slope(double u) const;  ///< d2x/du2
    double y(double u) const;
    double z(double u) const;  ///< towards the viewer
    /// The same curve reckoned from its other end: distance of the centre line from the right-hand face.
    double x_from_right(double u) const { return length_ - x(u); }

  private:
    double turns_;
    double radius_;
    double wire_radius_;
    double length_;
    bool ground_;
    double hand_;        ///< +1 right, -1 left
    double start_;       ///< x at u = 0
    double end_lead_;    ///< lead of the end coils
    double extra_lead_;  ///< of the active coils over that
    double dead_;        ///< turns at the end lead, at each end
    double blend_;       ///< turns over which the lead grows
};

}  // namespace seatload::sheet
