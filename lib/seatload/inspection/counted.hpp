// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/inspection/characteristic.hpp>

namespace seatload::inspection {

/// "1 piece", "20 pieces".
inline std::string pieces(int count) { return std::to_string(count) + (count == 1 ? " piece" : " pieces"); }

/// "free length L0".
inline std::string named(Kind kind) { return std::string(words(kind)) + ' ' + std::string(symbol(kind)); }

}  // namespace seatload::inspection
