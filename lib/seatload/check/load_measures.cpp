// SPDX-License-Identifier: MIT
#include <seatload/check/load_measures.hpp>

namespace seatload::check::detail {

Measure seated_least(const Coil& c, double L0) {
    return {c.hot_load_n(L0, c.demand.seated_height_mm), *c.demand.seated_at_least_n};
}
Measure seated_most(const Coil& c, double L0) {
    return {c.cold_load_n(L0, c.demand.seated_height_mm), *c.demand.seated_at_most_n};
}
Measure full_least(const Coil& c, double L0) {
    return {c.hot_load_n(L0, c.demand.full_travel_height_mm), *c.demand.full_at_least_n};
}
Measure full_most(const Coil& c, double L0) {
    return {c.cold_load_n(L0, c.demand.full_travel_height_mm), *c.demand.full_at_most_n};
}

}  // namespace seatload::check::detail
