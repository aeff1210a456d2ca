// SPDX-License-Identifier: MIT
// Laws held against other ways to the same number: quadrature over the wire and its section, eigenvalues of a chain of
// masses, roots of the equations the closed forms come from.
#include <Eigen/Eigenvalues>
#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <cmath>
#include <numbers>

#include <seatload/spring/buckling.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/spring/fatigue.hpp>
#include <seatload/spring/growth.hpp>
#include <seatload/spring/helix.hpp>
#include <seatload/spring/lateral.hpp>
#include <seatload/spring/lean.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/spring/surge.hpp>
#include <seatload/spring/temperature.hpp>
#include <seatload/tolerance/en15800.hpp>

#include "consistency/laws.hpp"

using namespace seatload::spring;
using namespace seatload::consistency;

namespace {

constexpr double kQuadrature = 1e-11;  ///< 30 Gauss points on smooth functions, and the sums about them
constexpr double kPi = std::numbers::pi;

/// The integral of a smooth function, by 30 Gauss points (Boost.Math).
template <class F>
double integral(double from, double to, F function) {
    return boost::math::quadrature::gauss<double, 30>::integrate(function, from, to);
}

/// The place between two ends where a function passes zero (Boost.Math, TOMS 748).
template <class F>
double root(double from, double to, F function) {
    std::uintmax_t most = 200;
    const auto ends =
        boost::math::tools::toms748_solve(function, from, to, boost::math::tools::eps_tolerance<double>(50), most);
    return 0.5 * (ends.first + ends.second);
}

double rate_of(const Design& x) { return rate(x.G_mpa, x.d_mm, x.D_mm, x.n); }

/// Second polar and second axial moment of the wire's section [mm4], summed over rings.
double polar_moment(double d) {
    return integral(0.0, 0.5 * d, [](double r) { return 2.0 * kPi * r * r * r; });
}
double axial_moment(double d) {
    return integral(0.0, 0.5 * d, [](double r) { return kPi * r * r * r; });
}

/// Deflection under one newton of a helix of lead m that twists and bends (Castigliano), ends free to turn.
double helix_compliance(const Design& x) {
    const double angle = std::atan(x.pitch_mm / (kPi * x.D_mm));
    const double arm = 0.5 * x.D_mm;
    const double twist = std::pow(arm * std::cos(angle), 2.0) / (x.G_mpa * polar_moment(x.d_mm));
    const double bend = std::pow(arm * std::sin(angle), 2.0) / (x.E_mpa * axial_moment(x.d_mm));
    return (twist + bend) * kPi * x.D_mm / std::cos(angle) * x.n;
}

}  // namespace

// EN 13906-1 cl. 9.1, W = F s/2 = R s^2/2: the definition of work.
TEST_CASE("work_eq_integral_of_force_over_deflection") {
    for_each_design([](const Design& x) {
        const double R = rate_of(x);
        const double s = 0.4 * x.n * x.pitch_mm;
        REQUIRE_THAT(work(R, s), WithinRel(integral(0.0, s, [&](double t) { return force(R, t); }), kQuadrature));
    });
}

// EN 13906-1 cl. 9.4, R = G d^4/(8 D^3 n): torsion alone (Castigliano), the section's polar moment by quadrature.
TEST_CASE("rate_eq_castigliano_with_torsion_alone") {
    for_each_design([](const Design& x) {
        const double arm = 0.5 * x.D_mm;
        const double compliance =
            integral(0.0, 2.0 * kPi * x.n, [&](double) { return arm * arm / (x.G_mpa * polar_moment(x.d_mm)) * arm; });
        REQUIRE_THAT(rate_of(x), WithinRel(1.0 / compliance, kQuadrature));
    });
}

// The same of the helix as it is, with bending and the true length: they differ by a share of the squared lead angle.
TEST_CASE("rate_eq_castigliano_of_the_helix_but_for_the_lead_angle_squared") {
    for_each_design([](const Design& x) {
        const double angle = helix_angle(x.pitch_mm, x.D_mm);
        const double exact = 1.0 / helix_compliance(x);
        REQUIRE_THAT(rate_of(x), WithinAbs(exact, exact * angle * angle));
    });
}

// EN 13906-1 cl. 9.5, tau = 8 D F/(pi d^3) = T r/I_p; Shigley Eq. 10-3 adds F/A: K_s = 1 + 0.5/w.
TEST_CASE("stress_eq_torque_times_radius_over_polar_moment") {
    for_each_design([](const Design& x) {
        const double F = 20.0;
        const double twist = F * 0.5 * x.D_mm * 0.5 * x.d_mm / polar_moment(x.d_mm);
        const double area = integral(0.0, 0.5 * x.d_mm, [](double r) { return 2.0 * kPi * r; });
        REQUIRE_THAT(stress(F, x.d_mm, x.D_mm), WithinRel(twist, kQuadrature));
        REQUIRE_THAT(direct_shear_factor(x.index()) * stress(F, x.d_mm, x.D_mm),
                     WithinRel(twist + F / area, kQuadrature));
    });
}

// EN 13906-1 cl. 9.5, the two forms of tau: along the whole travel tau/s = G d/(pi D^2 n).
TEST_CASE("stress_over_deflection_eq_G_d_over_pi_D2_n") {
    for_each_design([](const Design& x) {
        const double s = 0.7 * x.pitch_mm * x.n;
        const double twist_of_wire = s / (0.5 * x.D_mm) / (kPi * x.D_mm * x.n);  // angle by length of wire
        REQUIRE_THAT(stress_at_deflection(x.G_mpa, x.d_mm, x.D_mm, x.n, s),
                     WithinRel(x.G_mpa * twist_of_wire * 0.5 * x.d_mm, kQuadrature));
    });
}

// Energy density of shear, tau^2/(2 G), over section and wire.
TEST_CASE("work_eq_integral_of_tau_squared_over_two_G") {
    for_each_design([](const Design& x) {
        const double s = 0.3 * x.n * x.pitch_mm;
        const double outer = stress(rate_of(x) * s, x.d_mm, x.D_mm);
        const double by_length = integral(0.0, 0.5 * x.d_mm, [&](double r) {
            const double tau = outer * r / (0.5 * x.d_mm);
            return tau * tau / (2.0 * x.G_mpa) * 2.0 * kPi * r;
        });
        REQUIRE_THAT(work(rate_of(x), s), WithinRel(by_length * kPi * x.D_mm * x.n, kQuadrature));
    });
}

// Goehner's series begins 1 + 5/(4 w); Bergstraesser's factor (EN 13906-1 cl. 7) has the same first term, and Wahl's
// (Shigley Eq. 10-4) 0.75 + 0.615.
TEST_CASE("every_factor_goes_to_one_as_its_first_term_over_w") {
    constexpr double w = 1e6;
    CHECK_THAT(w * (goehner_factor(w) - 1.0), WithinAbs(1.25, 1e-5));
    CHECK_THAT(w * (bergstraesser_factor(w) - 1.0), WithinAbs(1.25, 1e-5));
    CHECK_THAT(w * (wahl_factor(w) - 1.0), WithinAbs(1.365, 1e-5));
    CHECK_THAT(w * (direct_shear_factor(w) - 1.0), WithinAbs(0.5, 1e-5));
}

// Geometry: the length of r(t) = (D/2 cos t, D/2 sin t, m t/2pi).
TEST_CASE("wire_length_eq_integral_of_arc_length") {
    for_each_design([](const Design& x) {
        const auto turns = [&](double lead, double count) {
            return integral(0.0, 2.0 * kPi * count, [&](double t) {
                return std::hypot(0.5 * x.D_mm * std::sin(t), 0.5 * x.D_mm * std::cos(t), lead / (2.0 * kPi));
            });
        };
        REQUIRE_THAT(wire_length(x.pitch_mm, x.d_mm, x.D_mm, x.n, x.total_coils()),
                     WithinRel(turns(x.pitch_mm, x.n) + turns(x.d_mm, 2.0), kQuadrature));
    });
}

// Pappus: a section of area A whose centre runs through l has the volume A l; the section summed over rings.
TEST_CASE("mass_eq_density_times_integral_of_the_section_along_the_wire") {
    for_each_design([](const Design& x) {
        const double area = integral(0.0, 0.5 * x.d_mm, [](double r) { return 2.0 * kPi * r; });
        const double length = kPi * x.D_mm * x.total_coils();
        REQUIRE_THAT(wire_mass(x.density, x.d_mm, length), WithinRel(x.density * area * length, kQuadrature));
    });
}

// EN 13906-1 cl. 9.10: the wire centres of flat coils pressed together lie d apart, with half a wire outside at each
// end.
TEST_CASE("solid_length_eq_layers_of_wire") {
    for_each_design([](const Design& x) {
        const auto layers = [&](double total) { return (total - 1.0) * x.d_mm + x.d_mm; };
        REQUIRE_THAT(textbook_solid_wires(Ends::closed_ground, x.total_coils()) * x.d_mm,
                     WithinRel(layers(x.total_coils()), kRounding));
        // Not ground, the helix goes on through a whole turn of wire: from centre to centre nt turns, and a wire.
        REQUIRE_THAT(textbook_solid_wires(Ends::closed, x.total_coils()) * x.d_mm,
                     WithinRel(x.total_coils() * x.d_mm + x.d_mm, kRounding));
        REQUIRE(en_solid_wires(Ends::closed, x.total_coils()) > textbook_solid_wires(Ends::closed, x.total_coils()));
    });
}

// EN 13906-1 cl. 9.12, f = 0.5 sqrt(R/m), a rod held at both ends: the lowest eigenvalue of 60 masses and springs in a
// row, whose frequency lies below that of the rod by (pi/(2 N))^2/6.
TEST_CASE("surge_frequency_eq_lowest_eigenvalue_of_a_chain_of_masses") {
    constexpr int N = 60;
    Eigen::MatrixXd chain = Eigen::MatrixXd::Zero(N - 1, N - 1);
    for (int i = 0; i < N - 1; ++i) {
        chain(i, i) = 2.0;
        if (i > 0) chain(i, i - 1) = chain(i - 1, i) = -1.0;
    }
    const double lowest = Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd>(chain).eigenvalues()(0);
    for_each_design([&](const Design& x) {
        const double mass = wire_mass(x.density, x.d_mm, kPi * x.D_mm * x.n);
        const double square = lowest * (rate_of(x) * N) / (mass / N);
        REQUIRE_THAT(surge_frequency(x.G_mpa, x.density, x.d_mm, x.D_mm, x.n),
                     WithinRel(std::sqrt(square) / (2.0 * kPi), 2e-4));
    });
}

// The same grows as the root of rate over mass: n^2 as many coils swing n^2 times as slowly.
TEST_CASE("surge_frequency_scales_as_one_over_coils_and_d_over_D_squared") {
    for_each_design([](const Design& x) {
        const double f = surge_frequency(x.G_mpa, x.density, x.d_mm, x.D_mm, x.n);
        REQUIRE_THAT(surge_frequency(x.G_mpa, x.density, x.d_mm, x.D_mm, 3.0 * x.n), WithinRel(f / 3.0, kRounding));
        REQUIRE_THAT(surge_frequency(x.G_mpa, x.density, 2.0 * x.d_mm, x.D_mm, x.n), WithinRel(2.0 * f, kRounding));
        REQUIRE_THAT(surge_frequency(x.G_mpa, x.density, x.d_mm, 2.0 * x.D_mm, x.n), WithinRel(0.25 * f, kRounding));
    });
}

// EN 13906-1 cl. 9.14 for nu = 0.7, one end that tilts: Haringx' rod buckles where tan x = x, x = 4.4934 against
// pi/0.7 = 4.4880; found as a root of q(s) - x with Haringx' q.
TEST_CASE("buckling_with_one_tilting_end_eq_root_of_tan_x_eq_x") {
    const double x0 = root(4.2, 4.6, [](double x) { return std::sin(x) - x * std::cos(x); });
    int compared = 0;
    for_each_design([&](const Design& x) {
        const double share = buckling_share(x.slenderness(), x.moduli(), 0.7);
        if (std::isinf(share) || x.slenderness() < 1.05 * stable_slenderness(x.moduli(), 0.7)) return;
        const auto phase = [&](double xi) { return 2.0 * bending_phase(x.slenderness(), xi, x.moduli()) - x0; };
        const double top = 0.5 / (1.0 - x.moduli());  // beyond it the phase falls again
        if (phase(top) < 0.0) return;
        REQUIRE_THAT(root(0.0, top, phase), WithinRel(share, 0.03));  // 0.12 % of x, steep near the stable slenderness
        ++compared;
    });
    CHECK(compared > 300);
}

// At the stable slenderness the two roots of the buckling equation meet at s/L0 = 0.5/(1 - G/E).
TEST_CASE("buckling_share_at_the_stable_slenderness_eq_half_over_one_less_G_over_E") {
    for (const double nu : {0.5, 0.7, 1.0, 2.0})
        for_each_design([&](const Design& x) {
            const double limit = stable_slenderness(x.moduli(), nu);
            REQUIRE_THAT(buckling_share(limit * (1.0 + 1e-12), x.moduli(), nu),
                         WithinRel(0.5 / (1.0 - x.moduli()), 1e-5));
            REQUIRE(std::isinf(buckling_share(limit * (1.0 - 1e-9), x.moduli(), nu)));
        });
}

// EN 13906-1 cl. 9.13 against the rubber-bearing form of Haringx' beam-column, R_Q = P^2/(2 q B tan(q h/2) - P h) with
// q^2 = P/B (1 + P/S), and the rigidities of the compressed coils, B = R L D^2 E/(2(2G + E)) and S = R L E/G.
TEST_CASE("sideways_rate_eq_haringx_beam_column") {
    int compared = 0;
    for_each_design([&](const Design& x) {
        for (const double xi : {0.05, 0.2, 0.4}) {
            const double critical = buckling_share(x.slenderness(), x.moduli(), 1.0);
            if (xi > 0.9 * critical) continue;
            const double lambda = x.slenderness();
            const double h = 1.0 - xi;  // lengths over L0, forces over R L0
            const double B = h / (2.0 * (2.0 * x.moduli() + 1.0) * lambda * lambda);
            const double S = h / x.moduli();
            const double q = std::sqrt(xi / B * (1.0 + xi / S));
            const double ours = transverse_rate_ratio(lambda, xi, x.moduli());
            REQUIRE_THAT(ours, WithinRel(xi * xi / (2.0 * q * B * std::tan(0.5 * q * h) - xi * h), 1e-8));
            ++compared;
        }
    });
    CHECK(compared > 1000);
}

// The bending wave has a quarter of its length between mid-spring and plate where a sliding plate buckles (nu = 1).
TEST_CASE("bending_phase_at_buckling_with_nu_eq_one_eq_half_pi") {
    int compared = 0;
    for_each_design([&](const Design& x) {
        const double share = buckling_share(x.slenderness(), x.moduli(), 1.0);
        if (std::isinf(share)) return;
        const auto past = [&](double xi) { return bending_phase(x.slenderness(), xi, x.moduli()) - 0.5 * kPi; };
        REQUIRE_THAT(root(0.0, 0.5 / (1.0 - x.moduli()), past), WithinRel(share, 1e-6));
        ++compared;
    });
    CHECK(compared > 300);
}

// Pressed little, whole turns lean by the slope F D^2/(4 G I_p) of their twisted coils over the length: s L/(pi n D).
TEST_CASE("lean_of_whole_turns_pressed_little_eq_slope_times_length") {
    for_each_design([](const Design& x) {
        const double n = std::ceil(x.n);
        const double s = 1e-6 * n * x.pitch_mm;
        const double F = force(rate(x.G_mpa, x.d_mm, x.D_mm, n), s);
        const double slope = F * x.D_mm * x.D_mm / (4.0 * x.G_mpa * polar_moment(x.d_mm));
        REQUIRE_THAT(sideways_lean(x.pitch_mm, x.D_mm, n, TurnsLean{1.0, 0.0}, s, x.moduli()),
                     WithinRel(slope * n * x.pitch_mm, 1e-3));
    });
}

TEST_CASE("lean_goes_to_zero_with_deflection_and_to_infinity_at_buckling") {
    for_each_design([](const Design& x) {
        const double L = x.n * x.pitch_mm;
        const auto lean = [&](double s) { return sideways_lean(x.pitch_mm, x.D_mm, x.n, s, x.moduli()); };
        REQUIRE(lean(0.0) == 0.0);
        REQUIRE(lean(1e-9 * L) < 1e-6 * L);
        const double share = buckling_share(L / x.D_mm, x.moduli(), 1.0);
        if (std::isinf(share)) return;
        REQUIRE(std::isinf(lean(1.000001 * share * L)));
        REQUIRE(std::isfinite(lean(0.9999 * share * L)));
    });
}

// The Gerber parabola (Shigley Table 6-7) and the load line meet where the root finder says.
TEST_CASE("gerber_amplitude_eq_root_of_parabola_and_load_line") {
    for (const double Ssu : {700.0, 1200.0, 1900.0})
        for (const double r : {0.05, 0.3, 1.0}) {
            const auto point = zimmerli_mpa(true);
            const double Sse = point.amplitude / (1.0 - std::pow(point.mean / Ssu, 2.0));
            const auto over = [&](double a) { return a / Sse + std::pow(a / r / Ssu, 2.0) - 1.0; };
            REQUIRE_THAT(gerber_amplitude(r, point, Ssu), WithinRel(root(0.0, 2.0 * Sse, over), 1e-9));
        }
}

// Goodman's line ends in the reversed endurance on one axis and in the shear strength on the other.
TEST_CASE("goodman_line_ends_at_Sse_and_Ssu") {
    for (const double Ssu : {700.0, 1200.0, 1900.0}) {
        const auto point = zimmerli_mpa(false);
        const double Sse = goodman_endurance(point, Ssu);
        REQUIRE_THAT(goodman_factor(Sse, 1e-9, point, Ssu), WithinRel(1.0, 1e-9));
        REQUIRE_THAT(goodman_factor(1e-9, Ssu, point, Ssu), WithinRel(1.0, 1e-9));
        const double slope = (Sse - point.amplitude) / point.mean;
        REQUIRE_THAT(slope, WithinRel(Sse / Ssu, 1e-12));  // the Zimmerli point lies on the line between the two
    }
}

// EN 13906-1 cl. 8, G(t) = G (1 - r (t - 20)): as large a share less for each equal step up from 20 deg C.
TEST_CASE("modulus_falls_by_equal_steps_from_20_degrees") {
    for (const double r : {0.25e-3, 0.28e-3, 0.4e-3}) {
        CHECK(modulus_share(r, 20.0) == 1.0);
        for (double t = 20.0; t <= 300.0; t += 20.0)
            CHECK_THAT(modulus_share(r, t) - modulus_share(r, t + 20.0), WithinRel(20.0 * r, 1e-9));
    }
}

// EN 15800 (memory): A_F = (a_F k_F + 1.5 F/100) Q rises by 1.5 % of the load times Q, and is the same in loads and, by
// the rate, in lengths.
TEST_CASE("load_tolerance_rises_by_1.5_percent_of_the_load_times_Q") {
    using namespace seatload::tolerance;
    for_each_design([](const Design& x) {
        const auto tolerance = [&](double load, int grade) {
            return load_tolerance_n(x.d_mm, x.D_mm, x.n, load, grade);
        };
        for (const auto& [grade, Q] : {std::pair{1, 0.63}, std::pair{2, 1.0}, std::pair{3, 1.6}})
            REQUIRE_THAT(tolerance(300.0, grade) - tolerance(100.0, grade), WithinRel(3.0 * Q, 1e-9));
        const double in_length = free_length_tolerance_mm(x.d_mm, x.D_mm, x.n, rate_of(x), 2);
        REQUIRE_THAT(in_length * rate_of(x), WithinRel(tolerance(0.0, 2), kRounding));
    });
}

// EN 13906-1 cl. 9.11 and thin-helix statics: both forms of widening go as the square of the size, and the one with
// held ends is a root of "a coil keeps its wire".
TEST_CASE("growth_with_held_ends_eq_root_of_equal_wire_in_a_coil") {
    for_each_design([](const Design& x) {
        const double coil = std::hypot(kPi * x.D_mm, x.pitch_mm);
        const double wide =
            root(0.5 * x.D_mm, 2.5 * x.D_mm + x.pitch_mm, [&](double D) { return std::hypot(kPi * D, x.d_mm) - coil; });
        REQUIRE_THAT(x.D_mm + growth_ends_held(x.pitch_mm, x.d_mm, x.D_mm), WithinRel(wide, 1e-12));
    });
}
