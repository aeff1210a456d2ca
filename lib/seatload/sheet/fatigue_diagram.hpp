// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/demand/limits.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/spring/fatigue.hpp>

namespace seatload::sheet {

/// What a diagram of stress amplitude against mean stress shows [MPa].
struct FatigueDiagram {
    demand::FatigueLine line = demand::FatigueLine::goodman;
    spring::EnduranceStress<double> endurance{};  ///< the point the line goes through
    double shear_strength = 0.0;                  ///< Ssu
    double amplitude = 0.0;                       ///< of the spring
    double mean = 0.0;
    double factor = 0.0;  ///< n_f
    double factor_asked = 1.0;
};

/// Draws it into a box, with a key at its right.
void draw_fatigue_diagram(Drawing& drawing, const Box& box, const FatigueDiagram& diagram);

}  // namespace seatload::sheet
