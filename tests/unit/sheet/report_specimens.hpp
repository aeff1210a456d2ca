// SPDX-License-Identifier: MIT
#pragma once

#include "specimens.hpp"

namespace seatload::test {

/// Specs as unlike as a report may have to reckon: the specimens of the sheets, then one for each choice of formula.
inline std::vector<Specimen> report_specimens() {
    std::vector<Specimen> out = specimens();
    const auto add = [&](const char* name, auto alter) {
        record::Spec spec = specimen(latch());
        spec.seated_demand = {spec.seated.nominal - spec.seated.minus, spec.seated.nominal + spec.seated.plus};
        spec.full_travel_demand = {{}, spec.full_travel.nominal + spec.full_travel.plus};
        alter(spec);
        out.push_back({name, spec});
    };
    add("handbook school", [](record::Spec& s) { s.limits = demand::school_defaults(spring::School::handbook); });
    add("Wahl's factor at full travel", [](record::Spec& s) {
        s.limits.stress_factor = demand::StressFactor::wahl;
        s.limits.stress_length = demand::StressLength::full_travel;
        s.limits.growth_form = demand::GrowthForm::ends_held;
    });
    add("Bergstraesser's factor at the smallest length", [](record::Spec& s) {
        s.limits.stress_factor = demand::StressFactor::bergstraesser;
        s.limits.stress_length = demand::StressLength::smallest_permissible;
        s.limits.gap_rule = demand::GapRule::share_of_travel;
    });
    const auto cyclic = [&](const char* name, demand::FatigueLine line, bool peened) {
        add(name, [&](record::Spec& s) {
            s = specimen({"EN10270-2-VDSiCr", 2.0, 14.0, 8.5, 46.0, spring::Ends::closed_ground, 38.0, 32.0});
            s.duty = {2e6, 12.0 * hertz, peened};
            s.limits.fatigue_line = line;
            s.space.seats = demand::Seats::fixed;
        });
    };
    cyclic("cyclic, Goodman", demand::FatigueLine::goodman, false);
    cyclic("cyclic, Gerber, peened", demand::FatigueLine::gerber, true);
    cyclic("cyclic, Sines", demand::FatigueLine::sines, false);
    add("guided, stated play and load loss, cold", [](record::Spec& s) {
        s.space.seats = demand::Seats::guided;
        s.limits.load_loss = Share{0.03};
        s.surroundings.temperature = Celsius{-10.0};
    });
    add("sideways play stated, seating coefficient stated", [](record::Spec& s) {
        s.space.sideways_play = 0.4 * mm;
        s.limits.seating_coefficient = 1.1;
    });
    add("slides without a bore", [](record::Spec& s) {
        s.space.bore.reset();
        s.bore_rules = true;
    });
    add("own wire with a long name", [](record::Spec& s) {
        s.own_grade = grade_of(s);
        s.own_grade->id = "certificate 4711-2026 of the coil that lies behind the lathe, third shelf";
        s.own_grade->designation = s.own_grade->id;
        s.own_grade->strength = wire::StrengthGiven{1957.3 * MPa, 0.5 * mm, 1.0 * mm};
        s.own_grade->provenance.clear();
        s.own_grade->diameter_tolerance.clear();
        s.wire_grade = s.own_grade->id;
        s.limits.load_loss = Share{1.0 / 30.0};
    });
    return out;
}

inline const wire::Grade& wire_of(const record::Spec& spec) {
    return spec.own_grade ? *spec.own_grade : grade_of(spec);
}

}  // namespace seatload::test
