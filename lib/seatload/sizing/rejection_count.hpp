// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include <seatload/sizing/space.hpp>
#include <seatload/tolerance/tables.hpp>

namespace seatload::sizing {

/// How many combinations of one wire with one kind of ends each rule rejects, whatever else rejects them, by rule.
/// Every line is asked by every rule, so the time grows with their number. A spring without active coils has no rate:
/// the coil count rejects it, and nothing else can be asked of it.
std::vector<unsigned long long> count_rejections(const Space& space, std::span<const double> free_lengths,
                                                 const tolerance::Tables& tables, const WireOption& wire,
                                                 spring::Ends ends);

}  // namespace seatload::sizing
