// SPDX-License-Identifier: MIT
#include <seatload/sheet/bench_facts.hpp>

#include <algorithm>
#include <numbers>

#include <seatload/bench/gravity.hpp>
#include <seatload/bench/load_path.hpp>
#include <seatload/core/text.hpp>
#include <seatload/sheet/bench_figures.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

using bench::MeasuredSpring;
using bench::Readings;

constexpr double kMmInMetre = 1000.0;
constexpr double kSmallestChance = 1e-4;  ///< told by its number

std::string mm_words(Length length) { return significant(in_mm(length), 4) + " mm"; }

std::string reading_words(const bench::ScaleReading& reading) {
    if (const Force* force = std::get_if<Force>(&reading)) return significant(in_newton(*force), 5) + " N";
    return significant(in_gram(std::get<Mass>(reading)), 6) + " g";
}

bool is_zero(const bench::ScaleReading& reading) {
    return std::visit([](const auto& q) { return in_base_unit(q) == 0.0; }, reading);
}

std::string share_words(Share share) { return significant(100.0 * share.value, 3) + " %"; }

/// Parts that are not nothing, after one another.
class Parts {
  public:
    void add(bool is_there, const std::string& words) {
        if (is_there) parts_.push_back(words);
    }
    std::string joined() const { return join(parts_, "; "); }

  private:
    std::vector<std::string> parts_;
};

std::string scale_words(const bench::Scale& scale) {
    Parts parts;
    parts.add(true, "step " + reading_words(scale.resolution));
    parts.add(scale.span_error.value > 0.0, "span ± " + share_words(scale.span_error));
    parts.add(!is_zero(scale.linearity), "each reading ± " + reading_words(scale.linearity));
    parts.add(!is_zero(scale.zero), "zero ± " + reading_words(scale.zero));
    if (scale.tare) parts.add(true, "shows " + reading_words(*scale.tare) + " without a spring");
    return parts.joined();
}

std::string gravity_words(const bench::Scale& scale) {
    if (std::holds_alternative<Force>(scale.resolution)) return "not needed: the scale shows force";
    const bench::Gravity g = bench::gravity_of(scale.adjusted_at);
    const std::string value = fixed(g.value, 4) + " ± " + fixed(g.plus_minus, 4) + " m/s²";
    if (const auto* site = std::get_if<bench::Site>(&scale.adjusted_at)) {
        const double latitude = in_base_unit(site->latitude) * 180.0 / std::numbers::pi;
        return value + ", where the scale was adjusted: latitude " + significant(latitude, 4) + "°, " +
               fixed(in_mm(site->height) / kMmInMetre, 0) + " m above the sea";
    }
    if (std::holds_alternative<bench::StandardGravity>(scale.adjusted_at))
        return "9.80665 m/s², the standard value its maker states";
    return value + ": not known where the scale was adjusted, so pole to equator";
}

std::string gauge_words(const bench::HeightGauge& gauge) {
    Parts parts;
    parts.add(gauge.resolution > 0.0 * mm, "step " + mm_words(gauge.resolution));
    parts.add(gauge.error > 0.0 * mm, "each height ± " + mm_words(gauge.error));
    parts.add(gauge.span_error.value > 0.0, "span ± " + share_words(gauge.span_error));
    parts.add(gauge.zero > 0.0 * mm, "zero ± " + mm_words(gauge.zero));
    return parts.joined();
}

std::string plunger_words(const bench::Indicator& indicator) {
    if (indicator.bearing == bench::Bearing::none) return "its plunger does not touch the pan";
    std::string words =
        indicator.bearing == bench::Bearing::adds ? "its plunger presses the pan" : "its plunger lifts the pan";
    if (const Force* force = std::get_if<Force>(&indicator.plunger))
        words += " by " + significant(in_newton(*force), 3) + " N";
    else if (const auto* line = std::get_if<bench::PlungerLine>(&indicator.plunger))
        words += " by " + significant(in_newton(line->at_zero), 3) + " N + " +
                 significant(in_newton_per_mm(line->per_travel), 3) + " N/mm of travel";
    else
        words += " by a table of " + std::to_string(std::get<bench::PlungerTable>(indicator.plunger).size()) + " rows";
    return words + " ± " + significant(in_newton(indicator.plunger_error), 3) + " N, taken off";
}

std::string indicator_words(const bench::Indicator& indicator) {
    Parts parts;
    parts.add(true, "step " + mm_words(indicator.resolution));
    parts.add(indicator.error > 0.0 * mm, "each reading ± " + mm_words(indicator.error));
    parts.add(indicator.span_error.value > 0.0, "span ± " + share_words(indicator.span_error));
    parts.add(true, plunger_words(indicator));
    return parts.joined();
}

std::string load_path_words(const Readings& session) {
    const auto stiffness = bench::load_path_stiffness(session);
    if (!stiffness) return "taken as rigid";
    const std::string how = session.load_path.stiffness ? "as stated"
                                                        : "by " + std::to_string(session.load_path.block_run.size()) +
                                                              " readings on a rigid block";
    return "gives way 1 mm for " + with_doubt(*stiffness).together() + " N (" + how + "), taken off every height";
}

std::string bracket_words(const bench::Bracket& bracket) {
    return "between " + fixed(in_mm(bracket.above), 2) + " and " + fixed(in_mm(bracket.below), 2) + " mm";
}

/// Where the straight line begins and ends.
std::string stretch_words(const MeasuredSpring& s) {
    const std::string begins = s.contact
                                   ? "the plate bears on the whole spring from " + bracket_words(*s.contact) + " on"
                                   : "contact lies above the first reading";
    const std::string ends =
        s.closing ? "coils begin to close " + bracket_words(*s.closing) : "no closing of coils was reached";
    return begins + "; " + ends + ".";
}

std::string straightness_words(const bench::ChiSquare& chi) {
    if (chi.verdict == bench::Straightness::not_judged) return chi.text;
    return chi.text + (chi.p < kSmallestChance ? " p < 0.0001." : " p = " + significant(chi.p, 2) + ".");
}

std::string hysteresis_words(const std::optional<bench::Hysteresis>& hysteresis) {
    if (!hysteresis) return "not known: no height was read both ways.";
    const bench::Hysteresis& h = *hysteresis;
    return "loading less unloading at " + std::to_string(h.heights) + (h.heights == 1 ? " height" : " heights") +
           ": at most " + signed_fixed(in_newton(h.largest), 3) + " N, at " + fixed(in_mm(h.at), 2) + " mm (" +
           signed_fixed(100.0 * h.of_largest_load.value, 1) + " % of the largest load), on average " +
           signed_fixed(in_newton(h.mean), 3) + " N.";
}

/// What the moduli that were compared with rest on, when that is weak.
std::string moduli_trust(const bench::WireInference& wire) {
    const auto is_weak = [](const bench::GradeMatch& match) {
        return match.evidence == wire::Evidence::memory || match.evidence == wire::Evidence::estimate;
    };
    const bool any = std::any_of(wire.matches.begin(), wire.matches.end(), is_weak);
    return any ? " Moduli of the catalogue: partly memory or estimate." : "";
}

std::string modulus_words(const bench::WireInference& wire) {
    const double gpa = 1e-3;
    const ValueWithDoubt g =
        with_doubt(gpa * in_mpa(wire.shear_modulus.value), gpa * in_mpa(wire.shear_modulus.expanded));
    return "G = 8 " + with_super("D", "3") + " n R/" + with_super("d", "4") + " = " + g.together() + " GPa. ";
}

std::string set_words(const bench::Difference<Length>& set, const std::string& against) {
    const std::string number = with_doubt(set.estimate).together() + " mm against " + against;
    if (!set.significant) return "no loss of free length can be told (" + number + ").";
    return in_mm(set.estimate.value) > 0.0 ? "free length lost: " + number + "."
                                           : "it is longer, not shorter (" + number + ").";
}

std::string wear_words(const bench::Difference<Length>& worn, const std::string& against) {
    const std::string number = with_doubt(worn.estimate).together() + " mm against " + against;
    if (!worn.significant) return "no loss of wire can be told from the rate (" + number + ").";
    return in_mm(worn.estimate.value) > 0.0 ? "wear alone would have to take from the wire: " + number + "."
                                            : "it is stiffer, not softer (" + number + ").";
}

}  // namespace

std::vector<Fact> bench_verdict_facts(const MeasuredSpring& s) {
    std::vector<Fact> facts{{"Straightness", straightness_words(s.chi_square)},
                            {"Hysteresis", hysteresis_words(s.hysteresis)},
                            {"Stretch", stretch_words(s)}};
    if (!s.remarks.empty()) facts.push_back({"Remarks", join(s.remarks, " ")});
    return facts;
}

std::vector<Fact> bench_wire_facts(const bench::WireAnswer& answer, const std::vector<bench::Weakening>& weakenings) {
    std::vector<Fact> facts;
    if (answer.wire)
        facts.push_back({"Wire", modulus_words(*answer.wire) + answer.wire->verdict + moduli_trust(*answer.wire)});
    else if (!answer.missing.empty())
        facts.push_back({"Wire", "not inferred: " + answer.missing + " not stated."});
    for (const bench::Weakening& w : weakenings) {
        if (w.set) facts.push_back({"Set", set_words(*w.set, w.set_against)});
        if (w.worn_wire) facts.push_back({"Wear", wear_words(*w.worn_wire, w.worn_against)});
    }
    return facts;
}

std::vector<Fact> bench_session_facts(const Readings& session) {
    std::vector<Fact> facts;
    if (!session.fixture.empty()) facts.push_back({"Fixture", session.fixture});
    facts.push_back({"Scale", scale_words(session.scale)});
    facts.push_back({"Gravity", gravity_words(session.scale)});
    if (const std::string gauge = gauge_words(session.gauge); !gauge.empty()) facts.push_back({"Heights", gauge});
    if (session.indicator.resolution > 0.0 * mm) facts.push_back({"Indicator", indicator_words(session.indicator)});
    facts.push_back({"Load path", load_path_words(session)});
    return facts;
}

Fact bench_preload_fact(const Readings& session, const bench::SpringRun& run) {
    const std::string temperature = "; at " + significant(session.temperature.value, 4) + " ± " +
                                    significant(session.temperature.plus_minus, 3) + " °C";
    if (run.preload.count == 0) return {"Preloads", "none before the readings" + temperature};
    return {"Preloads", std::to_string(run.preload.count) + (run.preload.count == 1 ? " time to " : " times to ") +
                            (run.preload.height ? fixed(in_mm(*run.preload.height), 2) + " mm" : "solid") +
                            " before the readings" + temperature};
}

Fact bench_trust_fact() {
    return {"Trust",
            "U = k u after the GUM, about 95 % coverage; ν degrees of freedom. Errors of instruments: given, each ± "
            "rectangular. Gravity by latitude: seen (WELMEC), its ±: estimate. Display, u = step/√12: memory."};
}

Fact bench_caution() {
    return {
        "Caution",
        "A spring stores energy: guard eyes and hands. No bench run replaces a trial; a competent person must judge "
        "it before use. Local codes and licensed practice govern."};
}

}  // namespace seatload::sheet
