// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/entry.hpp>
#include <seatload/sheet/facts.hpp>

// The tables of a sheet, group by group: the field list of ISO 2162-2, EN 15800 annex B and MIL-STD-29A.

namespace seatload::sheet {

Entries wire_entries(const Facts& facts);
Entries geometry_entries(const Facts& facts);
Entries load_entries(const Facts& facts);
Entries process_entries(const Facts& facts);
Entries service_entries(const Facts& facts);
Entries inspection_entries(const Facts& facts);
Entries adjust_entries(const Facts& facts);
Entries order_entries(const Facts& facts);

/// All groups, in the order a winder asks for them.
Entries sheet_entries(const Facts& facts);
/// The same in another order of their groups, which fills the columns of a full sheet more evenly.
Entries evened(const Entries& sheet_entries);

}  // namespace seatload::sheet
