// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <optional>

#include <seatload/tolerance/tables.hpp>

namespace seatload::tolerance {

// EN 15800 grades: 1 (fine), 2 (medium, the one meant when none is stated), 3 (coarse). The formulas of this file are
// from memory and confirmed only in size, by the percentages of JIS B 2707: a sheet gives their result as a number and
// names the grade as what it corresponds to.

/// Factor Q of a grade.
constexpr double grade_factor(int grade) { return grade == 1 ? 0.63 : grade == 2 ? 1.0 : 1.6; }

/// a_F [N] for d and D in mm.
inline double load_tolerance_base_n(double d_mm, double D_mm) {
    const double w = D_mm / d_mm / 10.0;
    const double shape = -0.84 * w * w * w + 3.781 * w * w - 4.244 * w + 2.274;
    return 65.92 * std::pow(d_mm, 3.3) / std::pow(D_mm, 1.6) * shape;
}

/// k_F, for n active coils.
constexpr double coils_factor(double n) { return -1.0 / (3.0 * n * n) + 8.0 / (5.0 * n) + 0.803; }

/// The part of a load's tolerance that grows with the load, in grade 2: 1.5 %.
inline constexpr double kLoadShare = 0.015;

/// Plus-minus tolerance A_F [N] of a load: (a_F k_F + 1.5 F/100) Q.
inline double load_tolerance_n(double d_mm, double D_mm, double n, double load_n, int grade) {
    return (load_tolerance_base_n(d_mm, D_mm) * coils_factor(n) + kLoadShare * load_n) * grade_factor(grade);
}

/// Plus-minus tolerance A_L0 [mm] of the free length, when it is a requirement: a_F k_F Q / R.
inline double free_length_tolerance_mm(double d_mm, double D_mm, double n, double rate_n_per_mm, int grade) {
    return load_tolerance_base_n(d_mm, D_mm) * coils_factor(n) * grade_factor(grade) / rate_n_per_mm;
}

/// The same with quantities.
Force load_tolerance(Length d, Length D, double n, Force load, int grade);
Length free_length_tolerance(Length d, Length D, double n, Rate rate, int grade);

/// Squareness e1 [mm] over the free length, ground ends: 0.03, 0.05, 0.08 of L0 (memory; w <= 12 and L0/D <= 5).
Length squareness(Length free_length, int grade);

/// Parallelism e2 [mm] of the ends, ground: 0.015, 0.03, 0.06 of De (memory).
Length parallelism(Length outside_diameter, int grade);

/// Plus-minus tolerance [mm] of De or Di for a mean diameter D and index w of a grade; nothing outside the table
/// (D 0.63 to 200 mm, w 4 to 20).
std::optional<Length> diameter_tolerance(const Tables& tables, Length D, double w, int grade);

}  // namespace seatload::tolerance
