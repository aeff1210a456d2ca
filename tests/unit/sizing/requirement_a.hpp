// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/demand/requirement.hpp>

namespace seatload::test {

/// What spring A (support/spring_a.hpp) is wanted for: its loads at 48 mm and 36 mm, in a bore.
inline demand::Requirement requirement_a() {
    demand::Requirement r;
    r.limits = demand::school_defaults(spring::School::en_13906);
    r.space.bore = demand::Fit{28.5 * mm, 28.6 * mm, 28.5 * mm};
    r.space.seated_height = 48.0 * mm;
    r.space.full_travel_height = 36.0 * mm;
    r.seated_load = {100.0 * newton, 122.0 * newton};
    r.full_travel_load = {200.0 * newton, 240.0 * newton};
    return r;
}

}  // namespace seatload::test
