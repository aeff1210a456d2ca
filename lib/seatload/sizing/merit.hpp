// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <limits>

#include <seatload/check/numbers.hpp>
#include <seatload/sizing/tolerance_rooms.hpp>

namespace seatload::sizing {

/// What makes one fitting spring better than another.
struct Merit {
    /// How many times what the maker's tolerances do to it fits between it and the nearest limit they can break: loads,
    /// bore, rod, room to solid, free length, stress, buckling, lean (see ToleranceRooms); infinite when nothing is
    /// limited.
    double tolerance_room = 0.0;
    /// Share of the permissible static stress left unused.
    double stress_margin = 0.0;
    /// Wire cost of one spring in units of a tonne of hard-drawn wire; infinite when the grade's cost is not known.
    double cost = std::numeric_limits<double>::infinity();
    /// Load that the mechanism has to push back at full travel, cold and new [N]; 0 where nothing pushes it back.
    double release_n = 0.0;
    /// Its active coils are not half a turn over, and a seat can slide: it leans when it is pushed straight.
    bool leans = false;
    /// It leans further than there is room while its end tips stand as well as a winder will hold them.
    bool leans_too_far = false;
};

/// Tolerance room counted in tenths, the finest difference worth an order.
double room_in_tenths(double tolerance_room);

/// With less room the nearest limit alone breaks over 18 % of a lot (normal curve, 0.9 deviations; demos simulated: 15
/// to 20 %). In the usual order any number up to the first spring's room (demos: 5 to 8) offers the same spring first.
inline constexpr double kFewKeepTenths = 3.0;

/// A merit counted in steps, smaller being better: its class (0; 1 leaning, with whole turns or thereabouts; 2 leaning
/// too far, or with less room than kFewKeepTenths), then by demand::Criterion tolerance room in tenths, stress margin
/// in per cent, cost in steps of 5 % and load at full travel in steps of 2 %. Finer differences are smaller than what
/// is known of tolerances, strengths and prices.
using Standing = std::array<int, 5>;
Standing standing(const Merit& merit);

/// The place of a criterion in a standing.
constexpr std::size_t place_of(demand::Criterion criterion) { return 1 + static_cast<std::size_t>(criterion); }

/// The steps in the order in which they decide: the class always comes first.
Standing ranked(const Standing& steps, const demand::Order& order);

/// True when `a` is better: by their class and steps in the order given, then by more stress margin, cheaper wire and
/// less load at full travel, however little.
bool better(const Merit& a, const Merit& b, const demand::Order& order = demand::kUsualOrder);

Rooms tolerance_rooms(const check::Coil& coil, double free_length_mm);

Merit merit(const check::Coil& coil, double free_length_mm);
/// The same, with the rooms of the coil at hand.
Merit merit(const check::Coil& coil, const ToleranceRooms& rooms, double free_length_mm);

}  // namespace seatload::sizing
