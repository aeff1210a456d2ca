// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/sheet/facts.hpp>

// Where on its load line a spring meets the limits that the diagram marks.

namespace seatload::sheet {

/// The length [mm] at which the spring begins to buckle, LK = L0 - sK (EN 13906-1 cl. 9.14); nothing when it never
/// does, or when a bore or rod keeps it straight.
std::optional<Length> buckling_length(const Facts& facts);

/// The load [N] at which the stress, with the factor that the spec's limits count with, reaches the permissible one.
Force permissible_load(const Facts& facts);

}  // namespace seatload::sheet
