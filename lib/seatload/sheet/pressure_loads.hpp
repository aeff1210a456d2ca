// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/demand/budget.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/fact_lines.hpp>

namespace seatload::sheet {

/// What a figure of the loads shows: a column for the seated plunger and one for full travel.
struct LoadColumns {
    const demand::Budget& budget;
    std::optional<demand::SpringLoads> spring;
    std::string seated_words;  ///< under the column
    std::string full_travel_words;
};

/// Draws it into a box: each limit at its load with its number, what is left between them, what is forbidden hatched
/// (crosswise where limits contradict), and the spring given as a line.
void draw_load_columns(Drawing& drawing, const Box& box, const LoadColumns& columns);

/// The limits by their numbers: load and what it is for.
FactLines limit_list(const demand::Budget& budget, double width);

}  // namespace seatload::sheet
