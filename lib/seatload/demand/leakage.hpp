// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/demand/plunger.hpp>

namespace seatload::demand {

/// Pressure under the parked plunger [MPa]: as given, or what supply and leakage make of it over all corners of the
/// leakage; absent when there is none. Two similar orifices, or two laminar gaps in a row (textbook); where one gap has
/// no viscosity the oil is the same in both, and it does not matter.
std::optional<Interval<Stress>> leak_pressure(const PlungerPressures& pressures);

}  // namespace seatload::demand
