// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/demand/budget.hpp>
#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// A pair of spring loads whose pressures are drawn, with its name: "least loads".
struct PressureCase {
    std::string words;
    demand::SpringLoads loads;
};

/// The spring given, or else the ends of the bands; with bands that contradict themselves, what holds and what lets go.
std::vector<PressureCase> pressure_cases(const demand::Budget& budget,
                                         const std::optional<demand::SpringLoads>& spring);

/// What a diagram of pressure against lift shows.
struct PressurePlot {
    const demand::Plunger& plunger;
    const demand::Budget& budget;
    std::vector<PressureCase> cases;
};

/// Height of the key under the diagram [mm].
double pressure_key_height(const PressurePlot& diagram, double width);

/// Draws it into a box: for each case the pressures that move the plunger out and back between seat and full travel,
/// over all corners, the band of friction between them, where it cracks, is fully open, starts back and is home; the
/// pressures it is held to as level lines, hatched where it must not be; the key below.
void draw_pressure_plot(Drawing& drawing, const Box& box, const PressurePlot& diagram);

}  // namespace seatload::sheet
