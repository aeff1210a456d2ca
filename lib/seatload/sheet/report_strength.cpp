// SPDX-License-Identifier: MIT
#include <seatload/sheet/report_steps.hpp>
#include <seatload/spring/fatigue.hpp>
#include <seatload/spring/stress.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::sheet {
namespace {

constexpr const char* kStressSource = "EN 13906-1 cl. 9.5; Shigley Eq. 10-2";

double stress_mpa(const ReportSubject& s, double length_mm) {
    const spring::Spring& spring = s.spec.spring;
    const Force load = s.values.rate * (spring.free_length - length_mm * mm);
    return in_mpa(spring::stress(load, spring.wire_diameter, spring.mean_diameter));
}

/// The formula of the stress that is judged, by the length and the factor the limits choose.
std::string judged_formula(const demand::Limits& limits) {
    const std::string factor = limits.stress_factor == demand::StressFactor::none            ? ""
                               : limits.stress_factor == demand::StressFactor::bergstraesser ? "{k}*"
                                                                                             : "{K_W}*";
    switch (limits.stress_length) {
        case demand::StressLength::solid:
            return factor + "{tau_c}";
        case demand::StressLength::smallest_permissible:
            return factor + "8*{D}*{R}*({L_0} - {L_c} - {S_a})/(pi*{d}^3)";
        case demand::StressLength::full_travel:
            return factor + "{tau_2}";
    }
    return {};
}

std::string judged_name(const demand::Limits& limits) {
    switch (limits.stress_length) {
        case demand::StressLength::solid:
            return "static stress judged: at solid length";
        case demand::StressLength::smallest_permissible:
            return "static stress judged: at solid length and gaps";
        case demand::StressLength::full_travel:
            return "static stress judged: at full travel";
    }
    return {};
}

void add_permissible(Calculation& c, const ReportSubject& s) {
    const demand::Limits& limits = s.demand.limits;
    if (limits.stress_share) {
        // 0.56 is the school's own; any other value was set by the one who requires it.
        const bool usual = limits.school == spring::School::en_13906 && *limits.stress_share == 0.56;
        c.given("a_t", "share of Rm permitted", *limits.stress_share, "",
                usual ? "EN 13906-1 cl. 6.2 and 10, cold coiled, at solid length" : "[limits] stress_share",
                usual ? Trust::memory : Trust::given);
    } else {
        const wire::TorsionalYield yield = wire::torsional_yield(s.grade.family);
        c.given("a_t", "share of Rm at torsional yield", yield.share.value, "", "Shigley Table 10-6, the wire's family",
                trust(yield.evidence));
    }
    c.given("S_t", "safety asked of it", limits.stress_safety, "",
            limits.school == spring::School::handbook ? "[limits] stress_safety; Shigley Eq. 10-21"
                                                      : "[limits] stress_safety",
            limits.stress_safety == 1.2 ? Trust::memory : Trust::given);
    c.step("tau_zul", "permissible static stress", "{a_t}*{R_m}/{S_t}", s.wire.permissible_stress_mpa, "MPa",
           limits.school == spring::School::handbook ? "Shigley Eq. 10-21" : "EN 13906-1 cl. 10", Trust::memory);
}

}  // namespace

void add_strength(Calculation& c, const ReportSubject& s) {
    c.heading("Static strength");
    const auto stress = [&](const std::string& index, const std::string& where, double length_mm) {
        c.step("tau_" + index, "stress " + where + ", uncorrected", "8*{D}*{F_" + index + "}/(pi*{d}^3)",
               stress_mpa(s, length_mm), "MPa", kStressSource, Trust::seen);
    };
    stress("1", "seated", in_mm(s.seated().length));
    stress("2", "at full travel", in_mm(s.full_travel().length));
    stress("n", "at Ln", s.smallest_length_mm());
    stress("c", "at solid length", in_mm(s.values.solid_length));
    c.step("tau_k1", "stress seated, corrected", "{k}*{tau_1}", in_mpa(s.seated().corrected_stress), "MPa",
           "EN 13906-1 cl. 9.5", Trust::memory);
    c.step("tau_k2", "stress at full travel, corrected", "{k}*{tau_2}", in_mpa(s.full_travel().corrected_stress), "MPa",
           "EN 13906-1 cl. 9.5", Trust::memory);
    c.step("u_c", "share of Rm at solid length", "{tau_c}/{R_m}", s.values.at_solid.share_of_strength, "",
           "for comparison", Trust::derived);
    add_permissible(c, s);
    if (const check::Verdict* judged = s.verdict("stress"))
        c.step("tau_j", judged_name(s.demand.limits), judged_formula(s.demand.limits), judged->measure.value, "MPa",
               s.demand.limits.school == spring::School::handbook
                   ? "Shigley ch. 10: curvature factor in the static check"
                   : "EN 13906-1 cl. 6.2: uncorrected",
               Trust::memory);
}

namespace {

/// The equation of the endurance line that the limits choose, and the fatigue factor along it.
void add_fatigue_line(Calculation& c, const ReportSubject& s, double factor) {
    const spring::EnduranceStress<double>& point = s.demand.endurance_mpa;
    const double strength = spring::kShearStrengthShare * s.wire.tensile_strength_mpa;
    const char* name = "fatigue factor";
    switch (s.demand.limits.fatigue_line) {
        case demand::FatigueLine::goodman:
            c.step("S_se", "amplitude of a reversed load that lasts, Goodman", "{S_sa}/(1 - {S_sm}/{S_su})",
                   spring::goodman_endurance(point, strength), "MPa", "Shigley ch. 10, Goodman line", Trust::memory);
            c.step("n_f", name, "1/({tau_a}/{S_se} + {tau_m}/{S_su})", factor, "", "Shigley ch. 6 and 10",
                   Trust::memory);
            return;
        case demand::FatigueLine::gerber:
            c.step("S_se", "amplitude of a reversed load that lasts, Gerber", "{S_sa}/(1 - ({S_sm}/{S_su})^2)",
                   spring::gerber_endurance(point, strength), "MPa", "Shigley ch. 10, Gerber parabola", Trust::memory);
            c.step("n_f", name,
                   "({tau_a}/{tau_m})^2*{S_su}^2/(2*{S_se})*(sqrt(1 + (2*{S_se}*{tau_m}/({tau_a}*{S_su}))^2) - "
                   "1)/{tau_a}",
                   factor, "", "Shigley Table 6-7 and ch. 10", Trust::memory);
            return;
        case demand::FatigueLine::sines:
            c.step("n_f", name, "{S_sa}/{tau_a}", factor, "", "Sines; Shigley ch. 10", Trust::memory);
    }
}

void add_fatigue(Calculation& c, const ReportSubject& s) {
    const check::Verdict* fatigue = s.verdict("fatigue");
    if (fatigue == nullptr) return;
    if (!s.has_fatigue()) {
        c.said("fatigue", "no endurance values hold for this wire: it is refused", "Zimmerli: steel wire below 10 mm",
               Trust::memory);
        return;
    }
    const double low = in_mpa(s.seated().corrected_stress);
    const double high = in_mpa(s.full_travel().corrected_stress);
    c.step("tau_a", "stress amplitude", "({tau_k2} - {tau_k1})/2", 0.5 * (high - low), "MPa", "Shigley ch. 10",
           Trust::seen);
    c.step("tau_m", "mean stress", "({tau_k2} + {tau_k1})/2", 0.5 * (high + low), "MPa", "Shigley ch. 10", Trust::seen);
    const std::string source = s.spec.duty.peened ? "Zimmerli, peened: 57.5 and 77.5 kpsi; Shigley Eq. 10-29"
                                                  : "Zimmerli, not peened: 35 and 55 kpsi; Shigley Eq. 10-28";
    c.given("S_sa", "endurance point, amplitude", s.demand.endurance_mpa.amplitude, "MPa", source, Trust::seen);
    c.given("S_sm", "endurance point, mean", s.demand.endurance_mpa.mean, "MPa", source, Trust::seen);
    c.step("S_su", "strength in shear", "0.67*{R_m}", spring::kShearStrengthShare * s.wire.tensile_strength_mpa, "MPa",
           "Shigley Eq. 10-30", Trust::seen);
    add_fatigue_line(c, s, fatigue->measure.value);
}

}  // namespace

void add_motion(Calculation& c, const ReportSubject& s) {
    c.heading("Motion and fatigue");
    const double natural = in_hertz(s.values.natural_frequency);
    c.step("f_e", "natural frequency, both ends seated", "{d}/(2*pi*{n}*{D}^2)*sqrt(10^12*{G}/(2*{rho}))", natural,
           "Hz", "EN 13906-1 cl. 9.12; mm, MPa, kg/m³", Trust::memory);
    if (s.demand.frequency_hz)
        c.step("x_f", "natural frequency over that of the motion", "{f_e}/{f}", natural / *s.demand.frequency_hz, "",
               "Shigley ch. 10", Trust::memory);
    add_fatigue(c, s);
}

}  // namespace seatload::sheet
