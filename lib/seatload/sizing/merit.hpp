// SPDX-License-Identifier: MIT
#pragma once

#include <limits>

#include <seatload/check/numbers.hpp>

namespace seatload::sizing {

/// What makes one fitting spring better than another.
struct Merit {
    /// How many times the maker's load tolerance fits between the loads it gives and the nearest load limit; infinite
    /// when no load is limited.
    double tolerance_room = 0.0;
    /// Share of the permissible static stress left unused.
    double stress_margin = 0.0;
    /// Wire cost of one spring in units of a tonne of hard-drawn wire; infinite when the grade's cost is not known.
    double cost = std::numeric_limits<double>::infinity();
};

/// Tolerance room counted in tenths, the finest difference worth an order: within a tenth the stress decides.
double room_in_tenths(double tolerance_room);

/// True when `a` is better: more tolerance room in whole tenths, then more stress margin, then cheaper wire.
bool better(const Merit& a, const Merit& b);

/// Tolerance room towards the lower and the upper load limits. The first grows with the free length, the second falls.
struct Rooms {
    double below = std::numeric_limits<double>::infinity();
    double above = std::numeric_limits<double>::infinity();
};
Rooms tolerance_rooms(const check::Coil& coil, double free_length_mm);

Merit merit(const check::Coil& coil, double free_length_mm);

}  // namespace seatload::sizing
