// SPDX-License-Identifier: MIT
// formula_with_quantities_eq_formula_with_doubles: the two uses of each template give the same bits.
#include <seatload/spring/buckling.hpp>
#include <seatload/spring/gap.hpp>
#include <seatload/spring/growth.hpp>
#include <seatload/spring/helix.hpp>
#include <seatload/spring/lateral.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/spring/surge.hpp>
#include <seatload/units/quantities.hpp>

#include "consistency/laws.hpp"

using namespace seatload;
using namespace seatload::spring;
using namespace seatload::consistency;

TEST_CASE("formula_with_quantities_eq_formula_with_doubles") {
    for_each_design([](const Design& x) {
        const Length d = x.d_mm * mm;
        const Length D = x.D_mm * mm;
        const Length m = x.pitch_mm * mm;
        const Length L0 = x.free_length_mm() * mm;
        const Stress G = x.G_mpa * MPa;
        const Density rho = Density::from_value(x.density);
        REQUIRE(in_newton_per_mm(rate(G, d, D, x.n)) == rate(x.G_mpa, x.d_mm, x.D_mm, x.n));
        REQUIRE(in_mpa(stress(20.0 * newton, d, D)) == stress(20.0, x.d_mm, x.D_mm));
        REQUIRE(in_mpa(stress_at_deflection(G, d, D, x.n, m)) ==
                stress_at_deflection(x.G_mpa, x.d_mm, x.D_mm, x.n, x.pitch_mm));
        REQUIRE(in_newton(force_for_stress(G, d, D)) == force_for_stress(x.G_mpa, x.d_mm, x.D_mm));
        REQUIRE(in_mm(pitch(Ends::closed, L0, d, x.n)) == pitch(Ends::closed, x.free_length_mm(), x.d_mm, x.n));
        REQUIRE(helix_angle(m, D) == helix_angle(x.pitch_mm, x.D_mm));
        REQUIRE(in_mm(wire_length(m, d, D, x.n, x.n + 2.0)) == wire_length(x.pitch_mm, x.d_mm, x.D_mm, x.n, x.n + 2.0));
        REQUIRE(wire_mass(rho, d, D).value() == wire_mass(x.density, x.d_mm, x.D_mm));
        REQUIRE(in_mm(smallest_gaps(d, D, x.n)) == smallest_gaps(x.d_mm, x.D_mm, x.n));
        REQUIRE(in_mm(growth_ends_free(m, d, D)) == growth_ends_free(x.pitch_mm, x.d_mm, x.D_mm));
        REQUIRE(in_mm(growth_ends_held(m, d, D)) == growth_ends_held(x.pitch_mm, x.d_mm, x.D_mm));
        REQUIRE(in_mm(buckling_deflection(L0, D, G, x.E_mpa * MPa, 0.5)) ==
                buckling_deflection(x.free_length_mm(), x.D_mm, x.G_mpa, x.E_mpa, 0.5));
        REQUIRE(in_mpa(combined_stress(20.0 * newton, 3.0 * newton, d, D, 0.5 * d, L0)) ==
                combined_stress(20.0, 3.0, x.d_mm, x.D_mm, 0.5 * x.d_mm, x.free_length_mm()));
        REQUIRE(in_hertz(surge_frequency(G, rho, d, D, x.n)) ==
                surge_frequency(x.G_mpa, x.density, x.d_mm, x.D_mm, x.n));
    });
}
