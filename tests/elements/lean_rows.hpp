// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <elements/calculix.hpp>

namespace seatload::test::elements {

/// A computed case of the study of lean: active coils of D = 10 mm pressed straight by a share of their length.
struct LeanRow {
    Head head = Head::slides;
    double moduli = 0.0;  ///< G/E
    double index = 0.0;
    double slenderness = 0.0;  ///< L/D of the active coils
    double n = 0.0;
    double compression = 0.0;  ///< s/L
    double lean = 0.0;         ///< of the head, share of D
    double bow = 0.0;          ///< of the coil that is farthest off the axis, share of D

    ActiveCoils coils() const;
    double deflection_mm() const { return compression * coils().length_mm(); }
    /// The bound of the library, share of D.
    double bound() const;
    /// How far n is past whole turns.
    double over() const;
};

inline constexpr const char* kLeanColumns = "head,G/E,D/d,L/D,n,s/L,lean/D,bow/D";

/// The rows of tests/elements/lean_table.csv.
std::vector<LeanRow> lean_rows();

/// A row as it stands in the table.
std::string text(const LeanRow& row);

}  // namespace seatload::test::elements
