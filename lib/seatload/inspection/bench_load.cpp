// SPDX-License-Identifier: MIT
#include <seatload/inspection/bench_load.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/bench/correction.hpp>
#include <seatload/bench/gravity.hpp>
#include <seatload/bench/measured.hpp>

namespace seatload::inspection {
namespace {

constexpr double kCoverage = 2.0;  // the k of the rule that the sheet states

/// Whether heights are set by a gauge, or by the travel of the indicator; as the bench's own readings were.
bool sets_heights(const bench::Readings& bench) {
    return std::any_of(bench.springs.begin(), bench.springs.end(), [](const bench::SpringRun& run) {
        return std::any_of(run.readings.begin(), run.readings.end(),
                           [](const bench::Reading& r) { return r.height.has_value(); });
    });
}

std::optional<bench::Reading> reading_at(const bench::Readings& bench, double height_mm,
                                         const bench::ScaleReading& shown) {
    if (sets_heights(bench)) return bench::Reading{height_mm * mm, std::nullopt, shown, false};
    if (!bench.indicator.height_at_zero) return std::nullopt;
    return bench::Reading{std::nullopt, bench.indicator.height_at_zero->value - height_mm * mm, shown, false};
}

std::optional<double> load_with(const bench::Readings& bench, const bench::ScaleReading& shown, const AskedLoad& asked,
                                const bench::CommonErrors& errors) {
    const auto reading = reading_at(bench, asked.height_mm, shown);
    if (!reading) return std::nullopt;
    const auto found = bench::corrected(bench, *reading, errors);
    if (!found) return std::nullopt;
    return found->force_n + asked.rate_n_mm * (found->height_mm - asked.height_mm);
}

/// What the scale would show for so much force more: it shows masses or forces, as its display does.
bench::ScaleReading shown_for(const bench::Readings& bench, double force_n) {
    if (std::holds_alternative<Force>(bench.scale.resolution)) return force_n * newton;
    const double one_gram = in_newton(bench::force_of(1.0 * gram, bench::gravity_of(bench.scale.adjusted_at).value));
    return force_n / one_gram * gram;
}

/// What the scale shows when the springs carry the load asked for.
std::optional<bench::ScaleReading> usual_reading(const bench::Readings& bench, const AskedLoad& asked) {
    const auto first = load_with(bench, shown_for(bench, asked.load_n), asked, {});
    if (!first) return std::nullopt;
    return shown_for(bench, 2.0 * asked.load_n - *first);
}

/// Pooled variance of repeated readings, over the springs of the bench [N^2].
double variance_of_repeats(const bench::Readings& bench) {
    double squares = 0.0, freedom = 0.0;
    for (const bench::SpringRun& run : bench.springs) {
        const bench::Measurement measured = bench::measure(bench, run);
        if (!measured.spring || !measured.spring->repeatability) continue;
        const double s = in_newton(*measured.spring->repeatability);
        const double n = measured.spring->repeatability_degrees_of_freedom;
        squares += n * s * s;
        freedom += n;
    }
    return freedom > 0.0 ? squares / freedom : 0.0;
}

double square(double x) { return x * x; }

}  // namespace

std::optional<double> load_from_scale(const bench::Readings& bench, const bench::ScaleReading& shown,
                                      const AskedLoad& asked) {
    return load_with(bench, shown, asked, {});
}

std::optional<double> expanded_of_one_reading(const bench::Readings& bench, const AskedLoad& asked) {
    const auto shown = usual_reading(bench, asked);
    if (!shown) return std::nullopt;
    const auto usual = load_with(bench, *shown, asked, {});
    const auto reading = reading_at(bench, asked.height_mm, *shown);
    if (!usual || !reading) return std::nullopt;
    const bench::OwnDoubt own = bench::own_doubt(bench, *reading);
    double variance = square(own.scale_step_n) + square(own.linearity_n) +
                      square(asked.rate_n_mm) * (square(own.height_step_mm) + square(own.height_error_mm)) +
                      variance_of_repeats(bench);
    for (const bench::CommonSource& source : bench::common_sources(bench)) {
        bench::CommonErrors errors;
        errors.*source.error = source.standard;
        if (const auto off = load_with(bench, *shown, asked, errors)) variance += square(*off - *usual);
    }
    return kCoverage * std::sqrt(variance);
}

}  // namespace seatload::inspection
