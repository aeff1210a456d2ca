// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <vector>

#include <seatload/units/quantities.hpp>
#include <seatload/wire/evidence.hpp>

namespace seatload::tolerance {

/// Index bands of the coil-diameter table: 4 to 8, over 8 to 14, over 14 to 20.
inline constexpr int kIndexBands = 3;
inline constexpr int kGrades = 3;

/// Tolerances of the coil diameter for mean diameters over one size, up to another.
struct DiameterRow {
    Length over;
    Length up_to;
    std::array<std::array<Length, kIndexBands>, kGrades> plus_minus;  ///< [grade - 1][band]
    std::array<wire::Evidence, kGrades> evidence{};                   ///< [grade - 1]
};

/// The tolerance tables that are data, by rising diameter.
struct Tables {
    std::vector<DiameterRow> diameter;
};

}  // namespace seatload::tolerance
