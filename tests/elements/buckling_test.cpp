// SPDX-License-Identifier: MIT
#include <cmath>
#include <elements/calculix.hpp>
#include <elements/demo_springs.hpp>
#include <seatload/spring/buckling.hpp>
#include <support/check.hpp>

using namespace seatload;
using namespace seatload::test::elements;

namespace {

double slenderness(const ActiveCoils& c) { return c.length_mm() / c.D_mm; }

/// The most slender of a demo spring's wire, diameter and pitch that stays below a slenderness, with half a turn over
/// or whole turns.
ActiveCoils slender(const ActiveCoils& c, double below, double over) {
    return with_coils(c, std::floor(below * c.D_mm / c.pitch_mm - over) + over);
}

double formula_mm(const ActiveCoils& c, double nu) {
    return c.length_mm() * spring::buckling_share(slenderness(c), c.shear_modulus_mpa / c.young_modulus_mpa, nu);
}

/// The deflection at which the softest side mode has no stiffness left: its eigenvalue falls on a line that is followed
/// to zero from below, as a spring that is near it no longer stands straight.
double computed_mm(const ActiveCoils& c, Head head, double about_mm) {
    const auto found = press(c, head, {{0.75 * about_mm, true}, {0.9 * about_mm, true}});
    REQUIRE(found.size() == 2);
    const double first = found[0].softest.value(), second = found[1].softest.value();
    REQUIRE(second < first);
    return found[0].deflection_mm + (found[1].deflection_mm - found[0].deflection_mm) * first / (first - second);
}

}  // namespace

TEST_CASE("finite elements give the buckling deflection on a sliding seat within 5 percent") {
    need_calculix();
    // With half a turn over they stand straight until then.
    for (const DemoSpring& spring : demo_springs()) {
        const ActiveCoils coils = slender(spring.coils, 5.0, 0.5);
        INFO(spring.requirement << ", L/D " << slenderness(coils));
        REQUIRE(slenderness(coils) > 4.2);
        const double formula = formula_mm(coils, 1.0);
        CHECK_THAT(computed_mm(coils, Head::slides, formula), WithinRel(formula, 0.05));
    }
}

TEST_CASE("finite elements give the buckling deflection between fixed seats within 5 percent") {
    need_calculix();
    // With whole turns they bow least until then.
    for (const DemoSpring& spring : demo_springs()) {
        const ActiveCoils coils = slender(spring.coils, 6.5, 0.0);
        INFO(spring.requirement << ", L/D " << slenderness(coils));
        REQUIRE(slenderness(coils) > 5.5);  // it never buckles up to 5.2
        const double formula = formula_mm(coils, 0.5);
        CHECK_THAT(computed_mm(coils, Head::on_axis, formula), WithinRel(formula, 0.05));
    }
}
