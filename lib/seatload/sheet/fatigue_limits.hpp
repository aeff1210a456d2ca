// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/sheet/facts.hpp>

namespace seatload::sheet {

/// How far the corrected stresses of a piece may go: a piece that keeps both has the fatigue factor asked for.
struct FatigueLimits {
    Stress upper;  ///< of tau_k2, at full travel
    Stress range;  ///< of tau_kh, from L1 to L2
};

/// The limits of fatigue for pieces whatever the maker altered. The upper stress is that of the largest load accepted
/// at L2, and the range what the endurance line of the spec's limits leaves beside it, with the fatigue factor asked
/// for; where that is less than the range of the spring as drawn, its range stays and the upper stress gives way. Never
/// below the stresses of the spring as drawn. Only for a dynamic duty. Endurance: Zimmerli, Shigley Eq. 10-28 to 10-30;
/// for wire of which none is known, the range as drawn.
FatigueLimits fatigue_limits(const Facts& facts);

}  // namespace seatload::sheet
