// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::published {

inline constexpr double kInch = 25.4;  ///< [mm]

}  // namespace seatload::published
