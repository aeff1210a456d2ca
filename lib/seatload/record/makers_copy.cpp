// SPDX-License-Identifier: MIT
#include <seatload/record/makers_copy.hpp>

namespace seatload::record {

Spec makers_copy(Spec spec) {
    spec.why.clear();
    spec.identity.engine.clear();
    spec.seated_demand = {};
    spec.full_travel_demand = {};
    return spec;
}

}  // namespace seatload::record
