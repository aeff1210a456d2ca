// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/sheet/drawing.hpp>

namespace seatload::test {

/// What is wrong with a page, in words: texts that overlap one another, leave the frame, are smaller than 2.5 mm,
/// narrowed too far, or are crossed by a line that was not wiped away behind them (so also those that leave the cell of
/// a table). Empty when nothing is.
std::vector<std::string> layout_faults(const sheet::Drawing& drawing);

/// How far down a page is written on: from the top of its room to its lowest text above the title block, over the room
/// there is.
double written_share(const sheet::Drawing& page);

}  // namespace seatload::test
