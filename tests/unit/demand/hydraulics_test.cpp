// SPDX-License-Identifier: MIT
#include <type_traits>

#include <seatload/demand/hydraulics.hpp>
#include <seatload/demand/plunger_statics.hpp>
#include <seatload/demand/return_time.hpp>

#include <boost/math/quadrature/gauss_kronrod.hpp>

#include "random_plunger.hpp"
#include "support/check.hpp"

using namespace seatload;

namespace {

template <class Wanted, class Got>
constexpr bool is = std::is_same_v<Wanted, std::remove_cvref_t<Got>>;

using Conductance = decltype(mm * mm * mm / second / MPa);

// Every formula with quantities: the compiler checks its dimension here.
static_assert(is<Area, decltype(demand::circle_area(mm))>);
static_assert(is<Conductance, decltype(demand::annular_conductance(mm, mm, mm, 0.5, millipascal_second))>);
static_assert(is<double, decltype(demand::annular_conductance(1.0, 1.0, 1.0, 0.5, 1.0))>);
static_assert(is<Stress, decltype(demand::crack_pressure(newton, newton, square_mm))>);
static_assert(is<Area, decltype(demand::opening_area(square_mm, square_mm, 0.5))>);
static_assert(is<Force, decltype(demand::full_stroke_margin(MPa, square_mm, newton, newton))>);
static_assert(is<Stress, decltype(demand::return_pressure(newton, newton, newton, square_mm))>);
static_assert(is<Force, decltype(demand::mean_load_for_return(square_mm, mm, Conductance(), second))>);

}  // namespace

TEST_CASE("the conductance of an annular gap is that of parallel slits, added up around it") {
    // A slit of height c, width b and length L lets through b c^3/(12 mu L) (Poiseuille flow between plates); around an
    // eccentric gap the height is c (1 + e cos phi).
    test::Dice dice(11);
    for (int i = 0; i < 200; ++i) {
        const double diameter = dice.between(3.0, 20.0);
        const double clearance = dice.between(0.005, 0.3);
        const double length = dice.between(2.0, 30.0);
        const double eccentricity = dice.between(0.0, 1.0);
        const double viscosity = dice.between(1e-9, 1e-6);
        const auto slit = [&](double phi) {
            const double height = clearance * (1.0 + eccentricity * std::cos(phi));
            return 0.5 * diameter * height * height * height / (12.0 * viscosity * length);
        };
        const double around =
            boost::math::quadrature::gauss_kronrod<double, 61>::integrate(slit, 0.0, 2.0 * std::numbers::pi, 0, 0);
        CHECK_THAT(demand::annular_conductance(diameter, clearance, length, eccentricity, viscosity),
                   WithinRel(around, 1e-12));
    }
}

TEST_CASE("the ratio of orifices for a share of the pressure gives that share") {
    for (const double share : {0.0, 0.01, 0.2, 0.5, 0.8, 0.99})
        CHECK_THAT(demand::share_between_orifices(demand::orifice_ratio_for_share(share)), WithinAbs(share, 1e-15));
}
