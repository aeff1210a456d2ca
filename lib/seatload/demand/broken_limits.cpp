// SPDX-License-Identifier: MIT
#include <seatload/demand/broken_limits.hpp>

#include <seatload/demand/plunger_behaviour.hpp>

namespace seatload::demand {
namespace {

constexpr double kSlack = 1e-9;  // of a limit, so that a spring made to it keeps it

bool is_home_in_time(const Plunger& plunger, const SpringLoads& loads) {
    if (!plunger.drain) return true;
    const auto time = behaviour(plunger, loads, {}).cold_return;
    return time && time->high <= plunger.drain->longest_time * (1.0 + kSlack);
}

bool keeps_value(const BudgetLimit& limit, const SpringLoads& loads) {
    const Interval<Force>& load = limit.place == LoadPlace::seated ? loads.seated : loads.full_travel;
    const Force slack = kSlack * (limit.value < 0.0 * newton ? -limit.value : limit.value);
    return limit.bound == Bound::at_least ? load.low >= limit.value - slack : load.high <= limit.value + slack;
}

}  // namespace

std::vector<std::size_t> broken_limits(const Plunger& plunger, const Budget& budget, const SpringLoads& loads) {
    const bool in_time = is_home_in_time(plunger, loads);
    std::vector<std::size_t> broken;
    for (std::size_t i = 0; i < budget.limits.size(); ++i) {
        const BudgetLimit& limit = budget.limits[i];
        // that F2 is not below the band of F1 says nothing of this spring
        if (limit.id == "above_seated" || keeps_value(limit, loads)) continue;
        const bool is_time = limit.id == "seated_in_time" || limit.id == "full_travel_in_time";
        if (!is_time || !in_time) broken.push_back(i);
    }
    return broken;
}

}  // namespace seatload::demand
