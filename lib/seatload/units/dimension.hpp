// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

#include <seatload/units/quantities.hpp>

namespace seatload::units {

/// A unit and its size in the base unit of its dimension: base = value * numerator / denominator + offset.
/// Factors are kept as a ratio of two exactly representable numbers, so that 1.5 in comes out as 38.1 mm.
struct UnitSize {
    std::string_view name;
    double numerator = 1.0;
    double denominator = 1.0;
    double offset = 0.0;  ///< temperatures only
};

/// A physical dimension as users write it.
struct Dimension {
    std::string_view article_and_name;  ///< "a length"
    std::string_view example;           ///< "9 mm"
    std::string_view base_unit;         ///< unit of the plain number
    std::span<const UnitSize> units;
};

/// The dimension that quantities of type Q have; specialised for every alias in quantities.hpp.
template <class Q>
const Dimension& dimension_of();

template <>
const Dimension& dimension_of<Length>();
template <>
const Dimension& dimension_of<Force>();
template <>
const Dimension& dimension_of<Rate>();
template <>
const Dimension& dimension_of<Stress>();
template <>
const Dimension& dimension_of<Angle>();
template <>
const Dimension& dimension_of<Mass>();
template <>
const Dimension& dimension_of<Density>();
template <>
const Dimension& dimension_of<Frequency>();
template <>
const Dimension& dimension_of<Area>();
template <>
const Dimension& dimension_of<Time>();
template <>
const Dimension& dimension_of<Torque>();
template <>
const Dimension& dimension_of<Viscosity>();
template <>
const Dimension& dimension_of<Celsius>();
template <>
const Dimension& dimension_of<Share>();

/// A stress as hydraulics speak of it: "a pressure", in bar first.
const Dimension& pressure_dimension();

/// All dimensions, for naming the one a misplaced unit belongs to.
std::span<const Dimension* const> all_dimensions();

template <class Q>
constexpr Q from_base(double value) {
    if constexpr (requires { Q::from_value(value); })
        return Q::from_value(value);
    else
        return Q{value};
}

}  // namespace seatload::units
