// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/text.hpp>
#include <seatload/inspection/characteristic.hpp>

namespace seatload::inspection {

/// "1 piece", "20 pieces".
inline std::string pieces(int count) { return std::to_string(count) + (count == 1 ? " piece" : " pieces"); }

/// "free length L0".
inline std::string named(Kind kind) { return std::string(words(kind)) + ' ' + std::string(symbol(kind)); }

/// "180° ±15°".
inline std::string degrees_words(double degrees) { return "180° ±" + significant(degrees, 3) + "°"; }

/// What is held to limits, in words: "free length L0"; of coils of which only the part of a turn is, their end tips.
inline std::string named(const Characteristic& c) {
    return c.whole_turns_free ? "end tips apart " + degrees_words(c.ordered_tip_degrees()) : named(c.kind);
}

}  // namespace seatload::inspection
