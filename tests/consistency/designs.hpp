// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

namespace seatload::consistency {

/// A spring of the grid of designs.toml, with closed and ground ends.
struct Design {
    double d_mm = 0.0;
    double D_mm = 0.0;
    double n = 0.0;
    double pitch_mm = 0.0;
    double G_mpa = 0.0;
    double E_mpa = 0.0;
    double density = 0.0;  ///< [t/mm3]

    double index() const { return D_mm / d_mm; }
    double total_coils() const { return n + 2.0; }
    double free_length_mm() const { return n * pitch_mm + 2.0 * d_mm; }
    double slenderness() const { return free_length_mm() / D_mm; }
    double moduli() const { return G_mpa / E_mpa; }
};

/// Every combination of the lists in designs.toml.
const std::vector<Design>& designs();

}  // namespace seatload::consistency
