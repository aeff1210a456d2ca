// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <elements/demo_springs.hpp>
#include <elements/lean_rows.hpp>
#include <seatload/spring/lean.hpp>
#include <support/check.hpp>

using namespace seatload;
using namespace seatload::test::elements;

TEST_CASE("finite elements give the table of leans again") {
    need_calculix();
    // One case of each turn over, from stout to slender.
    int again = 0;
    const auto rows = lean_rows();
    for (const auto& [slenderness, n] : {std::pair(1.5, 4.0), {2.5, 4.25}, {2.5, 4.5}, {3.5, 4.75}}) {
        const auto row = std::find_if(rows.begin(), rows.end(), [&](const LeanRow& r) {
            return r.head == Head::slides && r.index == 8.0 && r.slenderness == slenderness && r.n == n;
        });
        REQUIRE(row != rows.end());
        INFO(text(*row));
        const auto found = press(row->coils(), row->head, {{row->deflection_mm(), false}});
        // The table holds five decimals; the path by which the program gets there leaves a little more.
        CHECK_THAT(found.at(0).head.length() / row->coils().D_mm, WithinAbs(row->lean, 5e-5 + 0.002 * row->lean));
        ++again;
    }
    CHECK(again == 4);
}

TEST_CASE("finite elements give the demo latches a lean within the bound") {
    need_calculix();
    for (const DemoSpring& spring : demo_springs()) {
        const ActiveCoils& c = spring.coils;
        if (spring.requirement == "oil_relief_valve.toml") continue;  // its seats are fixed
        INFO(spring.requirement);
        const auto found = press(c, Head::slides, {{spring.full_deflection_mm, false}});
        const double bound = spring::sideways_lean(c.pitch_mm, c.D_mm, c.n, spring.full_deflection_mm,
                                                   c.shear_modulus_mpa / c.young_modulus_mpa);
        CHECK(found.at(0).head.length() <= bound);
    }
}
