// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace seatload::tolerance {

/// Random word number `counter` (from 0) of the stream a seed begins: the splitmix64 generator of Steele, Lea and
/// Flood, "Fast splittable pseudorandom number generators" (2014). Its state only counts, so that any word can be asked
/// for by itself, in any order, by any thread.
constexpr std::uint64_t counter_random(std::uint64_t seed, std::uint64_t counter) {
    std::uint64_t z = seed + (counter + 1) * 0x9E3779B97F4A7C15ULL;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31);
}

}  // namespace seatload::tolerance
