// SPDX-License-Identifier: MIT
#include <seatload/bench/hysteresis.hpp>

#include <cmath>

namespace seatload::bench {

std::optional<Hysteresis> hysteresis_of(const std::vector<Group>& loading, const std::vector<Group>& unloading,
                                        double largest_load_n) {
    Hysteresis h;
    double sum = 0.0, largest = 0.0;
    for (const Group& up : loading)
        for (const Group& down : unloading) {
            if (std::abs(up.stated_height_mm - down.stated_height_mm) > 1e-9) continue;
            const double difference = up.force_n - down.force_n;
            if (h.heights == 0 || std::abs(difference) > std::abs(largest)) {
                largest = difference;
                h.at = up.stated_height_mm * mm;
            }
            sum += difference;
            ++h.heights;
        }
    if (h.heights == 0) return std::nullopt;
    h.largest = largest * newton;
    h.mean = sum / static_cast<double>(h.heights) * newton;
    h.of_largest_load = {largest / largest_load_n};
    return h;
}

}  // namespace seatload::bench
