// SPDX-License-Identifier: MIT
#include <seatload/demand/limits.hpp>

namespace seatload::demand {

Limits school_defaults(spring::School school) {
    Limits limits;
    limits.school = school;
    if (school == spring::School::en_13906) {
        limits.stress_share = 0.56;
        return limits;
    }
    limits.stress_safety = 1.2;
    limits.stress_factor = StressFactor::bergstraesser;
    limits.gap_rule = GapRule::share_of_travel;
    limits.solid_form = SolidForm::textbook;
    limits.largest_index = 12.0;
    limits.fewest_active_coils = 3.0;
    limits.most_active_coils = 15.0;
    return limits;
}

}  // namespace seatload::demand
