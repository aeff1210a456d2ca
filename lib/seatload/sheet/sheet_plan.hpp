// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/sheet/entry.hpp>
#include <seatload/sheet/scale.hpp>
#include <seatload/sheet/set_entries.hpp>
#include <seatload/sheet/sheet_arrangement.hpp>
#include <seatload/sheet/spring_figure.hpp>

namespace seatload::sheet {

/// What has to find room on a sheet.
struct SheetStock {
    Box space;
    bool is_upright = false;
    const SpringFigure& figure;
    const Entries& entries;
    const Entries& evened;  ///< the same in the order for a full sheet
    double legend_height = 0.0;
    Foot foot;
};

/// Where everything goes, and how large.
struct SheetPlan {
    Arrangement where;
    Scale scale;
    SetEntries text;
    double pitch;     ///< of the text
    Keeping keeping;  ///< how it stands in the columns
};

/// The box a figure is drawn into, inside its part of the sheet.
Box figure_box(const Arrangement& where);

/// The plan with the largest scale of the figure at which all entries find room; nothing when they never do.
std::optional<SheetPlan> plan_sheet(const SheetStock& stock);

}  // namespace seatload::sheet
