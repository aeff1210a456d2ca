// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <vector>

namespace seatload::test::elements {

/// The active coils of a spring, as a wire along a helix between two plates.
struct ActiveCoils {
    double d_mm = 1.0;
    double D_mm = 8.0;
    double n = 5.0;
    double pitch_mm = 2.0;  ///< free
    double shear_modulus_mpa = 81500.0;
    double young_modulus_mpa = 206000.0;

    double length_mm() const { return n * pitch_mm; }  ///< from plate to plate, free
};

using Point = std::array<double, 3>;

/// Bricks of 20 nodes in the order of the element type C3D20; node numbers start at 1.
struct HelixMesh {
    std::vector<Point> nodes;
    std::vector<std::array<int, 20>> bricks;
    std::vector<int> foot, head;  ///< nodes of the two end faces
    std::vector<std::array<int, 2>>
        centreline;  ///< two nodes opposite each other about the wire's axis, from the foot on
};

/// A mesh with so many bricks along a turn: five over the wire, one in the middle and four around it, with a rim whose
/// polar second moment of area is that of the round wire.
HelixMesh helix_mesh(const ActiveCoils& coils, int bricks_a_turn);

}  // namespace seatload::test::elements
