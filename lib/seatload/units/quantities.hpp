// SPDX-License-Identifier: MIT
#pragma once

// The one door to Boost.Units. One coherent system, millimetre-tonne-second: a force is then in newton, a stress in
// megapascal and a rate in newton per millimetre, each with the factor 1, and millimetre inputs round-trip exactly.

#include <boost/units/base_units/angle/radian.hpp>
#include <boost/units/base_units/metric/ton.hpp>
#include <boost/units/base_units/si/kelvin.hpp>
#include <boost/units/base_units/si/kilogram.hpp>
#include <boost/units/base_units/si/meter.hpp>
#include <boost/units/base_units/si/second.hpp>
#include <boost/units/make_system.hpp>
#include <boost/units/physical_dimensions.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/scaled_base_unit.hpp>

namespace seatload {
namespace units_detail {

namespace bu = boost::units;
using Millimetre = bu::scaled_base_unit<bu::si::meter_base_unit, bu::scale<10, bu::static_rational<-3>>>;
using System = bu::make_system<Millimetre, bu::metric::ton_base_unit, bu::si::second_base_unit,
                               bu::si::kelvin_base_unit, bu::angle::radian_base_unit>::type;
template <class Dimension>
using Quantity = bu::quantity<bu::unit<Dimension, System>>;

}  // namespace units_detail

using Length = units_detail::Quantity<boost::units::length_dimension>;                ///< [mm]
using Force = units_detail::Quantity<boost::units::force_dimension>;                  ///< [N]
using Stress = units_detail::Quantity<boost::units::pressure_dimension>;              ///< [MPa]
using Rate = units_detail::Quantity<boost::units::surface_tension_dimension>;         ///< [N/mm]
using Energy = units_detail::Quantity<boost::units::energy_dimension>;                ///< [N mm]
using Angle = units_detail::Quantity<boost::units::plane_angle_dimension>;            ///< [rad]
using Density = units_detail::Quantity<boost::units::mass_density_dimension>;         ///< [t/mm3]
using Mass = units_detail::Quantity<boost::units::mass_dimension>;                    ///< [t]
using Frequency = units_detail::Quantity<boost::units::frequency_dimension>;          ///< [1/s]
using Area = units_detail::Quantity<boost::units::area_dimension>;                    ///< [mm2]
using Time = units_detail::Quantity<boost::units::time_dimension>;                    ///< [s]
using Torque = Energy;                                                                ///< [N mm], force times arm
using Viscosity = units_detail::Quantity<boost::units::dynamic_viscosity_dimension>;  ///< dynamic [MPa s]

/// A temperature on the Celsius scale [deg C]; a scale with an offset, so not a quantity that can be added up.
struct Celsius {
    double degrees = 20.0;
    auto operator<=>(const Celsius&) const = default;
};

/// A share of one (0.56, or 5 % as 0.05).
struct Share {
    double value = 0.0;
    auto operator<=>(const Share&) const = default;
};

inline constexpr Length mm = Length::from_value(1.0);
inline constexpr Force newton = Force::from_value(1.0);
inline constexpr Stress MPa = Stress::from_value(1.0);
inline constexpr Rate newton_per_mm = Rate::from_value(1.0);
inline constexpr Density kg_per_m3 = Density::from_value(1e-12);
inline constexpr Mass gram = Mass::from_value(1e-6);
inline constexpr Frequency hertz = Frequency::from_value(1.0);
inline constexpr Angle radian = Angle::from_value(1.0);
inline constexpr Area square_mm = Area::from_value(1.0);
inline constexpr Time second = Time::from_value(1.0);
inline constexpr Torque newton_mm = Torque::from_value(1.0);
inline constexpr Viscosity millipascal_second = Viscosity::from_value(1e-9);

/// The plain number of a quantity in the unit of its alias above.
template <class Q>
constexpr double in_base_unit(const Q& quantity) {
    return quantity.value();
}
constexpr double in_mm(const Length& length) { return length.value(); }
constexpr double in_newton(const Force& force) { return force.value(); }
constexpr double in_mpa(const Stress& stress) { return stress.value(); }
constexpr double in_newton_per_mm(const Rate& rate) { return rate.value(); }
constexpr double in_kg_per_m3(const Density& density) { return density.value() * 1e12; }
constexpr double in_gram(const Mass& mass) { return mass.value() * 1e6; }
constexpr double in_square_mm(const Area& area) { return area.value(); }
constexpr double in_second(const Time& time) { return time.value(); }
constexpr double in_newton_mm(const Torque& torque) { return torque.value(); }
constexpr double in_millipascal_second(const Viscosity& viscosity) { return viscosity.value() * 1e9; }
constexpr double in_bar(const Stress& pressure) { return pressure.value() * 10.0; }
constexpr double in_hertz(const Frequency& frequency) { return frequency.value(); }

}  // namespace seatload
