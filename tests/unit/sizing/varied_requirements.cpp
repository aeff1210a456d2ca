// SPDX-License-Identifier: MIT
#include "varied_requirements.hpp"

namespace seatload::test {
namespace {

using demand::Requirement;
using spring::Ends;

/// A latch spring in a 9 mm bore, on a coarse grid of three wires.
Requirement latch() {
    Requirement r;
    r.limits = demand::school_defaults(spring::School::en_13906);
    r.space.bore = demand::Fit{9.0 * mm, 9.05 * mm, 9.0 * mm};
    r.space.seated_height = 15.0 * mm;
    r.space.full_travel_height = 9.0 * mm;
    r.space.seats = demand::Seats::slides;
    r.seated_load = {4.8 * newton, 6.5 * newton};
    r.full_travel_load = {std::nullopt, 13.5 * newton};
    r.surroundings.temperature = {120.0};
    r.wire.grades = {"ASTM-A401", "EN10270-2-FDSiCr", "EN10270-3-1.4310-NS"};
    r.wire.diameters = {0.65 * mm, 0.7 * mm, 0.8 * mm, 0.9 * mm};
    r.grid.mean_diameter_step = 0.1 * mm;
    r.grid.total_coils = {3.0, 12.0};
    r.grid.free_length_step = 0.3 * mm;
    return r;
}

/// A relief-valve spring of heavier wire, on fixed seats.
Requirement relief() {
    Requirement r;
    r.limits = demand::school_defaults(spring::School::handbook);
    r.space.rod = demand::Fit{9.9 * mm, 10.0 * mm, 10.0 * mm};
    r.space.seated_height = 30.0 * mm;
    r.space.full_travel_height = 24.0 * mm;
    r.seated_load = {60.0 * newton, 90.0 * newton};
    r.full_travel_load = {80.0 * newton, 140.0 * newton};
    r.wire.grades = {"ASTM-A228", "EN10270-1-SH"};
    r.wire.diameters = {1.8 * mm, 2.0 * mm, 2.25 * mm};
    r.grid.mean_diameter_step = 0.25 * mm;
    r.grid.mean_diameter = demand::LengthRange{10.0 * mm, 18.0 * mm};
    r.grid.total_coils = {2.0, 14.0};
    r.grid.free_length_step = 1.0 * mm;
    return r;
}

template <class Change>
NamedRequirement changed(std::string name, Requirement from, const Change& change) {
    change(from);
    return {std::move(name), std::move(from)};
}

void all_ends(Requirement& r) { r.ends = {Ends::open, Ends::open_ground, Ends::closed, Ends::closed_ground}; }

void moving(Requirement& r) {
    r.duty.cycles = 1e7;
    r.duty.frequency = 20.0 * hertz;
}

}  // namespace

std::vector<NamedRequirement> varied_requirements() {
    std::vector<NamedRequirement> all;
    const auto add = [&](std::string name, Requirement from, auto change) {
        all.push_back(changed(std::move(name), std::move(from), change));
    };
    add("latch", latch(), [](Requirement&) {});
    add("latch, half turns only", latch(), [](Requirement& r) { r.limits.half_turn_slack = 0.1; });
    add("latch, sliding without a bore", latch(), [](Requirement& r) {
        r.space.bore.reset();
        r.grid.mean_diameter = demand::LengthRange{6.0 * mm, 9.0 * mm};
        r.limits.lean_share = 0.1;
    });
    add("latch, sliding over a rod", latch(), [](Requirement& r) {
        r.space.rod = demand::Fit{5.5 * mm, 5.6 * mm, 5.6 * mm};
        r.space.seated_height = 11.0 * mm;
        all_ends(r);
    });
    add("latch, all ends", latch(), all_ends);
    add("latch, handbook school", latch(), [](Requirement& r) {
        r.limits = demand::school_defaults(spring::School::handbook);
        r.limits.growth_form = demand::GrowthForm::ends_held;
    });
    add("latch, fixed seats", latch(), [](Requirement& r) { r.space.seats = demand::Seats::fixed; });
    add("latch, one seat pivots", latch(), [](Requirement& r) { r.space.seats = demand::Seats::pivots; });
    add("latch, free end", latch(), [](Requirement& r) { r.space.seats = demand::Seats::free_end; });
    add("latch, guided", latch(), [](Requirement& r) { r.space.seats = demand::Seats::guided; });
    add("latch, sliding with a milder seating coefficient", latch(), [](Requirement& r) {
        r.limits.seating_coefficient = 0.7;
        r.space.sideways_play = 1.5 * mm;
    });
    add("latch, wide sideways play", latch(), [](Requirement& r) { r.space.sideways_play = 4.0 * mm; });
    add("latch, free-length envelope inside the grid", latch(), [](Requirement& r) {
        r.space.free_length = demand::LengthRange{16.0 * mm, 20.0 * mm};
        r.grid.free_length = demand::LengthRange{14.0 * mm, 24.0 * mm};
    });
    add("latch, maker of whole and half turns and short springs", latch(), [](Requirement& r) {
        r.grid.total_coils_step = 0.25;
        r.limits.coil_step = 0.5;
        r.limits.longest_free_length = 21.0 * mm;
    });
    add("latch, patented wire in heat", latch(), [](Requirement& r) { r.wire.grades = {"EN10270-1-SH"}; });
    add("latch, patented wire, service limit not heeded", latch(), [](Requirement& r) {
        r.wire.grades = {"EN10270-1-SH"};
        r.limits.heed_service_limit = false;
    });
    add("latch, stress at full travel with Wahl's factor", latch(), [](Requirement& r) {
        r.limits.stress_length = demand::StressLength::full_travel;
        r.limits.stress_factor = demand::StressFactor::wahl;
        r.limits.stress_share = 0.3;
    });
    add("latch, thin wire", latch(), [](Requirement& r) {
        r.wire.diameters = {0.4 * mm, 0.5 * mm, 0.6 * mm};
        r.seated_load = {0.5 * newton, 2.5 * newton};
        all_ends(r);
    });
    add("latch, light and stiff against motion", latch(), [](Requirement& r) {
        r.limits.largest_mass = 0.6 * gram;
        r.duty.frequency = 60.0 * hertz;
    });
    add("latch, more load than the space gives", latch(), [](Requirement& r) {
        r.seated_load = {40.0 * newton, 45.0 * newton};
    });
    add("latch, no load asked for", latch(), [](Requirement& r) { r.seated_load = r.full_travel_load = {}; });
    add("latch, no room for any coil", latch(), [](Requirement& r) {
        r.space.bore = demand::Fit{1.5 * mm, 1.5 * mm, 1.5 * mm};
    });
    add("relief", relief(), [](Requirement&) {});
    add("relief, all ends", relief(), all_ends);
    add("relief, EN school", relief(),
        [](Requirement& r) { r.limits = demand::school_defaults(spring::School::en_13906); });
    add("relief, moving, Goodman", relief(), moving);
    add("relief, moving, Gerber, peened", relief(), [](Requirement& r) {
        moving(r);
        r.duty.peened = true;
        r.limits.fatigue_line = demand::FatigueLine::gerber;
    });
    add("relief, moving, Sines, EN school", relief(), [](Requirement& r) {
        r.limits = demand::school_defaults(spring::School::en_13906);
        moving(r);
        r.limits.fatigue_line = demand::FatigueLine::sines;
        r.limits.stress_length = demand::StressLength::smallest_permissible;
    });
    add("relief, moving bronze", relief(), [](Requirement& r) {
        moving(r);
        r.wire.grades = {"ASTM-B159-C51000-H08"};
        r.seated_load = {10.0 * newton, 40.0 * newton};
        r.full_travel_load = {};
    });
    add("relief, many coils forbidden", relief(), [](Requirement& r) { r.limits.most_active_coils = 4.0; });
    return all;
}

}  // namespace seatload::test
