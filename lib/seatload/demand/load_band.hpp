// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include <seatload/units/quantities.hpp>

namespace seatload::demand {

/// What a mechanism needs of a force: at least, at most, or both; either may be absent.
/// The lower bound must hold hot and after load loss, the upper bound cold and new.
struct LoadBand {
    std::optional<Force> at_least;
    std::optional<Force> at_most;
};

}  // namespace seatload::demand
