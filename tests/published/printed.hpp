// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/units/dimension.hpp>

namespace seatload::published {

/// A number as a source prints it, in the base unit of its dimension.
struct Printed {
    double value = 0.0;
    double half_unit = 0.0;  ///< half a unit of the last printed digit
    double unit = 1.0;       ///< size of the unit it is printed in, for telling results in the same unit
    std::string unit_name;   ///< empty for a plain number
};

/// "4.13 lbf/in" is 4.13 lbf/in give or take 0.005 lbf/in; "1.2556e5 psi" is good to 5 psi.
/// The dimension is null for a plain number. Throws std::runtime_error on a text that is no such number.
Printed read_printed(const units::Dimension* dimension, const std::string& text);

}  // namespace seatload::published
