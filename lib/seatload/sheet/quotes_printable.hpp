// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/core/diagnostic.hpp>
#include <seatload/record/quotation.hpp>

namespace seatload::sheet {

/// The comparison with every text that users and makers wrote made readable() for printing; each complaint is told
/// once.
record::Comparison printable(record::Comparison all, Diagnostics& diagnostics);

}  // namespace seatload::sheet
