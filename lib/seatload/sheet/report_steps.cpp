// SPDX-License-Identifier: MIT
#include <seatload/sheet/report_steps.hpp>

#include <numbers>

#include <seatload/spring/stress.hpp>

namespace seatload::sheet {
namespace {

constexpr const char* kCoilSource = "EN 13906-1 cl. 9.8; Shigley Table 10-1";

const char* active_coils_formula(spring::Ends ends) {
    if (spring::are_closed(ends)) return "{n_t} - 2";
    return ends == spring::Ends::open_ground ? "{n_t} - 1" : "{n_t}";
}

const char* pitch_formula(spring::Ends ends) {
    switch (ends) {
        case spring::Ends::open:
            return "({L_0} - {d})/{n}";
        case spring::Ends::open_ground:
            return "{L_0}/({n} + 1)";
        case spring::Ends::closed:
            return "({L_0} - 3*{d})/{n}";
        case spring::Ends::closed_ground:
            return "({L_0} - 2*{d})/{n}";
    }
    return "";
}

/// Largest solid length by EN 13906-1, or the textbook's, which leaves the wire's tolerance out.
std::string solid_formula(const ReportSubject& s) {
    const bool en = s.demand.limits.solid_form == demand::SolidForm::en;
    const std::string wire = en ? "({d} + {T_d})" : "{d}";
    switch (s.spec.spring.ends) {
        case spring::Ends::closed:
            return (en ? "({n_t} + 1.5)*" : "({n_t} + 1)*") + wire;
        case spring::Ends::open:
            return "({n_t} + 1)*" + wire;
        default:
            return "{n_t}*" + wire;
    }
}

}  // namespace

void add_shape(Calculation& c, const ReportSubject& s) {
    const check::Evaluation& e = s.values;
    const spring::Spring& spring = s.spec.spring;
    c.heading("Shape");
    c.step("D_e", "outside diameter", "{D} + {d}", in_mm(spring.outside_diameter()), "mm", "geometry", Trust::derived);
    c.step("D_i", "inside diameter", "{D} - {d}", in_mm(spring.inside_diameter()), "mm", "geometry", Trust::derived);
    c.step("w", "spring index", "{D}/{d}", e.index, "", "EN 13906-1; Shigley Eq. 10-1", Trust::seen);
    c.step("n", "active coils", active_coils_formula(spring.ends), e.active_coils, "", kCoilSource,
           spring.ends == spring::Ends::open_ground ? Trust::seen : Trust::memory);
    c.step("m", "free pitch", pitch_formula(spring.ends), in_mm(e.pitch), "mm", "Shigley Table 10-1", Trust::memory);
    c.step("alpha", "helix angle", "atan({m}/(pi*{D}))*180/pi", e.helix_angle.value() * 180.0 / std::numbers::pi, "°",
           "geometry", Trust::derived);
    c.step("L_w", "length of wire, grinding not deducted",
           "{n}*sqrt((pi*{D})^2 + {m}^2) + ({n_t} - {n})*sqrt((pi*{D})^2 + {d}^2)", in_mm(e.wire_length), "mm",
           "geometry", Trust::derived);
    c.step("M", "mass of the spring", "pi/4*{d}^2*{L_w}*{rho}/10^6", in_gram(e.mass), "g", "geometry; mm, kg/m³ and g",
           Trust::derived);
    c.step("lambda", "slenderness", "{L_0}/{D}", spring.free_length / spring.mean_diameter, "", "EN 13906-1 cl. 9.14",
           Trust::derived);
}

void add_stiffness(Calculation& c, const ReportSubject& s) {
    const check::Evaluation& e = s.values;
    c.heading("Stiffness");
    c.step("k", "stress correction factor, Bergsträsser", "({w} + 0.5)/({w} - 0.75)", e.stress_factor, "",
           "EN 13906-1 cl. 7; the same as Shigley Eq. 10-5", Trust::seen);
    c.step("K_W", "stress correction factor, Wahl", "(4*{w} - 1)/(4*{w} - 4) + 0.615/{w}", spring::wahl_factor(e.index),
           "", "Shigley Eq. 10-4", Trust::seen);
    c.step("R", "spring rate at 20 °C", "{G}*{d}^4/(8*{D}^3*{n})", in_newton_per_mm(e.rate), "N/mm",
           "EN 13906-1 cl. 9.4; Shigley Eq. 10-9", Trust::seen);
    c.step("h", "share of G left hot", "1 - {r}*({t} - 20)", s.wire.hot_share, "", "EN 13906-1 cl. 8", Trust::memory);
    c.step("G_t", "shear modulus hot", "{h}*{G}", s.wire.hot_share * s.wire.shear_modulus_mpa, "MPa",
           "EN 13906-1 cl. 8", Trust::memory);
    c.step("R_t", "spring rate hot", "{h}*{R}", in_newton_per_mm(e.rate_hot), "N/mm", "R is proportional to G",
           Trust::derived);
    c.step("q", "share of a cold, new load left in service", "{h}*(1 - {p})", s.kept_share(), "",
           "hot modulus and load loss together", Trust::derived);
}

void add_lengths_and_loads(Calculation& c, const ReportSubject& s) {
    const check::Evaluation& e = s.values;
    const bool en_form = s.demand.limits.solid_form == demand::SolidForm::en;
    c.heading("Lengths and loads");
    c.step("L_c", en_form ? "largest solid length, with the largest wire" : "solid length", solid_formula(s),
           in_mm(e.solid_length), "mm", en_form ? "EN 13906-1 cl. 9.10" : "Shigley Table 10-1",
           en_form || spring::are_ground(s.spec.spring.ends) ? Trust::memory : Trust::seen);
    c.step("S_a", s.demand.dynamic ? "least sum of gaps, dynamic" : "least sum of gaps, static",
           s.demand.dynamic ? "1.5*{n}*(0.0015*{D}^2/{d} + 0.1*{d})" : "{n}*(0.0015*{D}^2/{d} + 0.1*{d})",
           in_mm(e.smallest_gaps), "mm", "EN 13906-1 cl. 9.9", Trust::memory);
    if (s.demand.limits.gap_rule == demand::GapRule::en_sa) {
        c.step("L_n", "smallest permissible length", "{L_c} + {S_a}", s.smallest_length_mm(), "mm",
               "EN 13906-1 cl. 9.9", Trust::memory);
    } else {
        c.given("a_g", "room above solid asked for, share of travel", s.demand.limits.gap_share, "",
                "[limits] gap_share; Shigley Eq. 10-20", Trust::given);
        c.step("L_n", "smallest permissible length", "{L_c} + {a_g}*({L_0} - {L_2})", s.smallest_length_mm(), "mm",
               "Shigley Eq. 10-20", Trust::memory);
    }
    const double L0 = in_mm(s.spec.spring.free_length);
    const auto at = [&](const std::string& index, const std::string& where, double length_mm, bool in_service) {
        const double load = in_newton_per_mm(e.rate) * (L0 - length_mm);
        c.step("s_" + index, "deflection " + where, "{L_0} - {L_" + index + "}", L0 - length_mm, "mm", "geometry",
               Trust::derived);
        c.step("F_" + index, "load " + where + ", cold and new", "{R}*{s_" + index + "}", load, "N",
               "EN 13906-1 cl. 9.2", Trust::derived);
        if (in_service)
            c.step("F_" + index + "t", "load " + where + ", in service", "{q}*{F_" + index + "}", s.kept_share() * load,
                   "N", "hot, and after load loss", Trust::derived);
    };
    at("1", "seated", in_mm(s.seated().length), true);
    at("2", "at full travel", in_mm(s.full_travel().length), true);
    at("n", "at the smallest permissible length", s.smallest_length_mm(), false);
    at("c", "at solid length, theoretical", in_mm(e.solid_length), false);
    c.step("W_2", "energy stored at full travel", "{R}*{s_2}^2/2",
           0.5 * in_newton(s.full_travel().load) * in_mm(s.full_travel().deflection), "N mm", "EN 13906-1 cl. 9.1",
           Trust::derived);
}

std::vector<StepGroup> report_steps(const ReportSubject& subject) {
    Calculation c;
    for (const auto add : {add_inputs, add_shape, add_stiffness, add_lengths_and_loads, add_strength, add_room,
                           add_stability, add_motion, add_tolerances, add_made})
        add(c, subject);
    return c.take();
}

}  // namespace seatload::sheet
