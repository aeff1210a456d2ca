// SPDX-License-Identifier: MIT
#include <seatload/bench/correction.hpp>

#include <algorithm>

#include <seatload/bench/budget.hpp>
#include <seatload/bench/gravity.hpp>
#include <seatload/bench/load_path.hpp>

namespace seatload::bench {

namespace {

std::optional<double> from_table(const PlungerTable& table, double travel) {
    for (std::size_t i = 0; i + 1 < table.size(); ++i) {
        const double low = in_mm(table[i].first), high = in_mm(table[i + 1].first);
        if (travel < low || travel > high) continue;
        const double share = high > low ? (travel - low) / (high - low) : 0.0;
        return in_newton(table[i].second) + share * (in_newton(table[i + 1].second) - in_newton(table[i].second));
    }
    return std::nullopt;
}

// Travel of the indicator at a reading: as read, or from the height where the two are tied.
std::optional<Length> travel_of(const Indicator& indicator, const Reading& reading) {
    if (reading.travel) return reading.travel;
    if (reading.height && indicator.height_at_zero) return indicator.height_at_zero->value - *reading.height;
    return std::nullopt;
}

std::optional<double> stated_height_mm(const Readings& session, const Reading& reading, const CommonErrors& errors) {
    if (reading.height) return in_mm(*reading.height) * (1.0 + errors.gauge_span) + errors.gauge_zero_mm;
    if (!reading.travel || !session.indicator.height_at_zero) return std::nullopt;
    return in_mm(session.indicator.height_at_zero->value) + errors.height_at_zero_mm -
           in_mm(*reading.travel) * (1.0 + errors.indicator_span);
}

double sign_of(Bearing bearing) { return bearing == Bearing::none ? 0.0 : bearing == Bearing::adds ? 1.0 : -1.0; }

std::optional<double> spring_force_n(const Readings& session, const Reading& reading, const CommonErrors& errors) {
    const Indicator& indicator = session.indicator;
    double now = 0.0, at_tare = 0.0;
    if (indicator.bearing != Bearing::none) {
        const auto force = plunger_force_n(indicator, travel_of(indicator, reading));
        const auto tared = indicator.tare_travel ? plunger_force_n(indicator, indicator.tare_travel) : 0.0;
        if (!force || !tared) return std::nullopt;
        now = *force + errors.plunger_n;
        at_tare = *tared;
    }
    const double gravity = gravity_of(session.scale.adjusted_at).value * (1.0 + errors.gravity);
    const double shown = force_from_scale(reading.scale, session.scale.tare, gravity, Bearing::none, 0.0, 0.0);
    return shown * (1.0 + errors.span) + errors.zero_n - sign_of(indicator.bearing) * (now - at_tare);
}

bool reads_masses(const Readings& session) {
    return std::any_of(session.springs.begin(), session.springs.end(), [](const SpringRun& run) {
        return std::any_of(run.readings.begin(), run.readings.end(),
                           [](const Reading& r) { return std::holds_alternative<Mass>(r.scale); });
    });
}

}  // namespace

std::optional<double> plunger_force_n(const Indicator& indicator, std::optional<Length> travel) {
    if (const Force* constant = std::get_if<Force>(&indicator.plunger)) return in_newton(*constant);
    if (!travel) return std::nullopt;
    if (const PlungerLine* line = std::get_if<PlungerLine>(&indicator.plunger))
        return in_newton(line->at_zero + line->per_travel * *travel);
    return from_table(std::get<PlungerTable>(indicator.plunger), in_mm(*travel));
}

double force_from_scale(const ScaleReading& shown, const std::optional<ScaleReading>& tare, double gravity,
                        Bearing bearing, double plunger_n, double plunger_at_tare_n) {
    const double net = in_newton(force_of(shown, gravity)) - (tare ? in_newton(force_of(*tare, gravity)) : 0.0);
    return net - sign_of(bearing) * (plunger_n - plunger_at_tare_n);
}

double apparent_rate(double rate, double load_path_stiffness) { return 1.0 / (1.0 / rate + 1.0 / load_path_stiffness); }

std::vector<CommonSource> common_sources(const Readings& session) {
    const Gravity gravity = gravity_of(session.scale.adjusted_at);
    const Scale& scale = session.scale;
    const auto newtons = [&](const ScaleReading& r) { return in_newton(force_of(r, gravity.value)); };
    std::vector<CommonSource> all{
        {"scale: span", &CommonErrors::span, rectangular(scale.span_error.value)},
        {"scale: zero", &CommonErrors::zero_n, rectangular(newtons(scale.zero))},
        {"scale: step at taring", &CommonErrors::zero_n, of_step(newtons(scale.resolution))},
        {"gravity", &CommonErrors::gravity, rectangular(gravity.plus_minus / gravity.value)},
        {"height gauge: zero", &CommonErrors::gauge_zero_mm, rectangular(in_mm(session.gauge.zero))},
        {"height gauge: span", &CommonErrors::gauge_span, rectangular(session.gauge.span_error.value)},
        {"indicator: span", &CommonErrors::indicator_span, rectangular(session.indicator.span_error.value)},
        {"load path", &CommonErrors::compliance_mm_n, compliance_of(session).standard},
    };
    if (session.indicator.height_at_zero)
        all.push_back({"indicator: height at zero", &CommonErrors::height_at_zero_mm,
                       rectangular(in_mm(session.indicator.height_at_zero->plus_minus))});
    if (session.indicator.bearing != Bearing::none)
        all.push_back({"indicator: plunger force", &CommonErrors::plunger_n,
                       rectangular(in_newton(session.indicator.plunger_error))});
    std::erase_if(all, [&](const CommonSource& s) {
        return s.standard == 0.0 || (s.error == &CommonErrors::gravity && !reads_masses(session));
    });
    return all;
}

OwnDoubt own_doubt(const Readings& session, const Reading& reading) {
    const double gravity = gravity_of(session.scale.adjusted_at).value;
    const bool by_gauge = reading.height.has_value();
    OwnDoubt doubt;
    doubt.scale_step_n = of_step(in_newton(force_of(session.scale.resolution, gravity)));
    doubt.linearity_n = rectangular(in_newton(force_of(session.scale.linearity, gravity)));
    doubt.height_step_mm = of_step(in_mm(by_gauge ? session.gauge.resolution : session.indicator.resolution));
    doubt.height_error_mm = rectangular(in_mm(by_gauge ? session.gauge.error : session.indicator.error));
    return doubt;
}

std::optional<Corrected> corrected(const Readings& session, const Reading& reading, const CommonErrors& errors) {
    const auto height = stated_height_mm(session, reading, errors);
    const auto force = spring_force_n(session, reading, errors);
    if (!height || !force) return std::nullopt;
    const auto stated = stated_height_mm(session, reading, {});
    // Scale and frame give way by force times compliance, so that the spring is longer than the gauge says.
    const double compliance = compliance_of(session).value + errors.compliance_mm_n;
    return Corrected{*stated, *height + compliance * *force, *force};
}

}  // namespace seatload::bench
