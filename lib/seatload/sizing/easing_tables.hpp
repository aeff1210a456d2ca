// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include <seatload/sizing/easing.hpp>

namespace seatload::sizing {

/// The number of a quantity in the program's units, if there is one.
template <class Q>
std::optional<double> plain(const std::optional<Q>& quantity) {
    return quantity ? std::optional<double>(quantity->value()) : std::nullopt;
}

/// The number when it is above the least it may come to.
inline std::optional<double> above(double number, double least) {
    return number > least ? std::optional<double>(number) : std::nullopt;
}

// What the rows say of an easing, see its members.
using Mends = std::vector<std::string_view>;
inline constexpr bool kMechanism = false, kSafeguard = true;
inline constexpr bool kMayTurn = false, kSteady = true;
inline constexpr bool kSameWire = false, kMoreWire = true;

// Each number is tried as far as a person would still call it the same mechanism, or as the limit makes sense.

/// The numbers of the mechanism: loads, room, surroundings, mass.
std::vector<Easing> mechanism_easings();

/// The limits that guard against failure or keep to what can be wound.
std::vector<Easing> limit_easings();

}  // namespace seatload::sizing
