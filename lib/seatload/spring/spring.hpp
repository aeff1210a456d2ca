// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/spring/ends.hpp>
#include <seatload/units/quantities.hpp>

namespace seatload::spring {

/// The elastic and mass properties of a wire at 20 deg C that a spring's mechanics need.
struct WireProperties {
    Stress shear_modulus;  ///< G
    Stress young_modulus;  ///< E
    Density density;
    double shear_modulus_loss_per_kelvin = 0.0;  ///< r [1/K]
    Stress tensile_strength;                     ///< lowest Rm the wire's standard allows at this diameter
    Length diameter_tolerance;                   ///< plus-minus on d; zero when none is established
};

/// A cylindrical helical compression spring of round wire.
struct Spring {
    Length wire_diameter;      ///< d
    Length mean_diameter;      ///< D
    double total_coils = 0.0;  ///< nt
    Length free_length;        ///< L0
    Ends ends = Ends::closed_ground;
    Hand hand = Hand::right;

    Length outside_diameter() const { return mean_diameter + wire_diameter; }  ///< De
    Length inside_diameter() const { return mean_diameter - wire_diameter; }   ///< Di
    double index() const { return mean_diameter / wire_diameter; }             ///< w
};

}  // namespace seatload::spring
