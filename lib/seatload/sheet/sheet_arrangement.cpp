// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_arrangement.hpp>

#include <algorithm>
#include <array>

#include <seatload/sheet/title_block.hpp>

namespace seatload::sheet {
namespace {

constexpr double kOverColumns = 0.8;
constexpr double kUnderColumns = 0.5;

constexpr std::array kSqueezes{1.0, 0.95, 0.9, 0.86};
constexpr double kLowestFigure = 56.0;
constexpr double kFigureStep = 1.0;

// Lying: the second share of the width is for a figure that gains a step of scale by it.
constexpr std::array kShares{0.648, 0.76};
constexpr double kTallestLying = 76.0;
constexpr std::array kTightLying{
    Sharing{56.0, 0.648, 0.0, 0.84}, Sharing{56.0, 0.648, 0.0, 0.8},  Sharing{58.0, 0.648, 0.0, 0.75},
    Sharing{56.0, 0.648, 0.0, 0.75}, Sharing{56.0, 0.648, 0.0, 0.72}, Sharing{52.0, 0.648, 0.0, 0.75},
    Sharing{50.0, 0.648, 0.0, 0.72}, Sharing{44.0, 0.648, 0.0, 0.72}, Sharing{44.0, 0.648, 0.0, 0.66},
    Sharing{40.0, 0.648, 0.0, 0.66}, Sharing{38.0, 0.648, 0.0, 0.62}, Sharing{38.0, 0.648, 0.0, 0.58}};

constexpr std::array kDiagramHeights{64.0, 58.0, 52.0};
constexpr double kTallestUpright = 96.0;
constexpr double kUprightShare = 0.6;  ///< full sheets: the diagram goes beside the figure
constexpr std::array kTightUpright{Sharing{56.0, 1.0, 50.0, 0.84},          Sharing{60.0, kUprightShare, 0.0, 0.86},
                                   Sharing{56.0, kUprightShare, 0.0, 0.86}, Sharing{60.0, kUprightShare, 0.0, 0.82},
                                   Sharing{56.0, kUprightShare, 0.0, 0.82}, Sharing{60.0, kUprightShare, 0.0, 0.78},
                                   Sharing{56.0, kUprightShare, 0.0, 0.78}, Sharing{56.0, kUprightShare, 0.0, 0.75},
                                   Sharing{52.0, kUprightShare, 0.0, 0.75}, Sharing{48.0, kUprightShare, 0.0, 0.75},
                                   Sharing{46.0, kUprightShare, 0.0, 0.72}, Sharing{44.0, kUprightShare, 0.0, 0.66},
                                   Sharing{40.0, kUprightShare, 0.0, 0.66}, Sharing{38.0, kUprightShare, 0.0, 0.62},
                                   Sharing{38.0, kUprightShare, 0.0, 0.58}};

/// Adds a sharing in all heights of the figure, the tallest first.
void add_heights(std::vector<Sharing>& out, Sharing sharing) {
    for (; sharing.figure_height >= kLowestFigure; sharing.figure_height -= kFigureStep) out.push_back(sharing);
}

/// Figure and diagram side by side at the top, when the sharing puts them so.
void share_top(Arrangement& out, const Box& space, const Sharing& sharing) {
    const double bottom = space.top - sharing.figure_height;
    const double split = space.left + sharing.split * space.width();
    out.figure = {space.left, bottom, split, space.top};
    out.diagram = {split, bottom, space.right, space.top};
}

Box legend_under(const Box& upper, const Box& space, double height) {
    return {space.left, upper.bottom - height, space.right, upper.bottom};
}

}  // namespace

Arrangement lying(const Box& space, const Foot& foot, double legend_height, const Sharing& sharing) {
    Arrangement out;
    share_top(out, space, sharing);
    out.legend = legend_under(out.figure, space, legend_height);
    out.panel = {space.left, space.bottom, space.left + panel_width(space, false),
                 space.bottom + std::max(foot.panel, kTitleBlockHeight)};
    const double width = space.width() / 3.0;
    const double top = out.legend.bottom - kOverColumns;
    const double block_top = space.bottom + kTitleBlockHeight;
    const double foot_tops[] = {out.panel.top, block_top, block_top + foot.revisions};
    double left = space.left;
    for (const double foot_top : foot_tops) {
        out.columns.push_back({left, foot_top + kUnderColumns, left + width, top});
        left += width;
    }
    return out;
}

Arrangement upright(const Box& space, const Foot& foot, double legend_height, const Sharing& sharing) {
    Arrangement out;
    share_top(out, space, sharing);
    out.legend = legend_under(out.figure, space, legend_height);
    const double middle = space.centre().x;
    const double top = out.legend.bottom;
    const bool is_below = sharing.split >= 1.0;
    if (is_below) out.diagram = {middle, top - sharing.diagram_height, space.right, top};
    const double blocks_top = space.bottom + kTitleBlockHeight + foot.revisions;
    out.panel = {space.left, blocks_top, space.right, blocks_top + foot.panel};
    const double bottom = out.panel.top + kUnderColumns;
    out.columns = {{space.left, bottom, middle, top - kOverColumns},
                   {middle, bottom, space.right, (is_below ? out.diagram.bottom : top) - kOverColumns}};
    return out;
}

double panel_width(const Box& space, bool is_upright) {
    return is_upright ? space.width() : space.width() - kTitleBlockWidth;
}

double revisions_width(const Box& space, bool is_upright) {
    return is_upright ? space.width() : space.width() / 3.0;
}

std::vector<Sharing> sharings(bool is_upright) {
    std::vector<Sharing> out;
    if (is_upright) {
        for (const double squeeze : kSqueezes)
            for (const double height : kDiagramHeights) add_heights(out, {kTallestUpright, 1.0, height, squeeze});
        return out;
    }
    for (const double share : kShares)
        for (const double squeeze : kSqueezes) add_heights(out, {kTallestLying, share, 0.0, squeeze});
    return out;
}

std::span<const Sharing> tight_sharings(bool is_upright) {
    if (is_upright) return kTightUpright;
    return kTightLying;
}

}  // namespace seatload::sheet
