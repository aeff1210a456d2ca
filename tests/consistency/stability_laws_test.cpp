// SPDX-License-Identifier: MIT
// Laws of buckling and sideways loading, named by the equation that must hold.
#include <cmath>
#include <numbers>

#include <seatload/spring/buckling.hpp>
#include <seatload/spring/lateral.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/spring/stress.hpp>

#include "consistency/laws.hpp"

using namespace seatload::spring;
using namespace seatload::consistency;

namespace {

constexpr double kSeating[] = {0.5, 0.7, 1.0, 2.0};

double share(const Design& x, double nu) { return buckling_share(x.slenderness(), x.moduli(), nu); }

/// P (1 + P/S) L^2 / B of Haringx' rod, whose bending and shear rigidity shrink with its length; R and D drop out.
double haringx_angle_squared(const Design& x, double compression) {
    const double G = x.G_mpa;
    const double E = x.E_mpa;
    const double left = 1.0 - compression;
    const double P = compression;                                                      // over R L0
    const double S = E / G * left;                                                     // over R L0
    const double B = E / (2.0 * (2.0 * G + E)) * left / std::pow(x.slenderness(), 2);  // over R L0 L0^2
    return P * (1.0 + P / S) / B * left * left;
}

}  // namespace

TEST_CASE("buckling_root_is_imaginary_below_the_stable_slenderness") {
    for (const double nu : kSeating)
        for_each_design([&](const Design& x) {
            REQUIRE(std::isinf(share(x, nu)) == (x.slenderness() < stable_slenderness(x.moduli(), nu)));
        });
}

TEST_CASE("buckling_eq_shigley_eq_10_10") {
    // y = L0 C1 [1 - sqrt(1 - C2/lambda^2)], C1 = E/(2(E - G)), C2 = 2 pi^2 (E - G)/(2G + E), lambda = alpha L0/D.
    for (const double alpha : kSeating)
        for_each_design([&](const Design& x) {
            if (std::isinf(share(x, alpha))) return;
            const double C1 = x.E_mpa / (2.0 * (x.E_mpa - x.G_mpa));
            const double C2 =
                2.0 * std::numbers::pi * std::numbers::pi * (x.E_mpa - x.G_mpa) / (2.0 * x.G_mpa + x.E_mpa);
            const double lambda = alpha * x.slenderness();
            const double root = std::sqrt(1.0 - C2 / (lambda * lambda));
            REQUIRE_THAT(buckling_deflection(x.free_length_mm(), x.D_mm, x.G_mpa, x.E_mpa, alpha),
                         WithinRel(x.free_length_mm() * C1 * (1.0 - root), 1e-9));
        });
}

TEST_CASE("buckling_eq_haringx_rod_at_pi_over_nu") {
    // Hinged sin x = 0, clamped sin x/2 = 0, sliding cos x/2 = 0, free cos x = 0: x = pi/nu for nu 1, 0.5, 1, 2.
    for (const double nu : {0.5, 1.0, 2.0})
        for_each_design([&](const Design& x) {
            if (std::isinf(share(x, nu))) return;
            const double angle = std::numbers::pi / nu;
            REQUIRE_THAT(haringx_angle_squared(x, share(x, nu)), WithinRel(angle * angle, 1e-9));
        });
}

TEST_CASE("buckling_deflection_falls_with_looser_seating") {
    for_each_design([](const Design& x) {
        for (std::size_t i = 0; i + 1 < std::size(kSeating); ++i) {
            const double firm = share(x, kSeating[i]);
            const double loose = share(x, kSeating[i + 1]);
            REQUIRE((std::isinf(firm) || loose < firm));
        }
    });
}

TEST_CASE("buckling_of_a_long_spring_eq_euler") {
    // P = pi^2 B/(nu L0)^2 with B = R L0 D^2 E/(2(2G + E)), when compression and shear no longer matter.
    for_each_design([](const Design& x) {
        const double slenderness = 500.0;
        const double euler = std::numbers::pi * std::numbers::pi / (slenderness * slenderness) * x.E_mpa /
                             (2.0 * (2.0 * x.G_mpa + x.E_mpa));
        REQUIRE_THAT(buckling_share(slenderness, x.moduli(), 1.0), WithinRel(euler, 1e-4));
    });
}

TEST_CASE("sideways_rate_changes_sign_at_buckling_with_nu_eq_one") {
    int crossed = 0;
    for_each_design([&](const Design& x) {
        const double critical = share(x, 1.0);
        if (std::isinf(critical)) return;
        const auto ratio = [&](double compression) {
            return transverse_rate_ratio(x.slenderness(), compression, x.moduli());
        };
        REQUIRE(ratio(critical * (1.0 - 1e-6)) > 0.0);
        REQUIRE(ratio(critical * (1.0 + 1e-6)) < 0.0);
        REQUIRE_THAT(ratio(critical), WithinAbs(0.0, 1e-9));
        ++crossed;
    });
    CHECK(crossed > 100);
}

TEST_CASE("sideways_rate_goes_to_its_limit_without_compression") {
    for_each_design([](const Design& x) {
        const double lambda = x.slenderness();
        const double limit = 1.0 / (lambda * lambda / 3.0 * (0.5 + x.moduli()) + x.moduli());
        REQUIRE_THAT(transverse_rate_ratio(lambda, 0.0, x.moduli()), WithinRel(limit, kRounding));
        const double small = 1e-6 * std::min(1.0, share(x, 1.0));
        REQUIRE_THAT(transverse_rate_ratio(lambda, small, x.moduli()), WithinRel(limit, 1e-5));
    });
}

TEST_CASE("sideways_rate_of_a_spring_that_can_buckle_falls_with_compression") {
    // A stubby one may get stiffer sideways, for it gets shorter.
    for_each_design([](const Design& x) {
        if (std::isinf(share(x, 1.0))) return;
        double last = transverse_rate_ratio(x.slenderness(), 0.0, x.moduli());
        for (double compression = 0.01; compression < 0.9 && compression < share(x, 1.0); compression += 0.01) {
            const double ratio = transverse_rate_ratio(x.slenderness(), compression, x.moduli());
            REQUIRE(ratio < last);
            last = ratio;
        }
    });
}

TEST_CASE("combined_stress_eq_plain_stress_without_a_push") {
    for_each_design([](const Design& x) {
        REQUIRE_THAT(combined_stress(20.0, 0.0, x.d_mm, x.D_mm, 0.0, x.free_length_mm()),
                     WithinRel(stress(20.0, x.d_mm, x.D_mm), kRounding));
        REQUIRE(combined_stress(20.0, 3.0, x.d_mm, x.D_mm, 0.1 * x.D_mm, x.free_length_mm()) >
                stress(20.0, x.d_mm, x.D_mm));
    });
}

TEST_CASE("seating_use_eq_one_where_the_moments_balance") {
    // F (D - s_Q) = F_Q L.
    for_each_design([](const Design& x) {
        const double push = 20.0 * (x.D_mm - 0.1 * x.D_mm) / x.free_length_mm();
        REQUIRE_THAT(seating_use(20.0, push, x.D_mm, 0.1 * x.D_mm, x.free_length_mm()), WithinRel(1.0, kRounding));
    });
}
