// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// A table with lines round its cells; the first row is its heading, and its first column, or more, name
/// what the others hold.
struct RuledTable {
    std::vector<double> widths;                  ///< of the columns [mm]
    std::vector<std::vector<std::string>> rows;  ///< each with a cell a column; long cells are wrapped
    double least_row_height = 5.2;               ///< of the rows below the heading [mm], more where a hand must write
    std::vector<std::size_t> naming{0};          ///< the columns of names, in bold
};

/// Height of one row as drawn [mm].
double row_height(const RuledTable& table, std::size_t row);
/// Height of the whole table [mm].
double height(const RuledTable& table);

/// Whether no word or number of a cell is wider than its column, so that it would be cut.
bool has_room_for_words(const RuledTable& table);

/// Draws the table with its upper left corner at a point.
void draw(Drawing& drawing, Point upper_left, const RuledTable& table);

}  // namespace seatload::sheet
