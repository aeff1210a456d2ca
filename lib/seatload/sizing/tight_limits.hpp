// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include <seatload/sizing/relief.hpp>

namespace seatload::sizing {

/// What fits once one number has given way by a hundredth.
struct Eased {
    const Easing* easing = nullptr;
    double now = 0.0;
    double eased = 0.0;
    unsigned long long fit = 0;
    double room_in_tenths = 0.0;  ///< tolerance room of the spring that would be offered first; 0 when none fits
};

/// The numbers of a requirement that hold its answer.
struct TightLimits {
    demand::Grid grid;                ///< on which this was searched
    bool is_grid_coarser = false;     ///< than that of the requirement
    unsigned long long fit = 0;       ///< as required, on the grid searched here: what the eased ones are held against
    double room_in_tenths = 0.0;      ///< of the spring that would be offered first on it
    unsigned long long own_fit = 0;   ///< as required, on the grid of the requirement
    double own_room_in_tenths = 0.0;  ///< of the spring offered first
    std::vector<Eased>
        holding;  ///< those that bring more springs or more room, the most room first, then the most springs
    std::vector<const Easing*> others;  ///< those that bring neither
};

inline constexpr unsigned long long kFew = 1000;     // springs: below it the choice of the best is a narrow one
inline constexpr double kLittleRoomInTenths = 10.0;  // what tolerances do just fits before the nearest limit

/// True when something fits, but few springs do, or none with room for what the maker's tolerances do to it.
bool are_few(const Census& census);

/// Eases each number that the requirement limits by a hundredth of it and searches again, on the grid of the
/// requirement so changed. Numbers whose rules reject nothing alone and that shift neither loads nor space are taken to
/// bring nothing: what they would let in, another limit keeps out. Where many fit on a grid of more than 10^9
/// combinations, steps of mean diameter and free length are doubled until it is smaller, as then the room alone is in
/// question, which a few springs show as well as all.
TightLimits tight_limits(const demand::Requirement& requirement, const Census& census, const Setting& setting);

}  // namespace seatload::sizing
