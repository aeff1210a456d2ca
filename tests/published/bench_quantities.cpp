// SPDX-License-Identifier: MIT
// Gravity, forces from a scale, load path, lines through readings, uncertainty.
#include <cmath>
#include <numbers>
#include <sstream>

#include <seatload/bench/budget.hpp>
#include <seatload/bench/correction.hpp>
#include <seatload/bench/gravity.hpp>
#include <seatload/bench/line_fit.hpp>
#include <seatload/bench/measured.hpp>

#include "published/inputs.hpp"

namespace seatload::published {
namespace {

using namespace bench;

double latitude(const Inputs& in) { return in.number("latitude"); }
double metres_up(const Inputs& in) { return in.number("height_above_sea") / 1000.0; }

std::vector<double> listed(const Inputs& in, const std::string& name) {
    std::istringstream words(in.word(name));
    std::vector<double> numbers;
    for (double number = 0.0; words >> number;) numbers.push_back(number);
    return numbers;
}

LineFit line(const Inputs& in, bool corrected_for_load_path = true) {
    const double k = in.number("load_path_stiffness");
    const auto travels = listed(in, "travels"), loads = listed(in, "loads");
    std::vector<LinePoint> points;
    for (std::size_t i = 0; i < travels.size(); ++i)
        points.push_back({travels[i] - (corrected_for_load_path ? loads[i] / k : 0.0), loads[i], in.number("u_travel"),
                          in.number("u_load")});
    return fit_line(points);
}

/// A spring pressed without any error on a bench that gives way, and what our bench makes of the readings.
Rate measured_rate(const Inputs& in, bool stiffness_stated) {
    const double R = in.number("rate"), k = in.number("load_path_stiffness");
    Readings session;
    session.gauge.resolution = 0.01 * mm;
    session.scale.resolution = 0.1 * newton;
    session.scale.adjusted_at = StandardGravity{};
    if (stiffness_stated) session.load_path.stiffness = {k * newton_per_mm, {}};
    SpringRun run;
    for (const double travel : {2.0, 6.0, 10.0, 14.0}) {
        const double force = R * travel;
        run.readings.push_back({(40.0 - travel - force / k) * mm, {}, force * newton, false});
    }
    return measure(session, run).spring.value().rate.value;
}

Force force_through_scale(const Inputs& in) {
    Readings session;
    session.scale.tare = in.get<Mass>("scale_tare");
    session.scale.adjusted_at = Site{in.get<Angle>("latitude"), in.get<Length>("height_above_sea")};
    const std::string bearing = in.word("plunger");
    session.indicator.bearing = bearing == "adds"       ? Bearing::adds
                                : bearing == "relieves" ? Bearing::relieves
                                                        : Bearing::none;
    session.indicator.plunger = PlungerLine{in.get<Force>("plunger_at_zero"), in.get<Rate>("plunger_per_travel")};
    session.indicator.tare_travel = Length{};
    const Reading reading{100.0 * mm, in.get<Length>("plunger_travel"), in.get<Mass>("scale_shows"), false};
    return corrected(session, reading).value().force_n * newton;
}

/// How much further a gauge must move from one load to another on a rigid block.
Length give_between_loads(const Inputs& in) {
    Readings session;
    session.load_path.stiffness = {in.get<Rate>("load_path_stiffness"), {}};
    const auto given_way = [&](const char* load) {
        const Corrected c = corrected(session, {40.0 * mm, {}, in.get<Force>(load), false}).value();
        return (c.height_mm - c.stated_height_mm) * mm;
    };
    return given_way("largest_load") - given_way("smallest_load");
}

Estimate<Force> load_at_height(const Inputs& in) {
    const double gravity = gravity_of(Site{in.get<Angle>("latitude"), in.get<Length>("height_above_sea")}).value;
    const auto newtons = [&](const char* name) { return force_of(in.get<Mass>(name), gravity); };
    return combine<Force>(Force{}, {{"step", of_step_difference(newtons("scale_step"))},
                                    {"linearity", rectangular(newtons("scale_linearity"))},
                                    {"plunger", rectangular(in.get<Force>("plunger_error"))},
                                    {"height", in.get<Rate>("rate") * in.get<Length>("u_height")},
                                    {"repeatability", in.get<Force>("repeatability")}});
}

double spread_percent() {
    const double pole = ellipsoid_gravity(0.5 * std::numbers::pi, 0.0), equator = ellipsoid_gravity(0.0, 0.0);
    return 100.0 * (pole - equator) / equator;
}

Quantities givens() {
    return {
        {"latitude", given<Angle>()},
        {"height_above_sea", given<Length>()},
        {"scale_step", given<Mass>()},
        {"scale_linearity", given<Mass>()},
        {"scale_shows", given<Mass>()},
        {"scale_tare", given<Mass>()},
        {"gauge_step", given<Length>()},
        {"u_height", given<Length>()},
        {"repeatability", given<Force>()},
        {"plunger", given_word()},
        {"plunger_error", given<Force>()},
        {"plunger_at_zero", given<Force>()},
        {"plunger_per_travel", given<Rate>()},
        {"plunger_travel", given<Length>()},
        {"travels", given_word()},
        {"loads", given_word()},
        {"u_travel", given<Length>()},
        {"u_load", given<Force>()},
        {"load_path_stiffness", given<Rate>()},
    };
}

}  // namespace

Quantities bench_quantities() {
    Quantities all = givens();
    all.merge(Quantities{
        {"gravity_by_zone_formula", plain([](const Inputs& in) { return local_gravity(latitude(in), metres_up(in)); })},
        {"gravity_on_ellipsoid",
         plain([](const Inputs& in) { return ellipsoid_gravity(latitude(in), metres_up(in)); })},
        {"gravity_spread_percent", plain([](const Inputs&) { return spread_percent(); })},
        {"u_of_scale_step", worked_out<Mass>([](const Inputs& in) { return of_step(in.get<Mass>("scale_step")); })},
        {"u_of_scale_step_difference",
         worked_out<Mass>([](const Inputs& in) { return of_step_difference(in.get<Mass>("scale_step")); })},
        {"u_of_gauge_step", worked_out<Length>([](const Inputs& in) { return of_step(in.get<Length>("gauge_step")); })},
        {"line_rate", worked_out<Rate>([](const Inputs& in) { return line(in).slope * newton_per_mm; })},
        {"line_intercept", worked_out<Force>([](const Inputs& in) { return line(in).at(0.0) * newton; })},
        {"line_u_rate",
         worked_out<Rate>([](const Inputs& in) { return std::sqrt(line(in).variance_slope) * newton_per_mm; })},
        {"line_u_intercept",
         worked_out<Force>([](const Inputs& in) { return std::sqrt(line(in).variance_at(0.0)) * newton; })},
        {"line_chi_square", plain([](const Inputs& in) { return line(in).chi_square; })},
        {"line_rate_uncorrected",
         worked_out<Rate>([](const Inputs& in) { return line(in, false).slope * newton_per_mm; })},
        {"apparent_rate", worked_out<Rate>([](const Inputs& in) {
             return bench::apparent_rate(in.number("rate"), in.number("load_path_stiffness")) * newton_per_mm;
         })},
        {"apparent_rate_measured", worked_out<Rate>([](const Inputs& in) { return measured_rate(in, false); })},
        {"rate_measured_through_load_path", worked_out<Rate>([](const Inputs& in) { return measured_rate(in, true); })},
        {"give_of_load_path", worked_out<Length>(give_between_loads)},
        {"force_from_scale", worked_out<Force>(force_through_scale)},
        {"u_of_load_at_height", worked_out<Force>([](const Inputs& in) { return load_at_height(in).standard; })},
        {"expanded_u_of_load_at_height",
         worked_out<Force>([](const Inputs& in) { return load_at_height(in).expanded; })},
    });
    return all;
}

}  // namespace seatload::published
