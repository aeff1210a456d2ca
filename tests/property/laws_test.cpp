// SPDX-License-Identifier: MIT
// Laws of a whole spring as it is evaluated, for drawn springs: similarity, the powers of the rate equation, monotony.
#include <cmath>
#include <numbers>

#include <seatload/check/evaluation.hpp>

#include "property/property.hpp"
#include "support/builtin.hpp"

using namespace seatload;
using namespace seatload::property;

namespace {

constexpr double kRounding = 1e-11;  ///< relative; some dozens of operations on doubles

bool near(double a, double b, double relative = kRounding) { return std::abs(a - b) <= relative * std::abs(b); }

/// A wire that is the same at every diameter, without tolerance, so that springs of it can be similar.
wire::Grade wire_alike(double shear_modulus_mpa) {
    wire::Grade grade;
    grade.id = "alike";
    grade.strength = wire::StrengthGiven{2000.0 * MPa, 0.01 * mm, 1000.0 * mm};
    grade.moduli = {{1000.0 * mm, shear_modulus_mpa * MPa, 206000.0 * MPa}};
    grade.density = 7850.0 * kg_per_m3;
    grade.service_limit = {300.0};
    return grade;
}

spring::Spring spring_for_laws() {
    spring::Spring s;
    const double d = number(0.2, 8.0);
    s.wire_diameter = d * mm;
    s.mean_diameter = d * number(4.0, 18.0) * mm;
    s.total_coils = number(4.5, 30.0);
    s.free_length = d * s.total_coils * number(1.3, 3.0) * mm;
    s.ends = one_of<spring::Ends>(
        {spring::Ends::closed_ground, spring::Ends::closed, spring::Ends::open, spring::Ends::open_ground});
    return s;
}

check::Evaluation evaluated(const spring::Spring& s, double shear_modulus_mpa = 80000.0) {
    demand::Requirement alone;
    alone.limits = demand::school_defaults(spring::School::en_13906);
    return check::evaluate(s, wire_alike(shear_modulus_mpa), alone, test::tolerances(), false).value();
}

spring::Spring scaled(spring::Spring s, double k) {
    s.wire_diameter *= k;
    s.mean_diameter *= k;
    s.free_length *= k;
    return s;
}

}  // namespace

// Dimensional analysis: with the same material, loads go as k^2, rates as k, masses as k^3, frequencies as 1/k, and
// stresses at the same share of the free length stay.
TEST_CASE("A similar spring k times as large has k times the rate, k squared times the loads and the same stress") {
    holds("similar", [] {
        const spring::Spring s = spring_for_laws();
        const double k = number(0.2, 5.0);
        const check::Evaluation one = evaluated(s);
        const check::Evaluation large = evaluated(scaled(s, k));
        RC_ASSERT(near(in_newton_per_mm(large.rate), k * in_newton_per_mm(one.rate)));
        RC_ASSERT(near(in_newton(large.at_solid.load), k * k * in_newton(one.at_solid.load), 1e-9));
        RC_ASSERT(near(in_mpa(large.at_solid.stress), in_mpa(one.at_solid.stress), 1e-9));
        RC_ASSERT(near(in_mm(large.solid_length), k * in_mm(one.solid_length)));
        RC_ASSERT(near(in_mm(large.wire_length), k * in_mm(one.wire_length)));
        RC_ASSERT(near(in_gram(large.mass), k * k * k * in_gram(one.mass)));
        RC_ASSERT(near(in_hertz(large.natural_frequency), in_hertz(one.natural_frequency) / k));
        RC_ASSERT(large.buckling_deflection.has_value() == one.buckling_deflection.has_value());
        if (one.buckling_deflection)
            RC_ASSERT(near(in_mm(*large.buckling_deflection), k * in_mm(*one.buckling_deflection), 1e-9));
    });
}

// EN 13906-1 cl. 9.4, R = G d^4/(8 D^3 n), each factor moved alone.
TEST_CASE("The rate of a spring goes with G, the fourth power of d, the inverse cube of D and the inverse of n") {
    holds("rate", [] {
        const spring::Spring s = spring_for_laws();
        const double k = number(1.01, 1.2);
        const double R = in_newton_per_mm(evaluated(s).rate);
        RC_ASSERT(near(in_newton_per_mm(evaluated(s, 80000.0 * k).rate), k * R));
        spring::Spring thicker = s;
        thicker.wire_diameter *= k;
        RC_ASSERT(near(in_newton_per_mm(evaluated(thicker).rate), std::pow(k, 4.0) * R));
        spring::Spring wider = s;
        wider.mean_diameter *= k;
        RC_ASSERT(near(in_newton_per_mm(evaluated(wider).rate), R / (k * k * k)));
    });
}

TEST_CASE("More coils make a spring softer, longer when solid, heavier and slower, and thicker wire makes it stiffer") {
    holds("monotone", [] {
        const spring::Spring s = spring_for_laws();
        const check::Evaluation one = evaluated(s);
        spring::Spring more = s;
        more.total_coils += number(0.05, 3.0);
        const check::Evaluation coiled = evaluated(more);
        RC_ASSERT(coiled.rate < one.rate);
        RC_ASSERT(coiled.solid_length > one.solid_length);
        RC_ASSERT(coiled.mass > one.mass);
        RC_ASSERT(coiled.natural_frequency < one.natural_frequency);
        spring::Spring thicker = s;
        thicker.wire_diameter *= number(1.001, 1.2);
        RC_ASSERT(evaluated(thicker).rate > one.rate);
        spring::Spring wider = s;
        wider.mean_diameter *= number(1.001, 1.3);
        RC_ASSERT(evaluated(wider).rate < one.rate);
    });
}
