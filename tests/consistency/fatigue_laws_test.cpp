// SPDX-License-Identifier: MIT
// Laws of the fatigue lines, named by the equation that must hold, over strengths, surfaces and loads.
#include <cmath>

#include <seatload/spring/fatigue.hpp>

#include "consistency/laws.hpp"

using namespace seatload::spring;
using seatload::consistency::kRounding;

namespace {

/// Every surface, shear strength and load ratio there is in spring wire.
template <class Law>
void for_each_state(Law law) {
    for (const bool peened : {false, true})
        for (double shear_strength = 650.0; shear_strength <= 2000.0; shear_strength += 50.0)
            for (double load_line = 0.05; load_line <= 1.0; load_line += 0.05) {
                INFO("peened " << peened << " Ssu " << shear_strength << " r " << load_line);
                law(zimmerli_mpa(peened), shear_strength, load_line);
            }
}

using Point = EnduranceStress<double>;

}  // namespace

TEST_CASE("goodman_line_passes_through_the_zimmerli_point") {
    for_each_state([](const Point& point, double Ssu, double) {
        REQUIRE_THAT(goodman_endurance(point, Ssu) * (1.0 - point.mean / Ssu), WithinRel(point.amplitude, kRounding));
        REQUIRE_THAT(goodman_factor(point.amplitude, point.mean, point, Ssu), WithinRel(1.0, kRounding));
    });
}

TEST_CASE("gerber_line_passes_through_the_zimmerli_point") {
    for_each_state([](const Point& point, double Ssu, double) {
        const double used = point.mean / Ssu;
        REQUIRE_THAT(gerber_endurance(point, Ssu) * (1.0 - used * used), WithinRel(point.amplitude, kRounding));
        REQUIRE_THAT(gerber_factor(point.amplitude, point.mean, point, Ssu), WithinRel(1.0, kRounding));
    });
}

TEST_CASE("gerber_amplitude_lies_on_its_parabola_and_load_line") {
    for_each_state([](const Point& point, double Ssu, double r) {
        const double amplitude = gerber_amplitude(r, point, Ssu);
        const double mean = amplitude / r;
        REQUIRE_THAT(amplitude / gerber_endurance(point, Ssu) + mean * mean / (Ssu * Ssu), WithinRel(1.0, 1e-9));
    });
}

TEST_CASE("goodman_factor_times_stresses_lies_on_its_line") {
    for_each_state([](const Point& point, double Ssu, double r) {
        const double n = goodman_factor(100.0, 100.0 / r, point, Ssu);
        REQUIRE_THAT(n * 100.0 / goodman_endurance(point, Ssu) + n * 100.0 / r / Ssu, WithinRel(1.0, kRounding));
    });
}

TEST_CASE("twice_the_load_halves_every_factor") {
    for_each_state([](const Point& point, double Ssu, double r) {
        const double a = 80.0;
        const double m = a / r;
        REQUIRE_THAT(goodman_factor(2.0 * a, 2.0 * m, point, Ssu),
                     WithinRel(0.5 * goodman_factor(a, m, point, Ssu), kRounding));
        REQUIRE_THAT(gerber_factor(2.0 * a, 2.0 * m, point, Ssu),
                     WithinRel(0.5 * gerber_factor(a, m, point, Ssu), kRounding));
        REQUIRE_THAT(sines_factor(2.0 * a, point), WithinRel(0.5 * sines_factor(a, point), kRounding));
    });
}

TEST_CASE("between_the_point_and_a_steady_load_gerber_allows_more_than_goodman") {
    for_each_state([](const Point& point, double Ssu, double r) {
        const bool steadier = r < point.amplitude / point.mean;
        const double a = 80.0;
        const double gerber = gerber_factor(a, a / r, point, Ssu);
        const double goodman = goodman_factor(a, a / r, point, Ssu);
        if (std::abs(r - point.amplitude / point.mean) > 1e-3) REQUIRE((gerber > goodman) == steadier);
    });
}
