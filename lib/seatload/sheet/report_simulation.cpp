// SPDX-License-Identifier: MIT
#include <seatload/sheet/report_simulation.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/wire/unknown_tolerance.hpp>

namespace seatload::sheet {
namespace {

constexpr long kSprings = 20000;
constexpr std::uint64_t kSeed = 13906;
constexpr int kBins = 40;
constexpr double kReach = 4.2;  ///< half width of a histogram, in standard deviations of the wider case

using tolerance::Lot;

tolerance::LotModel model_of(const ReportSubject& s) {
    const spring::Spring& spring = s.spec.spring;
    const tolerance::MadeAllowance& made = s.allowance;
    const double n = s.values.active_coils;
    tolerance::LotModel m;
    m.wire_diameter = {s.wire.d_mm, s.wire.d_tolerance_mm, 0.0};
    m.outside_rules = s.spec.bore_rules;
    m.coil_diameter = {in_mm(s.spec.bore_rules ? spring.outside_diameter() : spring.inside_diameter()),
                       made.lot_coil_diameter + made.coil_diameter, sizing::kWithinLotDiameter};
    m.active_coils = {n, sizing::coils_tolerance(n, s.made_to.load), sizing::kWithinLotCoils};
    m.free_length = {in_mm(spring.free_length), made.free_length, 1.0};
    m.shear_modulus = {s.wire.shear_modulus_mpa, made.shear_modulus, 0.0};
    m.lengths = {in_mm(s.spec.seated.length), in_mm(s.spec.full_travel.length)};
    return m;
}

tolerance::LoadWindow ordered_window(const record::Spec& spec) {
    const auto least = [](const record::LoadAtLength& l) { return in_newton(l.nominal - l.minus); };
    const auto most = [](const record::LoadAtLength& l) { return in_newton(l.nominal + l.plus); };
    return {{least(spec.seated), least(spec.full_travel)}, {most(spec.seated), most(spec.full_travel)}};
}

/// The need as it shows on a cold and new spring: what must be there in service, raised.
tolerance::LoadWindow need_window(const ReportSubject& s) {
    tolerance::LoadWindow w;
    const check::DemandNumbers& d = s.demand;
    if (d.seated_at_least_n) w.least[0] = *d.seated_at_least_n / s.kept_share();
    if (d.full_at_least_n) w.least[1] = *d.full_at_least_n / s.kept_share();
    if (d.seated_at_most_n) w.most[0] = *d.seated_at_most_n;
    if (d.full_at_most_n) w.most[1] = *d.full_at_most_n;
    return w;
}

std::string percent(long part, long whole) {
    return fixed(100.0 * static_cast<double>(part) / static_cast<double>(whole), 1) + " %";
}

std::optional<double> finite(double value) {
    return std::isfinite(value) ? std::optional<double>(value) : std::nullopt;
}

/// They move the lean alone, which the outlook counts; beside the coils, as both are told in turns.
std::vector<std::string> tips_row(const check::Tips& tips) {
    const auto degrees = [](double turns) { return significant(360.0 * turns, 4) + "°"; };
    return {"end tips apart", "180°", degrees(tips.ordered), degrees(sizing::kWithinLotTips * tips.ordered),
            "as ordered, half of it within a lot (estimate); they move the lean, not the loads"};
}

}  // namespace

ReportSimulation simulated(const ReportSubject& s) {
    ReportSimulation out;
    out.model = model_of(s);
    out.ordered = ordered_window(s.spec);
    out.need = need_window(s);
    tolerance::SimulationOptions options;
    options.seed = kSeed;
    options.springs = kSprings;
    options.bins = kBins;
    options.windows = {out.ordered, out.need};
    options.adjusted_to = {in_newton(s.spec.seated.nominal), in_newton(s.spec.full_travel.nominal)};
    for (std::size_t i = 0; i < 2; ++i) {
        const double reach = kReach * tolerance::first_order_deviation_n(out.model, Lot::any, out.model.lengths[i]);
        out.from[i] = std::min(options.adjusted_to[i] - reach, out.ordered.least[i] - 0.1 * reach);
        out.to[i] = std::max(options.adjusted_to[i] + reach, out.ordered.most[i] + 0.1 * reach);
    }
    options.histogram_from = out.from;
    options.histogram_to = out.to;
    out.any = tolerance::simulate(out.model, options);
    options.lot = Lot::adjusted;
    out.adjusted = tolerance::simulate(out.model, options);
    return out;
}

RuledTable simulation_model_table(const ReportSubject& s, const ReportSimulation& sim, double width) {
    RuledTable table;
    table.widths = {42.0, 22.0, 24.0, 26.0};
    double rest = width;
    for (const double w : table.widths) rest -= w;
    table.widths.push_back(rest);
    table.rows.push_back({"number", "nominal", "tolerance ±", "within a lot ±", "rests on"});
    const auto add = [&](const std::string& name, const std::string& unit, const tolerance::Spread& spread, int digits,
                         const std::string& basis) {
        const auto words = [&](double value) {
            return significant(value, digits) + (unit.empty() ? "" : "\u00a0" + unit);
        };
        table.rows.push_back({name, words(spread.nominal), words(spread.plus_minus),
                              words(spread.plus_minus * spread.within_lot), basis});
    };
    const auto& m = sim.model;
    const std::string grade = std::to_string(s.made_to.load);
    add("wire diameter d", "mm", m.wire_diameter, 5,
        s.knows_wire_tolerance() ? "the wire's tolerance (" + std::string(word(s.wire_tolerance_trust)) +
                                       "); one coil of wire a lot (estimate)"
                                 : wire::unknown_tolerance_words(wire::Flattered::solid_length_and_shares));
    add(with_sub("D", m.outside_rules ? "e" : "i"), "mm", m.coil_diameter, 5,
        "EN 15800 grade " + std::to_string(s.made_to.diameter) + " (" + std::string(word(s.coil_tolerance_trust)) +
            ")");
    add("active coils n", "", m.active_coils, 4,
        "JIS B 2707, ±1/4 where no load is ordered (seen), times EN 15800's Q of grade " + grade + " (estimate)");
    add("free length " + with_sub("L", "0"), "mm", m.free_length, 5, "EN 15800 grade " + grade + " (memory)");
    if (s.values.tips) table.rows.push_back(tips_row(*s.values.tips));
    add("shear modulus G", "MPa", m.shear_modulus, 5, "half the range of the values published for its kind (estimate)");
    return table;
}

RuledTable simulation_result_table(const ReportSimulation& sim, double width) {
    RuledTable table;
    table.widths = {48.0, 0.5 * (width - 48.0), 0.5 * (width - 48.0)};
    table.rows.push_back({"of " + std::to_string(sim.any.springs) + " springs", "before the maker adjusts",
                          "after he brought his lot in"});
    const auto row = [&](const std::string& name, const auto& words) {
        table.rows.push_back({name, words(sim.any, Lot::any), words(sim.adjusted, Lot::adjusted)});
    };
    for (std::size_t i = 0; i < 2; ++i) {
        const std::string load = with_sub("F", std::to_string(i + 1));
        row(load + ": mean, standard deviation", [&](const tolerance::Simulated& found, Lot) {
            return significant(found.mean[i], 4) + " N, " + significant(found.standard_deviation[i], 3) + " N";
        });
        row(load + ": the same by propagation", [&](const tolerance::Simulated&, Lot lot) {
            return significant(tolerance::first_order_deviation_n(sim.model, lot, sim.model.lengths[i]), 3) +
                   " N, to first order and not cut off";
        });
    }
    row("both loads as ordered",
        [&](const tolerance::Simulated& found, Lot) { return percent(found.inside[0], found.springs); });
    row("both loads as the mechanism needs",
        [&](const tolerance::Simulated& found, Lot) { return percent(found.inside[1], found.springs); });
    return table;
}

std::vector<std::string> simulation_assumptions(const ReportSimulation& sim) {
    return {
        "Each number is normal about its nominal, independent of the others, its tolerance three standard "
        "deviations, and nothing lies beyond the tolerance (common practice, no source).",
        "R = G d" + with_super("", "4") + "/(8 D" + with_super("", "3") + " n), F = R (" + with_sub("L", "0") +
            " − L), D = " + (sim.model.outside_rules ? with_sub("D", "e") + " − d" : with_sub("D", "i") + " + d") +
            "; loads are cold and new; friction and the uncertainty of measuring are left out.",
        "Before: springs of many lots, nothing brought in. After: one lot, whose mean loads the maker brought to "
        "those ordered by free length and coils; what strays from piece to piece within the lot is left: half of the "
        "tolerances of coil diameter and coils, all of the free length's (estimate; together about the load tolerance "
        "of the grade).",
        "Shares of so many springs are good to about ±0.7 % at worst (two standard errors). The seed is fixed: the "
        "same spec gives the same numbers."};
}

std::array<Histogram, 4> simulation_histograms(const ReportSubject& s, const ReportSimulation& sim) {
    std::array<Histogram, 4> out;
    for (std::size_t k = 0; k < 4; ++k) {
        const std::size_t i = k % 2;
        const tolerance::Simulated& found = k < 2 ? sim.any : sim.adjusted;
        Histogram& h = out[k];
        const std::string load = with_sub("F", std::to_string(i + 1));
        h.title = load + (k < 2 ? " before the maker adjusts" : " after he brought his lot in");
        h.axis = load + " [N], cold and new";
        h.from = sim.from[i];
        h.to = sim.to[i];
        h.counts = found.histogram[i];
        h.total = found.springs;
        h.ordered_least = sim.ordered.least[i];
        h.ordered_most = sim.ordered.most[i];
        h.need_least = finite(sim.need.least[i]);
        h.need_most = finite(sim.need.most[i]);
        h.nominal = in_newton(i == 0 ? s.spec.seated.nominal : s.spec.full_travel.nominal);
    }
    return out;
}

}  // namespace seatload::sheet
