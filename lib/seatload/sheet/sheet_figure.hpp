// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/spring_figure.hpp>

namespace seatload::sheet {

/// The figure of a sheet with the words at its dimensions: what is required plain, the rest in brackets. On a paper in
/// inches they are in inches alone: the tables have both.
SpringFigure sheet_figure(const Facts& facts);

/// "Free spring, right hand, scale 5:1".
std::string figure_heading(const Facts& facts, Scale scale);
/// The same without the scale, which the title block has too.
std::string short_figure_heading(const Facts& facts);

}  // namespace seatload::sheet
