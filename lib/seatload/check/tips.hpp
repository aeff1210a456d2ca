// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <seatload/check/numbers.hpp>

namespace seatload::check {

/// The closest that end tips are ordered half a turn apart [turns, plus-minus]: 15 degrees. A winder who trims the ends
/// after coiling holds it at a price (estimate; common practice, no source). Untrimmed, the ends of tension springs
/// stray by 20 degrees at 3 to 5 coils, 30 at 6 to 8, 40 at 9 to 12 (a spring maker's page).
inline constexpr double kClosestTips = 15.0 / 360.0;
/// Closer tolerances of the tips are ordered in whole steps of 5 degrees [turns].
inline constexpr double kTipStep = 5.0 / 360.0;

/// How nearly the end tips of a spring on a sliding seat stand half a turn apart, plus-minus, in turns.
struct Tips {
    double usual = 0.0;    ///< as asked for, or as is usual
    double ordered = 0.0;  ///< as printed on the sheet: what a spec says, else the usual, or closer where lean wants it
    /// Up to where bore and rod (or the stated share of D) leave room for the lean; never more than usual or ordered.
    double leaves_room = 0.0;
    double most_lean_mm = 0.0;  ///< with the tips at the worse end of what is ordered
    double room_mm = 0.0;       ///< for it, beside the largest coil

    bool is_closer() const { return ordered < usual - 1e-9; }
    /// Whether what is ordered keeps the lean within its room.
    bool is_enough() const { return leaves_room >= ordered - 1e-9; }
};

/// The tips of a spring that is to be half a turn over; nothing where no seat slides, and for one that is not half a
/// turn over, whose tips stand anyhow. What a spec already orders of them stays. Else the tolerance is the usual one;
/// where it lets the spring lean further than there is room, the largest whole step that does not; where even the
/// closest does, the closest, and it is not enough.
std::optional<Tips> tips(const Coil& coil, double free_length_mm);

/// Whether a spring leans further than its room while its tips stand as a winder will hold them at best: within
/// kClosestTips of half a turn, or anyhow when it is not to be half a turn over, up to a quarter of a turn off (JIS B
/// 2707's tolerance of the coils). False where no seat slides. Once true, it stays so for longer springs.
bool leans_too_far(const Coil& coil, double free_length_mm);

/// Why a sheet may turn away a spring that counts as good in a simulation, whose tips stray less.
inline constexpr std::string_view kLongestForWorstTips =
    "The longest L0 on a sheet is for end tips at their worst, so that springs that count as good here can lie above "
    "it.";

/// "180° ±20°".
std::string tips_apart(const Tips& tips);

/// What is ordered of the tips and what lean that lets in, in whole sentences; empty where lean is not looked at.
std::string tips_in_words(const Tips& tips);

}  // namespace seatload::check
