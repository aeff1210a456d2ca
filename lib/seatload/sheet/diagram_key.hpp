// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

/// What stands before the words of a key's entry.
enum class Sample { none, band, bar, upright_limit, level_limit };

struct KeyEntry {
    Sample sample;
    std::string words;
};

/// The height [mm] a key takes in a width [mm]; its entries go on to a new row when one is full.
double key_height(const std::vector<KeyEntry>& entries, double width);

/// Draws the key under the upper edge of a box.
void draw_key(Drawing& drawing, const Box& box, const std::vector<KeyEntry>& entries);

/// A bar from one height to another with a short line across each end, as the diagram shows a tolerance.
void draw_tolerance_bar(Drawing& drawing, double x, double low, double high);

/// A grey band with an edge, as the diagram shows what is ordered.
void draw_band(Drawing& drawing, const Box& band);

}  // namespace seatload::sheet
