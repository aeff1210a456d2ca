// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/inspection/lot_verdict.hpp>
#include <seatload/sheet/ruled_table.hpp>

namespace seatload::sheet {

/// Each characteristic with limits, U, how many pieces conform, and its verdict.
RuledTable inspection_verdict_table(const inspection::LotInspection& lot, double width);

/// Mean, deviation, extremes, tolerance interval and capability of each characteristic measured.
RuledTable inspection_statistics_table(const inspection::LotInspection& lot, double width);

/// Every piece with its values; one that is not proven bears a "?", one that fails an "×".
RuledTable inspection_pieces_table(const inspection::LotInspection& lot, double width);

}  // namespace seatload::sheet
