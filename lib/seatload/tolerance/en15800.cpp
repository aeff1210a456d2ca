// SPDX-License-Identifier: MIT
#include <seatload/tolerance/en15800.hpp>

namespace seatload::tolerance {

Force load_tolerance(Length d, Length D, double n, Force load, int grade) {
    return load_tolerance_n(in_mm(d), in_mm(D), n, in_newton(load), grade) * newton;
}

Length free_length_tolerance(Length d, Length D, double n, Rate rate, int grade) {
    return free_length_tolerance_mm(in_mm(d), in_mm(D), n, in_newton_per_mm(rate), grade) * mm;
}

Length squareness(Length free_length, int grade) {
    return free_length * (grade == 1 ? 0.03 : grade == 2 ? 0.05 : 0.08);
}

Length parallelism(Length outside_diameter, int grade) {
    return outside_diameter * (grade == 1 ? 0.015 : grade == 2 ? 0.03 : 0.06);
}

std::optional<Length> diameter_tolerance(const Tables& tables, Length D, double w, int grade) {
    if (w < 4.0 || w > 20.0) return std::nullopt;
    const std::size_t band = w <= 8.0 ? 0 : w <= 14.0 ? 1 : 2;
    for (const DiameterRow& row : tables.diameter)
        if (D <= row.up_to) {
            // The first row takes its lower end too.
            const bool inside = &row == &tables.diameter.front() ? D >= row.over : D > row.over;
            return inside ? std::optional(row.plus_minus[static_cast<std::size_t>(grade - 1)][band]) : std::nullopt;
        }
    return std::nullopt;
}

}  // namespace seatload::tolerance
