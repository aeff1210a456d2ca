// SPDX-License-Identifier: MIT
#include <seatload/sheet/report_steps.hpp>
#include <seatload/wire/strength.hpp>
#include <seatload/wire/unknown_tolerance.hpp>

namespace seatload::sheet {
namespace {

std::string seats_in_words(demand::Seats seats) {
    switch (seats) {
        case demand::Seats::fixed:
            return "both ends flat and parallel, on the axis";
        case demand::Seats::pivots:
            return "one end flat, the other tilts";
        case demand::Seats::both_pivot:
            return "both ends tilt";
        case demand::Seats::slides:
            return "flat and parallel, one slides sideways";
        case demand::Seats::free_end:
            return "one end flat, the other free";
        case demand::Seats::guided:
            return "guided all along: no buckling";
    }
    return {};
}

/// Where a property of the grade comes from; a user's own wire says nothing, and stands for itself.
wire::Provenance provenance(const wire::Grade& grade, std::string_view property, std::string_view other = {}) {
    for (const wire::Provenance& p : grade.provenance)
        if (p.property == property || (!other.empty() && p.property == other)) return p;
    return {std::string(property), "own wire, as its owner states it", wire::Evidence::given};
}

void add_space(Calculation& c, const ReportSubject& s) {
    const check::DemandNumbers& d = s.demand;
    const auto given = [&](const char* key, const char* name, const std::optional<double>& value, const char* unit,
                           const char* where) {
        if (value) c.given(key, name, *value, unit, std::string("requirement, ") + where, Trust::given);
    };
    given("D_h,min", "smallest bore", d.bore_smallest_mm, "mm", "[space] bore");
    given("D_h,max", "largest bore", d.bore_largest_mm, "mm", "[space] bore");
    given("D_d,max", "largest rod", d.rod_largest_mm, "mm", "[space] rod");
    given("L_1", "seated height", d.seated_height_mm, "mm", "[space] seated_height");
    given("L_2", "full-travel height", d.full_travel_height_mm, "mm", "[space] full_travel_height");
    given("L_0,min", "free length, at least", d.shortest_mm, "mm", "[space] free_length");
    given("L_0,max", "free length, at most", d.longest_mm, "mm", "[space] free_length");
    given("F_1,min", "seated load needed, hot and after load loss", d.seated_at_least_n, "N", "[load] seated");
    given("F_1,max", "seated load allowed, cold and new", d.seated_at_most_n, "N", "[load] seated");
    given("F_2,min", "full-travel load needed, hot and after load loss", d.full_at_least_n, "N", "[load] full_travel");
    given("F_2,max", "full-travel load allowed, cold and new", d.full_at_most_n, "N", "[load] full_travel");
    given("t", "hottest in service", d.temperature_c, "°C", "[surroundings] temperature");
    c.said("how the ends are held", seats_in_words(s.spec.space.seats), "requirement, [space] seats", Trust::given);
    if (d.limits.seating_coefficient)
        given("nu", "seating coefficient", d.seating_coefficient, "", "[limits] seating_coefficient");
    else
        c.given("nu", "seating coefficient", d.seating_coefficient, "", "EN 13906-1 cl. 9.14, pairing of the seats",
                Trust::memory);
    given("s_Q", "sideways play of the plate", d.sideways_play_mm, "mm", "[space] sideways_play");
}

void add_duty(Calculation& c, const ReportSubject& s) {
    const demand::Duty& duty = s.spec.duty;
    if (duty.cycles) {
        c.given("N", "cycles in all its life", *duty.cycles, "", "requirement, [duty] cycles", Trust::given);
        c.said("duty", duty.is_dynamic() ? "dynamic: 10 000 cycles or more" : "static: under 10 000 cycles",
               "EN 13906-1 cl. 6.2", Trust::memory);
        if (duty.is_dynamic())
            c.said("shot-peened", duty.peened ? "yes" : "no", "requirement, [duty] peened", Trust::given);
    } else {
        c.said("duty", "static: no number of cycles stated", "requirement, [duty]", Trust::given);
    }
    if (duty.frequency)
        c.given("f", "frequency of the motion", in_hertz(*duty.frequency), "Hz", "requirement, [duty] frequency",
                Trust::given);
}

/// A bound of the limits, when the rule that asks for it is in play.
void add_bound(Calculation& c, const ReportSubject& s, const char* rule, const char* key, const char* name,
               double value, double usual_value, const char* unit, const std::string& where) {
    if (s.verdict(rule) == nullptr) return;
    c.given(key, name, value, unit, (value == usual_value ? "default, [limits] " : "requirement, [limits] ") + where,
            Trust::given);
}

/// The bounds of the limits in play, as stated or as the school sets them.
void add_limits_asked(Calculation& c, const ReportSubject& s) {
    const demand::Limits& asked = s.demand.limits;
    const demand::Limits usual = demand::school_defaults(asked.school);
    c.said("limits", "school " + std::string(spring::word(asked.school)), "requirement, [limits] school", Trust::given);
    const auto bound = [&](const char* rule, const char* key, const char* name, double value, double usual_value,
                           const char* unit,
                           const char* where) { add_bound(c, s, rule, key, name, value, usual_value, unit, where); };
    bound("bore_clearance", "c_h", "play asked for in the bore", in_mm(asked.bore_clearance),
          in_mm(usual.bore_clearance), "mm", "bore_clearance");
    bound("rod_clearance", "c_d", "play asked for over the rod", in_mm(asked.rod_clearance), in_mm(usual.rod_clearance),
          "mm", "rod_clearance");
    bound("index_smallest", "w_min", "index, at least", asked.smallest_index, usual.smallest_index, "",
          "smallest_index");
    bound("index_largest", "w_max", "index, at most", asked.largest_index, usual.largest_index, "", "largest_index");
    bound("coils_fewest", "n_min", "active coils, at least", asked.fewest_active_coils, usual.fewest_active_coils, "",
          "fewest_active_coils");
    bound("coils_most", "n_max", "active coils, at most", asked.most_active_coils, usual.most_active_coils, "",
          "most_active_coils");
    bound("half_turn", "e_n", "distance of n from a half turn over, at most", asked.half_turn_slack,
          usual.half_turn_slack, "", "half_turn_slack");
    if (!s.demand.bore_smallest_mm && !s.demand.rod_largest_mm)
        bound("lean", "a_e", "sideways lean, share of D, at most", asked.lean_share, usual.lean_share, "",
              "lean_share");
    bound("buckling", "S_k,min", "buckling over working deflection, at least", asked.buckling_margin,
          usual.buckling_margin, "", "buckling_margin");
    bound("surge", "x_f,min", "natural frequency over that of the motion, at least", asked.smallest_surge_ratio,
          usual.smallest_surge_ratio, "", "smallest_surge_ratio");
    bound("fatigue", "n_f,min", "fatigue factor, at least", asked.fatigue_factor, usual.fatigue_factor, "",
          "fatigue_factor");
    if (asked.largest_mass)
        bound("mass", "M_max", "mass, at most", in_gram(*asked.largest_mass), -1.0, "g", "largest_mass");
}

/// The share of load lost: stated, none at room temperature, or guidance.
void add_load_loss(Calculation& c, const ReportSubject& s) {
    const char* name = "share of load lost in service (relaxation)";
    const double loss = s.values.load_loss;
    if (s.demand.limits.load_loss)
        c.given("p", name, loss, "", "requirement, [limits] load_loss", Trust::given);
    else if (s.demand.temperature_c <= 20.0)
        c.given("p", name, loss, "", "none counted at 20 °C and below", Trust::estimate);
    else
        c.given("p", name, loss, "",
                "guidance for " + (s.grade.load_loss ? s.grade.load_loss->material : s.grade.id) +
                    ", straight between its points",
                s.grade.load_loss ? trust(s.grade.load_loss->evidence) : Trust::estimate);
}

void add_wire(Calculation& c, const ReportSubject& s) {
    c.heading("The wire");
    const auto property = [&](const char* key, const char* name, double value, const char* unit,
                              const wire::Provenance& p) {
        c.given(key, name, value, unit, p.source, trust(p.evidence));
    };
    const wire::Grade& g = s.grade;
    c.said("grade", g.id, g.standard + ", " + g.designation, Trust::given);
    c.given("d", "wire diameter", s.wire.d_mm, "mm", "chosen; spec, [spring] wire_diameter", Trust::given);
    if (!s.knows_wire_tolerance())
        c.given("T_d", "tolerance of d, plus-minus", s.wire.d_tolerance_mm, "mm",
                wire::unknown_tolerance_words(wire::Flattered::solid_length_and_shares), Trust::estimate);
    else
        c.given("T_d", "tolerance of d, plus-minus", s.wire.d_tolerance_mm, "mm", "EN 10218-2 or the grade's standard",
                s.wire_tolerance_trust);
    wire::Provenance tensile = provenance(g, "tensile strength");
    tensile.evidence =
        s.values.strength.evidence == wire::Evidence::given ? tensile.evidence : s.values.strength.evidence;
    property("R_m", "least tensile strength at d", s.wire.tensile_strength_mpa, "MPa", tensile);
    property("G", "shear modulus at 20 °C", s.wire.shear_modulus_mpa, "MPa", provenance(g, "shear modulus", "moduli"));
    property("E", "Young's modulus at 20 °C", s.wire.young_modulus_mpa, "MPa",
             provenance(g, "Young's modulus", "moduli"));
    property("rho", "density", in_kg_per_m3(g.density), "kg/m³", provenance(g, "density"));
    property("r", "loss of G a kelvin", g.shear_modulus_loss_per_kelvin, "1/K", provenance(g, "shear modulus loss"));
    property("t_max", "service limit of the grade", s.wire.service_limit_c, "°C", provenance(g, "service limit"));
    add_load_loss(c, s);
}

}  // namespace

void add_inputs(Calculation& c, const ReportSubject& s) {
    c.heading("What is demanded");
    add_space(c, s);
    add_duty(c, s);
    add_limits_asked(c, s);
    add_wire(c, s);
    c.heading("The spring");
    const auto chosen = [&](const char* key, const char* name, double value, const char* unit, const char* where) {
        c.given(key, name, value, unit, std::string("chosen; spec, [spring] ") + where, Trust::given);
    };
    chosen("D", "mean coil diameter", in_mm(s.spec.spring.mean_diameter), "mm", "mean_diameter");
    chosen("n_t", "total coils", s.spec.spring.total_coils, "", "total_coils");
    chosen("L_0", "free length", in_mm(s.spec.spring.free_length), "mm", "free_length");
    c.said("ends", std::string(spring::word(s.spec.spring.ends)), "spec, [spring] ends", Trust::given);
    const demand::Limits& asked = s.demand.limits;
    const demand::Limits usual = demand::school_defaults(asked.school);
    add_bound(c, s, "ground_wire", "d_g,min", "wire of ground ends, at least", in_mm(asked.smallest_ground_wire),
              in_mm(usual.smallest_ground_wire), "mm", "smallest_ground_wire");
    add_bound(c, s, "ground_index", "w_g,max", "index of ground ends, at most", asked.largest_ground_index,
              usual.largest_ground_index, "", "largest_ground_index");
    c.said("hand of coiling", std::string(spring::word(s.spec.spring.hand)), "spec, [spring] hand", Trust::given);
}

}  // namespace seatload::sheet
