// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string>
#include <vector>

#include <seatload/spring/ends.hpp>
#include <seatload/units/quantities.hpp>

namespace seatload::demand {

/// What fitting springs are compared by.
enum class Criterion {
    tolerance_room,  ///< more is better
    stress_margin,   ///< more is better
    cost,            ///< of the wire, less is better
    release,         ///< load at full travel, less is better
};

/// All criteria, the one that decides first in front.
using Order = std::array<Criterion, 4>;

inline constexpr Order kUsualOrder{Criterion::tolerance_room, Criterion::stress_margin, Criterion::cost,
                                   Criterion::release};

/// What the user would rather have, among springs that all fit. Nothing here is a limit.
struct Preference {
    Order order = kUsualOrder;
    std::vector<std::string> grades;  ///< ids
    std::vector<Length> diameters;    ///< of the wire
    std::vector<spring::Ends> ends;
};

/// The order in which some criteria come first; the rest follow as usual.
Order order_led_by(const std::vector<Criterion>& first);

}  // namespace seatload::demand
