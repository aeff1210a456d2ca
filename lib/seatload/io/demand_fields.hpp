// SPDX-License-Identifier: MIT
#pragma once

#include <type_traits>

#include <seatload/demand/maker.hpp>
#include <seatload/io/demand_forms.hpp>
#include <seatload/io/fields.hpp>
#include <seatload/io/spring_forms.hpp>

namespace seatload::io {

// The field tables that requirement and spec files share.

template <class Fields, class Identity>
void visit_identity(Fields& f, Identity& identity) {
    f.field("engine", identity.engine, kAny, "");
    f.field("position", identity.position, kAny, "");
    f.field("number", identity.number, kAny, "part number");
    f.field("revision", identity.revision, kAny, "");
    f.field("owner", identity.owner, kAny, "legal owner");
    f.field("creator", identity.creator, kAny, "");
    f.field("approver", identity.approver, kAny, "");
}

template <class Fields, class Space>
void visit_space(Fields& f, Space& space) {
    f.field("bore", space.bore, kSize, "");
    f.field("rod", space.rod, kSize, "");
    f.needed("seated_height", "\"15 mm\"", space.seated_height, kSize, "L1");
    f.needed("full_travel_height", "\"9 mm\"", space.full_travel_height, kSize, "L2");
    f.field("free_length", space.free_length, Span{0.0, 10000.0, false, "at most 10 m"}, "room for the free spring");
    f.field("seats", space.seats, kAny, "how the ends are held");
    f.field("sideways_play", space.sideways_play, kNotNegative, "of a sliding seat");
}

template <class Fields, class Duty>
void visit_duty(Fields& f, Duty& duty) {
    f.field("cycles", duty.cycles, kPositive, "in all its life");
    f.field("frequency", duty.frequency, kPositive, "of the motion");
    f.field("peened", duty.peened, kAny, "shot-peened");
}

template <class Fields, class Surroundings>
void visit_surroundings(Fields& f, Surroundings& surroundings) {
    f.field("temperature", surroundings.temperature, kTemperature, "hottest in service");
    f.field("medium", surroundings.medium, kAny, "");
}

/// All limits but the school, which sets the defaults and is read first.
template <class Fields, class Limits>
void visit_limits(Fields& f, Limits& limits) {
    StressShare share{limits.stress_share};
    f.field("stress_share", share, kPositiveShare, "of Rm");
    if constexpr (!std::is_const_v<Limits>) limits.stress_share = share.of_tensile;
    f.field("stress_safety", limits.stress_safety, kAtLeastOne, "divides the permissible stress");
    f.field("stress_length", limits.stress_length, kAny, "where the static stress is judged");
    f.field("stress_factor", limits.stress_factor, kAny, "curvature factor in the static stress");
    f.field("gap_rule", limits.gap_rule, kAny, "room above solid length");
    Share gap{limits.gap_share};
    f.field("gap_share", gap, kNotNegative, "of the deflection at full travel");
    if constexpr (!std::is_const_v<Limits>) limits.gap_share = gap.value;
    f.field("solid_form", limits.solid_form, kAny, "how solid length is worked out");
    f.field("growth_form", limits.growth_form, kAny, "how the coil widens");
    f.field("seating_coefficient", limits.seating_coefficient, kPositive, "nu, in place of the value of the seats");
    f.field("buckling_margin", limits.buckling_margin, kAtLeastOne, "");
    f.field("smallest_index", limits.smallest_index, kAtLeastOne, "w = D/d");
    f.field("largest_index", limits.largest_index, kAtLeastOne, "");
    f.field("fewest_active_coils", limits.fewest_active_coils, kPositive, "n");
    f.field("most_active_coils", limits.most_active_coils, kPositive, "");
    f.field("half_turn_slack", limits.half_turn_slack, kNotNegative,
            "of n from k + 1/2 on a sliding seat; 0.5 allows any");
    Share lean{limits.lean_share};
    f.field("lean_share", lean, kNotNegative, "of D, on a sliding seat without bore or rod");
    if constexpr (!std::is_const_v<Limits>) limits.lean_share = lean.value;
    f.field("bore_clearance", limits.bore_clearance, kNotNegative, "on the diameter");
    f.field("rod_clearance", limits.rod_clearance, kNotNegative, "on the diameter");
    f.field("diameter_grade", limits.diameter_grade, kGrade, "EN 15800, used in the clearances");
    f.field("smallest_surge_ratio", limits.smallest_surge_ratio, kNotNegative,
            "natural frequency over that of the motion");
    f.field("fatigue_factor", limits.fatigue_factor, kPositive, "");
    f.field("fatigue_line", limits.fatigue_line, kAny, "");
    f.field("smallest_ground_wire", limits.smallest_ground_wire, kNotNegative, "thinner wire is not ground");
    f.field("largest_ground_index", limits.largest_ground_index, kPositive, "");
    f.field("coil_step", limits.coil_step, kPositive, "turns; total coils are multiples of it");
    f.field("longest_free_length", limits.longest_free_length, kSize, "that can be made");
    f.field("load_loss", limits.load_loss, kShare, "at temperature, in place of the guidance");
    f.field("largest_mass", limits.largest_mass, kPositive, "");
    f.field("heed_service_limit", limits.heed_service_limit, kAny, "");
}

/// The limits of a table [limits]: the defaults of its school, held to what a maker can do when there is one, each
/// overridden by its key.
inline demand::Limits read_limits(Reader& reader, const demand::Maker* maker = nullptr) {
    spring::School school = spring::School::en_13906;
    reader.set("school", school);
    demand::Limits limits = demand::school_defaults(school);
    if (maker != nullptr) demand::lay_on(limits, *maker);
    FieldReader fields(reader);
    visit_limits(fields, limits);
    for (const std::string& key : reader.keys()) limits.origins.erase(key);
    return limits;
}

}  // namespace seatload::io
