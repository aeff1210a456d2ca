// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <random>
#include <vector>

#include <seatload/bench/gravity.hpp>
#include <seatload/bench/measured.hpp>

namespace seatload::test {

/// What is true of a spring on a bench, for drawing readings of it.
struct TrueSpring {
    double rate_n_mm = 0.4;
    double free_length_mm = 23.0;
    double closing_height_mm = 0.0;  ///< below it the rate is `closed_share` times as large
    double closed_share = 4.0;
    double friction_n = 0.0;  ///< half the difference of loading and unloading

    double load(double height_mm) const {
        const double straight = rate_n_mm * std::max(0.0, free_length_mm - height_mm);
        const double closed = rate_n_mm * (closed_share - 1.0) * std::max(0.0, closing_height_mm - height_mm);
        return straight + closed;
    }
};

/// The errors a session has besides those of single readings; drawn normal with the standard uncertainty of each.
struct SharedErrors {
    double span = 0.0;
    double zero_n = 0.0;
    double gauge_zero_mm = 0.0;
    double compliance_mm_n = 0.0;
};

/// A bench as a workshop might have it: kitchen scale of 1 g, mill quill of 0.01 mm. Common practice, no source.
inline bench::Readings usual_bench() {
    bench::Readings session;
    session.gauge.resolution = 0.01 * mm;
    session.gauge.error = 0.01 * mm;
    session.gauge.zero = 0.02 * mm;
    session.scale.resolution = 1.0 * gram;
    session.scale.linearity = 1.0 * gram;
    session.scale.zero = 1.0 * gram;
    session.scale.span_error = {0.001};
    session.scale.adjusted_at = bench::StandardGravity{};
    session.load_path.stiffness = {160.0 * newton_per_mm, 10.0 * newton_per_mm};
    session.temperature = {20.0, 0.0};
    session.heights = {{"seated", {15.0 * mm, {}}}, {"full travel", {9.0 * mm, {}}}};
    return session;
}

inline bench::SpringRun run_of(std::vector<bench::Reading> readings) {
    bench::SpringRun run;
    run.name = "latch";
    run.preload.count = 3;
    run.readings = std::move(readings);
    return run;
}

/// A reading of the true spring without any error.
inline bench::Reading sound_reading(const TrueSpring& spring, double height_mm, bool unloading = false) {
    const double friction = unloading ? -spring.friction_n : spring.friction_n;
    const double load = spring.load(height_mm);
    return {height_mm * mm, {}, (load + (load > 0.0 ? friction : 0.0)) * newton, unloading};
}

/// Draws the errors of a session and of its readings.
class Drawer {
  public:
    explicit Drawer(unsigned seed) : engine_(seed) {}

    double normal(double deviation) { return deviation * normal_(engine_); }
    double within(double half_width) { return half_width * uniform_(engine_); }

    SharedErrors shared(const bench::Readings& session) {
        const double g = bench::kStandardGravity;
        const double root3 = std::sqrt(3.0), k = in_newton_per_mm(session.load_path.stiffness->value);
        SharedErrors e;
        e.span = normal(session.scale.span_error.value / root3);
        const double zero = in_newton(bench::force_of(session.scale.zero, g)) / root3;
        const double tare = in_newton(bench::force_of(session.scale.resolution, g)) / std::sqrt(12.0);
        e.zero_n = normal(std::hypot(zero, tare));
        e.gauge_zero_mm = normal(in_mm(session.gauge.zero) / root3);
        e.compliance_mm_n = normal(in_newton_per_mm(session.load_path.stiffness->plus_minus) / root3 / (k * k));
        return e;
    }

    /// What scale and gauge show when the spring is pressed until the gauge shows `height_mm`, in steps of the display.
    bench::Reading reading(const bench::Readings& session, const TrueSpring& spring, const SharedErrors& shared_errors,
                           double height_mm) {
        const double g = bench::kStandardGravity;
        const double set = height_mm + within(0.5 * in_mm(session.gauge.resolution)) +
                           within(in_mm(session.gauge.error)) + shared_errors.gauge_zero_mm;
        const double compliance =
            1.0 / in_newton_per_mm(session.load_path.stiffness->value) + shared_errors.compliance_mm_n;
        const double load = load_through(spring, set, compliance);
        const double linearity = within(in_newton(bench::force_of(session.scale.linearity, g)));
        const double shown = (load - shared_errors.zero_n) / (1.0 + shared_errors.span) + linearity;
        const double step = in_gram(std::get<Mass>(session.scale.resolution));
        const double grams = std::round(shown / (1e-3 * g) / step) * step;
        return {height_mm * mm, {}, grams * gram, false};
    }

  private:
    // The load at which the spring, longer than the gauge says by what the load path gives way, pushes back as hard.
    static double load_through(const TrueSpring& spring, double gauge_height, double compliance) {
        double load = spring.load(gauge_height);
        for (int i = 0; i < 60; ++i) load = spring.load(gauge_height + compliance * load);
        return load;
    }

    std::mt19937 engine_;
    std::normal_distribution<double> normal_{0.0, 1.0};
    std::uniform_real_distribution<double> uniform_{-1.0, 1.0};
};

}  // namespace seatload::test
