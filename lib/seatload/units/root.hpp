// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>

#include <boost/units/pow.hpp>
#include <boost/units/quantity.hpp>

namespace seatload::units {

/// Square root of a plain number or of a quantity, so that one formula serves both.
inline double root(double square) { return std::sqrt(square); }

template <class Unit>
auto root(const boost::units::quantity<Unit>& square) {
    using Root = typename boost::units::root_typeof_helper<Unit, boost::units::static_rational<2>>::type;
    return boost::units::quantity<Root>::from_value(std::sqrt(square.value()));
}

}  // namespace seatload::units
