// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/spring/spring.hpp>
#include <seatload/units/quantities.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::test {

/// Spring A of our reference calculations: d 3, D 24, n 6.5, L0 60, closed and ground.
inline spring::Spring spring_a() {
    return {3.0 * mm, 24.0 * mm, 8.5, 60.0 * mm, spring::Ends::closed_ground, spring::Hand::right};
}

/// Its wire: E 206000 MPa, G 81500 MPa, rho 7850 kg/m3, Rm 1840 MPa and 0.025 mm of diameter tolerance.
inline wire::Grade wire_a() {
    wire::Grade grade;
    grade.id = "own";
    grade.strength = wire::StrengthGiven{1840.0 * MPa, 0.1 * mm, 10.0 * mm};
    grade.moduli = {{10.0 * mm, 81500.0 * MPa, 206000.0 * MPa}};
    grade.density = 7850.0 * kg_per_m3;
    grade.shear_modulus_loss_per_kelvin = 0.25e-3;
    grade.service_limit = {120.0};
    grade.diameter_tolerance = {{10.0 * mm, 0.025 * mm}};
    return grade;
}

}  // namespace seatload::test
