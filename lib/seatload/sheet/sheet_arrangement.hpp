// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include <seatload/sheet/geometry.hpp>

namespace seatload::sheet {

/// How a sheet is shared out between figure, diagram and tables.
struct Sharing {
    double figure_height;   ///< [mm]
    double split;           ///< the figure's share of the width; 1: the diagram is not beside it
    double diagram_height;  ///< [mm], when it stands in a column of its own
    double squeeze;         ///< width of the letters in the tables over their natural width
};

/// What stands at the foot of a sheet whatever is above it: heights [mm].
struct Foot {
    double panel;      ///< of the cautions
    double revisions;  ///< of the table over the title block
};

/// Where the parts of a sheet go.
struct Arrangement {
    Box figure;
    Box diagram;
    Box legend;
    std::vector<Box> columns;  ///< of equal width
    Box panel;
};

/// Lying: figure and diagram side by side over three columns; the cautions left of the title block, the revisions over
/// its right half, under the third column.
Arrangement lying(const Box& space, const Foot& foot, double legend_height, const Sharing& sharing);
/// Upright: the figure over two columns, of which the right one begins with the diagram when that is not beside the
/// figure; the cautions lie across, over the revisions and the title block.
Arrangement upright(const Box& space, const Foot& foot, double legend_height, const Sharing& sharing);

/// Width of the cautions, and of the table of revisions, in these arrangements [mm].
double panel_width(const Box& space, bool is_upright);
double revisions_width(const Box& space, bool is_upright);

/// Ways to share a sheet out, in order of liking; of those in which all entries find room, the one with the largest
/// scale is taken.
std::vector<Sharing> sharings(bool is_upright);
/// For sheets with many notes: the first in which all entries find room is taken.
std::span<const Sharing> tight_sharings(bool is_upright);

}  // namespace seatload::sheet
