// SPDX-License-Identifier: MIT
// Every formula is one template: with quantities the compiler checks its dimension here, with doubles it runs in the
// sizing kernel.
#include <type_traits>

#include <seatload/spring/buckling.hpp>
#include <seatload/spring/fatigue.hpp>
#include <seatload/spring/gap.hpp>
#include <seatload/spring/growth.hpp>
#include <seatload/spring/helix.hpp>
#include <seatload/spring/lateral.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/spring/spring.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/spring/surge.hpp>
#include <seatload/units/root.hpp>

#include "support/check.hpp"

using namespace seatload;

namespace {

template <class Wanted, class Got>
constexpr bool is = std::is_same_v<Wanted, std::remove_cvref_t<Got>>;

using Speed = units_detail::Quantity<boost::units::velocity_dimension>;
constexpr Speed kSpeed = Speed::from_value(1.0);
constexpr Energy kEnergy = Energy::from_value(1.0);

// The coherent system itself: these numbers come out as 1.
static_assert(is<Stress, decltype(newton / (mm * mm))> && (newton / (mm * mm)).value() == 1.0);
static_assert(is<Rate, decltype(newton / mm)> && (newton / mm).value() == 1.0);
static_assert(is<Energy, decltype(newton * mm)>);
static_assert(is<Density, decltype(Mass() / (mm * mm * mm))>);
static_assert(is<double, decltype(static_cast<double>(mm / mm))>);

static_assert(is<Rate, decltype(spring::rate(MPa, mm, mm, 1.0))>);
static_assert(is<double, decltype(spring::rate(1.0, 1.0, 1.0, 1.0))>);
static_assert(is<double, decltype(spring::active_coils_for_rate(MPa, mm, mm, newton_per_mm))>);
static_assert(is<Force, decltype(spring::force(newton_per_mm, mm))>);
static_assert(is<Energy, decltype(spring::work(newton_per_mm, mm))>);

static_assert(is<Stress, decltype(spring::stress(newton, mm, mm))>);
static_assert(is<Stress, decltype(spring::stress_at_deflection(MPa, mm, mm, 1.0, mm))>);
static_assert(is<Force, decltype(spring::force_for_stress(MPa, mm, mm))>);

static_assert(is<Length, decltype(spring::pitch(spring::Ends::closed, mm, mm, 1.0))>);
static_assert(is<double, decltype(spring::helix_angle(mm, mm))>);
static_assert(is<Length, decltype(spring::wire_length(mm, mm, mm, 1.0, 1.0))>);
static_assert(is<Mass, decltype(spring::wire_mass(kg_per_m3, mm, mm))>);

static_assert(is<Length, decltype(spring::smallest_gaps(mm, mm, 1.0))>);
static_assert(is<Length, decltype(spring::smallest_gaps_hot_coiled(mm, mm, 1.0))>);
static_assert(is<Length, decltype(spring::growth_ends_free(mm, mm, mm))>);
static_assert(is<Length, decltype(spring::growth_ends_held(mm, mm, mm))>);

static_assert(is<Length, decltype(spring::buckling_deflection(mm, mm, MPa, MPa, 1.0))>);
static_assert(is<Force, decltype(spring::transverse_force(newton_per_mm, mm))>);
static_assert(is<Stress, decltype(spring::combined_stress(newton, newton, mm, mm, mm, mm))>);
static_assert(is<double, decltype(spring::seating_use(newton, newton, mm, mm, mm))>);

static_assert(is<Frequency, decltype(spring::surge_frequency(MPa, kg_per_m3, mm, mm, 1.0))>);
static_assert(is<Stress, decltype(spring::impact_stress(kSpeed, kg_per_m3, MPa))>);

static_assert(is<Stress, decltype(spring::goodman_endurance(spring::EnduranceStress<Stress>{MPa, MPa}, MPa))>);
static_assert(is<Stress, decltype(spring::gerber_endurance(spring::EnduranceStress<Stress>{MPa, MPa}, MPa))>);
static_assert(is<Stress, decltype(spring::gerber_amplitude(1.0, spring::EnduranceStress<Stress>{MPa, MPa}, MPa))>);
static_assert(is<double, decltype(spring::goodman_factor(MPa, MPa, spring::EnduranceStress<Stress>{MPa, MPa}, MPa))>);
static_assert(is<double, decltype(spring::gerber_factor(MPa, MPa, spring::EnduranceStress<Stress>{MPa, MPa}, MPa))>);
static_assert(is<double, decltype(spring::sines_factor(MPa, spring::EnduranceStress<Stress>{MPa, MPa}))>);

static_assert(is<Speed, decltype(units::root(Speed() * Speed()))>);
static_assert(is<Length, decltype(spring::Spring{}.outside_diameter())>);

// Worked out by the compiler: d 3.2, D 20, n 6, G 81500 gives 81500 x 3.2^4/(8 x 8000 x 6) N/mm.
static_assert(spring::rate(81500.0 * MPa, 3.2 * mm, 20.0 * mm, 6.0).value() > 22.2549);
static_assert(spring::rate(81500.0 * MPa, 3.2 * mm, 20.0 * mm, 6.0).value() < 22.2550);

}  // namespace

TEST_CASE("a root of a quantity is the root of its number") {
    CHECK(units::root(9.0) == 3.0);
    CHECK(units::root(Speed::from_value(3.0) * Speed::from_value(3.0)) == Speed::from_value(3.0));
    CHECK(units::root(kEnergy * kEnergy) == kEnergy);
}

TEST_CASE("a spring tells its other diameters and its index") {
    const spring::Spring coil{3.0 * mm, 24.0 * mm, 8.5, 60.0 * mm};
    CHECK(coil.outside_diameter() == 27.0 * mm);
    CHECK(coil.inside_diameter() == 21.0 * mm);
    CHECK(coil.index() == 8.0);
}
