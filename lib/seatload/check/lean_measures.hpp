// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/rule.hpp>

namespace seatload::check::detail {

/// How far a sliding seat carries the far end sideways, against the room there is.
Measure lean(const Coil& c, double L0);
/// It leans less the wider the coil and the more there are of them; with open and ground ends, more turns also lengthen
/// the active part, which then leans more. Between whole and half turns the lean bulges upwards, so that it is least at
/// an end of the range or at one of those.
Measure kindest_lean(const Coil& low, const Coil& high, double L0);
/// Between the ends of the range the lean is above theirs by no more than its slope there allows, and at no number of
/// turns above the root of the squares of its parts.
Measure harshest_lean(const Coil& low, const Coil& high, double L0);

}  // namespace seatload::check::detail
