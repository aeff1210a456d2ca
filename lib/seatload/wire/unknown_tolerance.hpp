// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace seatload::wire {

/// What a wire of whose diameter no tolerance is known makes better than it is.
enum class Flattered { solid_length, solid_length_and_shares };

/// That no tolerance of a spring's wire is known, and what follows: no number of the paper may pass for one that counts
/// it. A sentence without its capital and full stop.
inline std::string unknown_tolerance_words(Flattered flattered) {
    constexpr std::string_view kCounted = "no tolerance of its wire is known: counted as none, so Lc ";
    return std::string(kCounted) +
           (flattered == Flattered::solid_length ? "is flattered" : "and the shares are flattered");
}

}  // namespace seatload::wire
