// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>

#include <seatload/sheet/report_steps.hpp>
#include <seatload/spring/lateral.hpp>
#include <seatload/spring/lean.hpp>

namespace seatload::sheet {
namespace {

void add_growth(Calculation& c, const ReportSubject& s) {
    const bool ends_free = s.demand.limits.growth_form == demand::GrowthForm::ends_free;
    const Length growth = ends_free ? s.values.growth_ends_free : s.values.growth_ends_held;
    const char* source = ends_free ? "EN 13906-1 cl. 9.11, ends free to turn" : "wire length of a coil conserved";
    if (s.values.pitch <= s.spec.spring.wire_diameter) {
        c.given("delta_De", "widening of De when pressed solid", 0.0, "mm", "pitch under d: none counted",
                Trust::derived);
        return;
    }
    c.step("delta_De", "widening of De when pressed solid",
           ends_free ? "0.1*({m}^2 - 0.8*{m}*{d} - 0.2*{d}^2)/{D}" : "sqrt({D}^2 + ({m}^2 - {d}^2)/pi^2) - {D}",
           in_mm(growth), "mm", source, ends_free ? Trust::memory : Trust::derived);
}

/// The limits' grade may differ from the one that is ordered; clearances count with the limits'.
std::string diameter_grade(const ReportSubject& s) {
    return "EN 15800 grade " + std::to_string(s.demand.limits.diameter_grade) + ", for D and w";
}

}  // namespace

void add_room(Calculation& c, const ReportSubject& s) {
    c.heading("Room");
    c.given("T_D", "tolerance of De or Di, plus-minus", s.coil_tolerance_mm, "mm", diameter_grade(s),
            s.coil_tolerance_trust);
    add_growth(c, s);
    if (const check::Verdict* bore = s.verdict("bore_clearance")) {
        c.step("D_e,max", "largest outside diameter, compressed", "{D_e} + {T_D} + {delta_De}", bore->measure.value,
               "mm", "sum of the three", Trust::derived);
        c.step("C_h", "play left in the smallest bore", "{D_h,min} - {D_e,max}",
               *s.demand.bore_smallest_mm - bore->measure.value, "mm", "geometry", Trust::derived);
    }
    if (const check::Verdict* rod = s.verdict("rod_clearance")) {
        c.step("D_i,min", "smallest inside diameter", "{D_i} - {T_D}", rod->measure.value, "mm",
               "difference of the two", Trust::derived);
        c.step("C_d", "play left over the largest rod", "{D_i,min} - {D_d,max}",
               rod->measure.value - *s.demand.rod_largest_mm, "mm", "geometry", Trust::derived);
    }
}

namespace {

void add_sideways_at(Calculation& c, const ReportSubject& s, const std::string& i, const check::AtLength& at) {
    const double L0 = in_mm(s.spec.spring.free_length), D = in_mm(s.spec.spring.mean_diameter);
    const double s_Q = in_mm(s.values.sideways->play);
    const double moduli = s.wire.shear_modulus_mpa / s.wire.young_modulus_mpa;
    const double xi = in_mm(at.deflection) / L0;
    const double ratio = spring::transverse_rate_ratio(L0 / D, xi, moduli);
    const char* source = "EN 13906-1 cl. 9.13";
    if (!(ratio > 0.0)) {
        c.said("sideways stiffness at L" + i, "none: the spring pushes itself sideways there", source, Trust::memory);
        return;
    }
    const double a = std::sqrt((0.5 + moduli) * (moduli + (1.0 - xi) / xi));
    const double rate = ratio * in_newton_per_mm(s.values.rate);
    c.step("xi_" + i, "compression at L" + i, "{s_" + i + "}/{L_0}", xi, "", source, Trust::derived);
    c.step("A_" + i, "auxiliary", "sqrt((0.5 + {G}/{E})*({G}/{E} + (1 - {xi_" + i + "})/{xi_" + i + "}))", a, "",
           source, Trust::memory);
    c.step("R_Q" + i, "transverse rate at L" + i,
           "{R}*{xi_" + i + "}/({xi_" + i + "} - 1 + {A_" + i + "}*tan({lambda}*{xi_" + i + "}*{A_" + i +
               "})/({lambda}*(0.5 + {G}/{E})))",
           rate, "N/mm", "EN 13906-1 cl. 9.13; angle in radians", Trust::memory);
    c.step("F_Q" + i, "side force with the play taken up", "{R_Q" + i + "}*{s_Q}", rate * s_Q, "N", source,
           Trust::memory);
    if (s_Q < D)
        c.step("U_" + i, "moment that rocks the ends over the one that seats them",
               "{F_Q" + i + "}*{L_" + i + "}/({F_" + i + "}*({D} - {s_Q}))",
               spring::seating_use(in_newton(at.load), rate * s_Q, D, s_Q, in_mm(at.length)), "", source,
               Trust::memory);
}

void add_sideways(Calculation& c, const ReportSubject& s) {
    if (!s.values.sideways) return;
    if (!s.demand.sideways_play_mm) {
        if (s.demand.bore_largest_mm)
            c.step("s_Q", "sideways play: the spring's own in the largest bore", "max(0, {D_h,max} - {D_e})",
                   in_mm(s.values.sideways->play), "mm", "geometry", Trust::derived);
        else
            c.given("s_Q", "sideways play", 0.0, "mm", "none stated, and no bore", Trust::given);
    }
    add_sideways_at(c, s, "1", s.seated());
    add_sideways_at(c, s, "2", s.full_travel());
    if (s.values.sideways->stiffness)
        c.step("tau_Q", "stress at full travel with the play taken up, uncorrected",
               "8/(pi*{d}^3)*({F_2}*({D} + {s_Q}) + {F_Q2}*({L_2} - {d}))", in_mpa(s.values.sideways->combined_stress),
               "MPa", "EN 13906-1 cl. 9.13", Trust::memory);
}

/// The lean of a spring whose far seat slides, line by line.
void add_lean(Calculation& c, const ReportSubject& s) {
    const check::Verdict* lean = s.verdict("lean");
    if (lean == nullptr) return;
    const char* source = "beam-column with askew ends; finite elements, own study";
    const char* name = "sideways lean at full travel, at most";
    if (lean->measure.value == 0.0) return c.said(name, "none: the spring is not pressed", source, Trust::derived);
    if (!std::isfinite(lean->measure.value))
        return c.said(name, "no bound: the active coils alone are pushed away there", source, Trust::derived);
    const double n = s.values.active_coils, moduli = s.wire.shear_modulus_mpa / s.wire.young_modulus_mpa;
    const double L = n * in_mm(s.values.pitch), D = in_mm(s.spec.spring.mean_diameter);
    const double xi = in_mm(s.full_travel().deflection) / L;
    const double phase = spring::bending_phase(L / D, xi, moduli);
    const double exact = std::abs(std::cos(std::numbers::pi * n));
    c.step("L_a", "free length of the active coils", "{n}*{m}", L, "mm", "geometry", Trust::derived);
    c.step("xi_a", "their compression at full travel", "{s_2}/{L_a}", xi, "", "geometry", Trust::derived);
    c.step("x_a", "phase of their bending wave, halfway",
           "{L_a}/{D}*sqrt((0.5 + {G}/{E})*{xi_a}*(1 - {xi_a}*(1 - {G}/{E})))", phase, "", source, Trust::derived);
    c.step("c_n", "share of the end coils' tilt that does not cancel", "1/sqrt(1 + tan(pi*{n})*tan(pi*{n}))",
           exact < 1e-12 ? 0.0 : exact, "", "geometry", Trust::derived);
    c.step("h_x", "what is left with half a turn over, times 4 n",
           "max(1.06 - {x_a}*{x_a}/3, {x_a}*{x_a}*(0.66 + 0.6*{xi_a}) - 0.93)", spring::rest_of_phase(phase, xi), "",
           source, Trust::fit);
    c.step("e_s", name, "{D}*{x_a}*tan({x_a})/(pi*{n}*(0.5 + {G}/{E}))*({c_n} + {h_x}*sqrt(1 - {c_n}*{c_n})/(4*{n}))",
           lean->measure.value, "mm", std::string(source) + "; angle in radians", Trust::fit);
}

}  // namespace

void add_stability(Calculation& c, const ReportSubject& s) {
    c.heading("Stability");
    c.step("lambda_k", "slenderness up to which it never buckles", "pi*sqrt((1 - {G}/{E})/(0.5 + {G}/{E}))/{nu}",
           s.values.stable_slenderness, "", "EN 13906-1 cl. 9.14; Shigley Eq. 10-12", Trust::memory);
    if (s.values.buckling_deflection) {
        const double deflection = in_mm(*s.values.buckling_deflection);
        c.step("s_k", "buckling deflection",
               "{L_0}*0.5/(1 - {G}/{E})*(1 - sqrt(1 - (1 - {G}/{E})/(0.5 + {G}/{E})*(pi/({nu}*{lambda}))^2))",
               deflection, "mm", "EN 13906-1 cl. 9.14; the same as Shigley Eq. 10-10", Trust::memory);
        c.step("S_k", "buckling deflection over working deflection", "{s_k}/{s_2}",
               deflection / in_mm(s.full_travel().deflection), "", "EN 13906-1 cl. 9.14", Trust::memory);
    } else {
        c.said("buckling", "λ is not above λ" + symbol_of_key("_k") + ": it never buckles", "EN 13906-1 cl. 9.14",
               Trust::memory);
    }
    add_sideways(c, s);
    add_lean(c, s);
}

}  // namespace seatload::sheet
