// SPDX-License-Identifier: MIT
#include <seatload/demand/preference.hpp>

#include <algorithm>

namespace seatload::demand {

Order order_led_by(const std::vector<Criterion>& first) {
    Order order = kUsualOrder;
    auto free = order.begin();
    for (const Criterion criterion : first) {
        const auto at = std::find(free, order.end(), criterion);
        if (at == order.end()) continue;
        std::rotate(free, at, at + 1);
        ++free;
    }
    return order;
}

}  // namespace seatload::demand
