// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::bench {

constexpr double square(double x) { return x * x; }

}  // namespace seatload::bench
