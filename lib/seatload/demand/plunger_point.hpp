// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/demand/plunger.hpp>

namespace seatload::demand {

/// One value for every range of a plunger, as plain numbers.
struct PlungerPoint {
    double seat_area_mm2 = 0.0;
    double full_area_mm2 = 0.0;
    double annulus_share = 1.0;
    double friction_n = 0.0;
    double release_mpa = 0.0;
    double hold_open_mpa = 0.0;
    double leak_mpa = 0.0;
    double mechanism_mpa = 0.0;
    double residual_mpa = 0.0;
    double side_parked_n = 0.0;
    double side_released_n = 0.0;
    double half_angle_rad = 0.0;
    double flank_friction = 0.0;
    double bore_friction = 0.0;
    double back_mpa = 0.0;
    double back_area_mm2 = 0.0;
    double drain_diameter_mm = 0.0;
    double drain_clearance_mm = 0.0;
    double drain_length_mm = 0.0;
    double drain_eccentricity = 0.0;
    double drain_viscosity_mpa_s = 0.0;
};

using PointMember = double PlungerPoint::*;

/// The corner with all lower ends and that with all upper ends.
struct PlungerBox {
    PlungerPoint low;
    PlungerPoint high;

    bool is_range(PointMember member) const { return low.*member < high.*member; }
};

/// The ranges of a plunger; a leak pressure that leakage makes is worked out over the corners of the leakage.
PlungerBox box_of(const Plunger& plunger);

/// How a range is called and shown.
struct PointInput {
    PointMember member;
    std::string_view symbol;  ///< "pL"
    std::string_view words;   ///< "leak pressure"
    std::string_view key;     ///< in the plunger file: "pressures.leak"
    std::string (*shown)(double);
    wire::Evidence PlungerTrust::*trust;
};

/// Every member of PlungerPoint, in its order.
std::span<const PointInput> point_inputs();
const PointInput& input_of(PointMember member);

/// The number a function takes that is furthest to one side, and the corner where it does.
struct Extreme {
    double value = 0.0;
    PlungerPoint at;
};

/// The largest or smallest value of a function of a point over all corners of a box in the members named; the others
/// stay at their lower ends. Of equal values the first corner counts (all low, then the first member high, ...).
template <class Function>
Extreme furthest(const PlungerBox& box, std::span<const PointMember> members, bool largest, const Function& function) {
    std::vector<PointMember> ranges;
    for (const PointMember member : members)
        if (box.is_range(member)) ranges.push_back(member);
    Extreme found;
    for (std::size_t corner = 0; corner < std::size_t{1} << ranges.size(); ++corner) {
        PlungerPoint point = box.low;
        for (std::size_t i = 0; i < ranges.size(); ++i)
            if ((corner >> i & 1U) != 0) point.*ranges[i] = box.high.*ranges[i];
        const double value = function(point);
        if (corner == 0 || (largest ? value > found.value : value < found.value)) found = {value, point};
    }
    return found;
}

}  // namespace seatload::demand
