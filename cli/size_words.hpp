// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <string>
#include <string_view>

#include <seatload/core/text.hpp>
#include <seatload/sizing/merit.hpp>

namespace seatload::cli {

/// A tolerance room as `size` shows and compares it, in whole tenths; "-" when no tolerance touches it.
inline std::string room_words(double room) {
    return std::isinf(room) ? "-" : fixed(sizing::room_in_tenths(room) / 10.0, 1);
}

/// "9.5 mm" of so many significant digits at most; a plain number when there is no unit.
inline std::string with_unit(double value, std::string_view unit, int digits) {
    return significant(value, digits) + (unit.empty() ? "" : " " + std::string(unit));
}

}  // namespace seatload::cli
