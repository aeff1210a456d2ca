// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include <seatload/bench/groups.hpp>
#include <seatload/bench/measured.hpp>

namespace seatload::bench {

/// Loading less unloading at the heights that were read both ways; nothing when there is no such height.
std::optional<Hysteresis> hysteresis_of(const std::vector<Group>& loading, const std::vector<Group>& unloading,
                                        double largest_load_n);

}  // namespace seatload::bench
