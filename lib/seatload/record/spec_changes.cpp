// SPDX-License-Identifier: MIT
#include <seatload/record/spec_changes.hpp>

#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::record {
namespace {

/// A length cleared of what differences of decimals leave in the last binary digits: it goes into the file of a spec.
Length cleared(Length length) { return std::round(in_mm(length) * 1e9) / 1e9 * mm; }

/// The coil diameter the sheet requires.
Length required_diameter(const Spec& spec) {
    return spec.bore_rules ? spec.spring.outside_diameter() : spec.spring.inside_diameter();
}

}  // namespace

std::string millimetres(Length length) { return shortest(in_mm(length)) + " mm"; }

void note_change(std::vector<Difference>& into, const std::string& name, const std::string& symbol,
                 const std::string& now, const std::string& before) {
    if (now != before) into.push_back({name, now, before, symbol});
}

void apply_wire(Spec& spec, const wire::Grade& grade, Length diameter, bool is_catalogued,
                std::vector<Difference>& told) {
    note_change(told, "wire", "wire", grade.id, spec.wire_grade);
    note_change(told, "wire diameter d", "d", units::shown_wire(diameter),
                units::shown_wire(spec.spring.wire_diameter));
    const Length kept = required_diameter(spec);
    spec.spring.wire_diameter = diameter;
    spec.spring.mean_diameter = cleared(spec.bore_rules ? kept - diameter : kept + diameter);
    if (grade.id == spec.wire_grade) return;
    spec.wire_grade = grade.id;
    spec.own_grade.reset();
    if (is_catalogued) return;
    spec.own_grade = grade;
    // A wire of its own carries no guidance along into the file of the spec.
    if (!spec.limits.load_loss) spec.limits.load_loss = wire::load_loss_at(grade, spec.surroundings.temperature);
}

void apply_changes(Spec& spec, const AskedChanges& asked, std::vector<Difference>& told) {
    spring::Spring& s = spec.spring;
    if (asked.outside_diameter) {
        note_change(told, "outside diameter De", "De", millimetres(*asked.outside_diameter),
                    millimetres(cleared(s.outside_diameter())));
        s.mean_diameter = cleared(*asked.outside_diameter - s.wire_diameter);
    }
    if (asked.total_coils) {
        note_change(told, "total coils nt", "nt", shortest(*asked.total_coils), shortest(s.total_coils));
        s.total_coils = *asked.total_coils;
    }
    if (asked.free_length) {
        note_change(told, "free length L0", "L0", millimetres(*asked.free_length), millimetres(s.free_length));
        s.free_length = *asked.free_length;
    }
    if (asked.ends) {
        note_change(told, "ends", "ends", std::string(spring::word(*asked.ends)), std::string(spring::word(s.ends)));
        s.ends = *asked.ends;
    }
    if (asked.diameter_grade) {
        note_change(told, "coil diameter to EN 15800 grade", "coil diameter grade",
                    std::to_string(*asked.diameter_grade), std::to_string(spec.diameter_grade));
        spec.diameter_grade = *asked.diameter_grade;
        spec.limits.diameter_grade = *asked.diameter_grade;
    }
}

}  // namespace seatload::record
