// SPDX-License-Identifier: MIT
// The closed form of the return against the equation of motion integrated numerically (Boost.Numeric.Odeint and
// Boost.Math quadrature), and the logarithmic mean against the Lambert W function (Boost.Math).
#include <array>
#include <cmath>

#include <boost/math/quadrature/tanh_sinh.hpp>
#include <boost/math/special_functions/lambert_w.hpp>
#include <boost/numeric/odeint.hpp>
#include <seatload/demand/return_time.hpp>

#include "random_plunger.hpp"
#include "support/check.hpp"

using namespace seatload;

namespace {

struct Motion {
    double area;
    double stroke;
    double conductance;
    double seated_net;
    double full_travel_net;

    /// Speed towards the seat at a lift: the pressure that the net load makes drives the oil out.
    double speed(double lift) const {
        const double net = seated_net + (full_travel_net - seated_net) * lift / stroke;
        return conductance * (net / area) / area;
    }
};

Motion random_motion(test::Dice& dice) {
    const double seated = dice.between(0.05, 10.0);
    return {dice.between(20.0, 200.0), dice.between(1.0, 12.0), dice.between(50.0, 5e4), seated,
            seated + dice.between(0.0, 20.0)};
}

double closed_form(const Motion& m) {
    return demand::return_time_s(m.area, m.stroke, m.conductance, m.seated_net, m.full_travel_net);
}

}  // namespace

TEST_CASE("the time home is the integral of one over the speed") {
    test::Dice dice(17);
    boost::math::quadrature::tanh_sinh<double> integrator;
    for (int i = 0; i < 300; ++i) {
        const Motion m = random_motion(dice);
        const double integral = integrator.integrate([&](double lift) { return 1.0 / m.speed(lift); }, 0.0, m.stroke);
        CHECK_THAT(closed_form(m), WithinRel(integral, 1e-10));
    }
}

TEST_CASE("the plunger whose motion is integrated step by step is home at that time") {
    using State = std::array<double, 1>;
    test::Dice dice(19);
    for (int i = 0; i < 100; ++i) {
        const Motion m = random_motion(dice);
        State lift{m.stroke};
        const auto motion = [&](const State& x, State& change, double) { change[0] = -m.speed(x[0]); };
        const auto stepper =
            boost::numeric::odeint::make_controlled(1e-12, 1e-12, boost::numeric::odeint::runge_kutta_dopri5<State>());
        const double time = closed_form(m);
        boost::numeric::odeint::integrate_adaptive(stepper, motion, lift, 0.0, time, time / 100.0);
        CHECK_THAT(lift[0], WithinAbs(0.0, 1e-8 * m.stroke));
    }
}

TEST_CASE("with equal loads the plunger comes home at one speed") {
    const Motion m{100.0, 6.0, 500.0, 3.0, 3.0};
    CHECK_THAT(closed_form(m), WithinRel(6.0 / m.speed(0.0), 1e-14));
}

TEST_CASE("a seated load that only just meets what it must overcome never brings the plunger home") {
    CHECK(std::isinf(demand::return_time_s(100.0, 6.0, 500.0, 0.0, 5.0)));
    CHECK(std::isinf(demand::return_time_s(100.0, 6.0, 500.0, -1.0, 5.0)));
}

TEST_CASE("the logarithmic mean lies between its numbers and is the number itself for equal ones") {
    test::Dice dice(23);
    for (int i = 0; i < 1000; ++i) {
        const double a = std::exp(dice.between(-8.0, 8.0));
        const double b = a * std::exp(dice.between(-1.0, 1.0) * std::exp(dice.between(-20.0, 3.0)));
        const double mean = demand::logarithmic_mean(a, b);
        CHECK(mean >= std::min(a, b) * (1.0 - 1e-15));
        CHECK(mean <= std::max(a, b) * (1.0 + 1e-15));
        CHECK(mean == demand::logarithmic_mean(b, a));
    }
    CHECK(demand::logarithmic_mean(2.5, 2.5) == 2.5);
    CHECK_THAT(demand::logarithmic_mean(1.0, std::exp(1.0)), WithinRel(std::exp(1.0) - 1.0, 1e-15));
}

TEST_CASE("two numbers that go the share told have that logarithmic mean") {
    // 1/mean is the average of 1/x between them, integrated
    test::Dice dice(29);
    boost::math::quadrature::tanh_sinh<double> integrator;
    for (int i = 0; i < 500; ++i) {
        const double a = dice.between(-3.0, 10.0);
        const double b = dice.between(-3.0, 20.0);
        const double room_a = dice.between(0.1, 10.0);
        const double room_b = dice.between(0.1, 20.0);
        const double mean = std::exp(dice.between(-2.0, 4.0));
        INFO("seed 29, case " << i << ": " << a << ' ' << room_a << ' ' << b << ' ' << room_b << ' ' << mean);
        const double share = demand::share_for_logarithmic_mean(a, room_a, b, room_b, mean);
        const double from = a + share * room_a;
        const double to = b + share * room_b;
        if (std::min(from, to) < 1e-6 * mean) continue;  // the integral runs away
        const double average = integrator.integrate([&](double x) { return 1.0 / (from + (to - from) * x); }, 0.0, 1.0);
        CHECK_THAT(1.0 / average, WithinRel(mean, 1e-7));
    }
    CHECK_THAT(demand::share_for_logarithmic_mean(2.0, 1.0, 2.0, 1.0, 5.0), WithinRel(3.0, 1e-12));
}

TEST_CASE("the logarithmic mean is undone by the Lambert W function") {
    // (a - b)/ln(a/b) = c with r = b/a, k = c/a: -r/k exp(-r/k) = -exp(-1/k)/k, so r = -k W(-exp(-1/k)/k) on the branch
    // that is not r = 1.
    test::Dice dice(31);
    for (int i = 0; i < 1000; ++i) {
        const double a = std::exp(dice.between(-3.0, 3.0));
        const double k = std::exp(dice.between(-2.0, 2.0));
        if (std::abs(k - 1.0) < 0.02) continue;  // the two branches meet, and W loses half its digits
        const double argument = -std::exp(-1.0 / k) / k;
        const double w = k > 1.0 ? boost::math::lambert_wm1(argument) : boost::math::lambert_w0(argument);
        INFO("seed 31, case " << i << ": a = " << a << ", k = " << k);
        CHECK_THAT(demand::logarithmic_mean(a, -k * w * a), WithinRel(k * a, 1e-9));
    }
}
