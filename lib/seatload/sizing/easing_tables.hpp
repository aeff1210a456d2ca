// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sizing/easing.hpp>

namespace seatload::sizing {

// Each number is tried as far as a person would still call it the same mechanism, or as the limit makes sense.

/// The numbers of the mechanism: loads, room, surroundings, mass.
std::vector<Easing> mechanism_easings();

/// The limits that guard against failure or keep to what can be wound.
std::vector<Easing> limit_easings();

}  // namespace seatload::sizing
