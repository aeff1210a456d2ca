// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/load_diagram.hpp>

namespace seatload::sheet {

/// The load-length diagram of a sheet; on a paper in inches its numbers are in inches and pounds-force alone.
LoadDiagram sheet_diagram(const Facts& facts);

}  // namespace seatload::sheet
