// SPDX-License-Identifier: MIT
#include <seatload/bench/wire_inference.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include <seatload/bench/budget.hpp>
#include <seatload/bench/measured_coil.hpp>
#include <seatload/spring/temperature.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::bench {

namespace {

// G = 8 D^3 n R / d^4 with D = De - d: dG/G = -(4 + 3 d/D) dd/d + 3 dDe/D + dn/n + dR/R.
Estimate<Stress> shear_modulus_of(const Readings& session, const MeasuredCoil& coil, const MeasuredSpring& spring) {
    const double d = coil.wire_diameter_mm.value, D = coil.mean_diameter_mm(), n = coil.active_coils.value;
    const double R = in_newton_per_mm(spring.rate.value);
    const double G = 8.0 * D * D * D * n * R / (d * d * d * d);
    const auto part = [&](const char* name, double relative) {
        return Contribution<Stress>{name, std::abs(G * relative) * MPa};
    };
    auto of_rate = part("rate", in_newton_per_mm(spring.rate.standard) / R);
    of_rate.degrees_of_freedom = spring.rate.degrees_of_freedom;
    return combine<Stress>(
        G * MPa,
        {part("wire diameter d", (4.0 / d + 3.0 / D) * rectangular(coil.wire_diameter_mm.plus_minus)),
         part("outside diameter De", 3.0 / D * rectangular(coil.outside_diameter_mm.plus_minus)),
         part("active coils n", rectangular(coil.active_coils.plus_minus) / n), of_rate},
        session.coverage_factor);
}

wire::Evidence evidence_of_modulus(const wire::Grade& grade) {
    for (const wire::Provenance& p : grade.provenance)
        if (p.property == "shear modulus") return p.evidence;
    return wire::Evidence::estimate;
}

GradeMatch match_of(const wire::Grade& grade, Length d, double temperature, const Estimate<Stress>& found) {
    GradeMatch m;
    m.grade = grade.id;
    m.shear_modulus = modulus_of(grade, d, temperature);
    m.expanded_away = (found.value - m.shear_modulus) / found.expanded;
    m.consistent = std::abs(m.expanded_away) <= 1.0;
    const wire::DiameterRange range = wire::strength_range(grade);
    m.in_range = d >= range.smallest && d <= range.largest;
    m.evidence = evidence_of_modulus(grade);
    return m;
}

constexpr std::array kWireKinds{
    std::pair{wire::Family::cold_drawn_carbon, "cold-drawn carbon steel"},
    std::pair{wire::Family::oil_tempered, "oil-tempered steel"},
    std::pair{wire::Family::austenitic_stainless, "austenitic stainless steel"},
    std::pair{wire::Family::precipitation_stainless, "precipitation-hardening stainless steel"},
    std::pair{wire::Family::copper_alloy, "copper alloy"},
    std::pair{wire::Family::nickel_alloy, "nickel alloy"}};

// Grades of one kind have much the same modulus: it tells steel from stainless and bronze, seldom grade from grade.
std::string verdict_of(const WireInference& wire, const wire::Catalogue& catalogue) {
    std::vector<std::string> fits, fits_not;
    for (const auto& [family, name] : kWireKinds) {
        bool drawn = false, consistent = false;
        for (const GradeMatch& m : wire.matches) {
            if (!m.in_range || catalogue.find(m.grade)->family != family) continue;
            drawn = true;
            consistent = consistent || m.consistent;
        }
        if (drawn) (consistent ? fits : fits_not).push_back(name);
    }
    if (fits.empty())
        return "No wire of the catalogue fits: look again at d (it counts four times), at the coils counted and at the "
               "ends.";
    std::string text = "It fits " + listed(fits, "or");
    if (!fits_not.empty()) text += ", and does not fit " + listed(fits_not, "or");
    return text + ". The modulus tells the kind of wire, seldom its grade: those of the catalogue are for reference.";
}

}  // namespace

Stress modulus_of(const wire::Grade& grade, Length wire_diameter, double temperature) {
    return wire::moduli_at(grade, wire_diameter).shear *
           spring::modulus_share(grade.shear_modulus_loss_per_kelvin, temperature);
}

WireAnswer infer_wire(const Readings& session, const SpringRun& run, const MeasuredSpring& spring,
                      const wire::Catalogue& catalogue) {
    const CoilAnswer coil = measured_coil(run.dimensions);
    if (!coil.coil) return {std::nullopt, coil.missing};
    WireInference result;
    result.shear_modulus = shear_modulus_of(session, *coil.coil, spring);
    const Length d = coil.coil->wire_diameter_mm.value * mm;
    for (const wire::Grade& grade : catalogue.grades)
        result.matches.push_back(match_of(grade, d, session.temperature.value, result.shear_modulus));
    std::stable_sort(result.matches.begin(), result.matches.end(), [](const GradeMatch& a, const GradeMatch& b) {
        if (a.in_range != b.in_range) return a.in_range;
        return std::abs(a.expanded_away) < std::abs(b.expanded_away);
    });
    result.any_consistent = std::any_of(result.matches.begin(), result.matches.end(),
                                        [](const GradeMatch& m) { return m.consistent && m.in_range; });
    result.verdict = verdict_of(result, catalogue);
    return {std::move(result), {}};
}

}  // namespace seatload::bench
