// SPDX-License-Identifier: MIT
#include <seatload/io/spec_file.hpp>

#include <seatload/io/spring_file.hpp>
#include <seatload/units/parse.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
using namespace seatload::io;

namespace {

/// A spec with every member away from its default, and numbers that have no short decimal form.
record::Spec full_spec() {
    record::Spec s;
    s.identity = {"Ottermere M14", "ahead latch plunger", "M14-0417-A", "B", "2026-11-25", "owner", "creator",
                  "approver"};
    s.revisions = {{"A", "2026-11-09", "first issue", "workshop"}, {"B", "2026-11-25", "seated load raised", ""}};
    s.title = "Compression spring, \"ahead\" latch plunger";
    s.alternative = "C";
    s.why = "thicker wire\nand a coarser grade";
    s.wire_grade = "ASTM-A401";
    s.spring = {1.0 / 3.0 * 3.1 * mm, 7.0 / 1.1 * mm,       22.0 / 3.0,
                24.0 / 1.3 * mm,      spring::Ends::closed, spring::Hand::left};
    s.bore_rules = false;
    s.seated = {15.0 * mm, 5.6 / 1.1 * newton, 0.1 / 0.3 * newton, 0.7 / 1.3 * newton, 2};
    s.full_travel = {9.0 * mm, 12.0 / 1.1 * newton, 0.4 * newton, 0.0 * newton, std::nullopt};
    s.seated_demand = {4.8 * newton, 6.5 * newton};
    s.full_travel_demand = {std::nullopt, 13.5 * newton};
    s.diameter_grade = 1;
    s.squareness_grade = 3;
    s.adjustable = {record::Adjustable::coils_and_diameter};
    s.space.bore = demand::Fit{8.98 * mm, (9.0 + 0.05) * mm, 9.0 * mm};
    s.space.rod = demand::Fit{3.0 * mm, 3.0 * mm, 3.0 * mm};
    s.space.seated_height = 15.0 * mm;
    s.space.full_travel_height = 9.0 * mm;
    s.space.free_length = demand::LengthRange{16.0 * mm, 40.0 / 1.7 * mm};
    s.space.seats = demand::Seats::slides;
    s.space.sideways_play = 0.4 * mm;
    s.duty = {2e5, 50.0 / 3.0 * hertz, true};
    s.surroundings = {Celsius{(250.0 - 32.0) / 1.8}, "engine oil"};
    demand::Limits& l = s.limits;
    l = demand::school_defaults(spring::School::handbook);
    l.stress_share = 0.5 / 1.1;
    l.stress_safety = 1.3;
    l.stress_length = demand::StressLength::full_travel;
    l.stress_factor = demand::StressFactor::wahl;
    l.gap_rule = demand::GapRule::en_sa;
    l.gap_share = 0.1 / 0.7;
    l.solid_form = demand::SolidForm::en;
    l.growth_form = demand::GrowthForm::ends_free;
    l.seating_coefficient = 0.8;
    l.buckling_margin = 1.25;
    l.smallest_index = 4.5;
    l.largest_index = 11.0;
    l.fewest_active_coils = 3.5;
    l.most_active_coils = 12.0;
    l.half_turn_slack = 0.3;
    l.tips_degrees = 17.5;
    l.lean_share = 0.1 / 0.9;
    l.bore_clearance = 0.1 / 0.9 * mm;
    l.rod_clearance = 0.2 * mm;
    l.diameter_grade = 1;
    l.smallest_surge_ratio = 20.0;
    l.fatigue_factor = 1.5;
    l.fatigue_line = demand::FatigueLine::gerber;
    l.smallest_ground_wire = 0.6 * mm;
    l.largest_ground_index = 12.0;
    l.load_loss = Share{0.1 / 3.0};
    l.largest_mass = units::parse<Mass>("0.111 oz").value.value();
    l.heed_service_limit = false;
    s.quantities = {25, 50, 100};
    s.finish = "zinc flake";
    s.certificate = demand::Certificate::inspection_by_third;
    s.notes = {"Ends deburred.", "Tab\there"};
    return s;
}

record::Spec read_back(const record::Spec& spec) {
    auto read = read_spec(write_spec(spec), "x.toml", catalogue());
    INFO(write_spec(spec));
    INFO(render(read.error()));
    REQUIRE(read.has_value());
    return std::move(read).value();
}

void check_same(const record::LoadAtLength& a, const record::LoadAtLength& b) {
    CHECK(a.length == b.length);
    CHECK(a.nominal == b.nominal);
    CHECK(a.plus == b.plus);
    CHECK(a.minus == b.minus);
    CHECK(a.grade == b.grade);
}

void check_same(const std::optional<demand::Fit>& a, const std::optional<demand::Fit>& b) {
    REQUIRE(a.has_value() == b.has_value());
    if (!a) return;
    CHECK(a->smallest == b->smallest);
    CHECK(a->largest == b->largest);
    CHECK(a->nominal == b->nominal);
}

void check_same(const demand::Identity& a, const demand::Identity& b) {
    CHECK(a.engine == b.engine);
    CHECK(a.position == b.position);
    CHECK(a.number == b.number);
    CHECK(a.revision == b.revision);
    CHECK(a.date == b.date);
    CHECK(a.owner == b.owner);
    CHECK(a.creator == b.creator);
    CHECK(a.approver == b.approver);
}

void check_same(const spring::Spring& a, const spring::Spring& b) {
    CHECK(a.wire_diameter == b.wire_diameter);
    CHECK(a.mean_diameter == b.mean_diameter);
    CHECK(a.total_coils == b.total_coils);
    CHECK(a.free_length == b.free_length);
    CHECK(a.ends == b.ends);
    CHECK(a.hand == b.hand);
}

void check_same(const demand::Space& a, const demand::Space& b) {
    check_same(a.bore, b.bore);
    check_same(a.rod, b.rod);
    CHECK(a.seated_height == b.seated_height);
    CHECK(a.full_travel_height == b.full_travel_height);
    REQUIRE(a.free_length.has_value() == b.free_length.has_value());
    if (a.free_length) CHECK(a.free_length->smallest == b.free_length->smallest);
    if (a.free_length) CHECK(a.free_length->largest == b.free_length->largest);
    CHECK(a.seats == b.seats);
    CHECK(a.sideways_play == b.sideways_play);
}

void check_same(const demand::Limits& a, const demand::Limits& b) {
    CHECK(a.school == b.school);
    CHECK(a.stress_share == b.stress_share);
    CHECK(a.stress_safety == b.stress_safety);
    CHECK(a.stress_length == b.stress_length);
    CHECK(a.stress_factor == b.stress_factor);
    CHECK(a.gap_rule == b.gap_rule);
    CHECK(a.gap_share == b.gap_share);
    CHECK(a.solid_form == b.solid_form);
    CHECK(a.growth_form == b.growth_form);
    CHECK(a.seating_coefficient == b.seating_coefficient);
    CHECK(a.buckling_margin == b.buckling_margin);
    CHECK(a.smallest_index == b.smallest_index);
    CHECK(a.largest_index == b.largest_index);
    CHECK(a.fewest_active_coils == b.fewest_active_coils);
    CHECK(a.most_active_coils == b.most_active_coils);
    CHECK(a.half_turn_slack == b.half_turn_slack);
    CHECK(a.tips_degrees == b.tips_degrees);
    CHECK(a.lean_share == b.lean_share);
    CHECK(a.bore_clearance == b.bore_clearance);
    CHECK(a.rod_clearance == b.rod_clearance);
    CHECK(a.diameter_grade == b.diameter_grade);
    CHECK(a.smallest_surge_ratio == b.smallest_surge_ratio);
    CHECK(a.fatigue_factor == b.fatigue_factor);
    CHECK(a.fatigue_line == b.fatigue_line);
    CHECK(a.smallest_ground_wire == b.smallest_ground_wire);
    CHECK(a.largest_ground_index == b.largest_ground_index);
    CHECK(a.load_loss == b.load_loss);
    CHECK(a.largest_mass == b.largest_mass);
    CHECK(a.heed_service_limit == b.heed_service_limit);
}

void check_same(const record::Spec& a, const record::Spec& b) {
    check_same(a.identity, b.identity);
    CHECK(a.revisions == b.revisions);
    CHECK(a.title == b.title);
    CHECK(a.alternative == b.alternative);
    CHECK(a.why == b.why);
    CHECK(a.wire_grade == b.wire_grade);
    check_same(a.spring, b.spring);
    CHECK(a.bore_rules == b.bore_rules);
    check_same(a.seated, b.seated);
    check_same(a.full_travel, b.full_travel);
    CHECK(a.seated_demand.at_least == b.seated_demand.at_least);
    CHECK(a.seated_demand.at_most == b.seated_demand.at_most);
    CHECK(a.full_travel_demand.at_least == b.full_travel_demand.at_least);
    CHECK(a.full_travel_demand.at_most == b.full_travel_demand.at_most);
    CHECK(a.diameter_grade == b.diameter_grade);
    CHECK(a.squareness_grade == b.squareness_grade);
    CHECK(a.adjustable == b.adjustable);
    check_same(a.space, b.space);
    CHECK(a.duty.cycles == b.duty.cycles);
    CHECK(a.duty.frequency == b.duty.frequency);
    CHECK(a.duty.peened == b.duty.peened);
    CHECK(a.surroundings.temperature == b.surroundings.temperature);
    CHECK(a.surroundings.medium == b.surroundings.medium);
    check_same(a.limits, b.limits);
    CHECK(a.quantities == b.quantities);
    CHECK(a.finish == b.finish);
    CHECK(a.certificate == b.certificate);
    CHECK(a.notes == b.notes);
}

}  // namespace

TEST_CASE("A spec read back is equal in every member") {
    const record::Spec spec = full_spec();
    check_same(read_back(spec), spec);
}

TEST_CASE("A spec with nothing optional reads back equal in every member") {
    record::Spec spec;
    spec.wire_grade = "EN10270-1-SH";
    spec.spring = {1.0 * mm, 7.0 * mm, 7.5, 24.0 * mm, spring::Ends::closed_ground, spring::Hand::right};
    spec.seated = {15.0 * mm, 5.6 * newton, 0.5 * newton, 0.5 * newton, std::nullopt};
    spec.full_travel = {9.0 * mm, 12.0 * newton, 0.5 * newton, 0.5 * newton, std::nullopt};
    spec.space.seated_height = 15.0 * mm;
    spec.space.full_travel_height = 9.0 * mm;
    for (const auto school : {spring::School::en_13906, spring::School::handbook}) {
        spec.limits = demand::school_defaults(school);
        check_same(read_back(spec), spec);
    }
    spec.limits = demand::school_defaults(spring::School::en_13906);
    spec.limits.stress_share.reset();
    check_same(read_back(spec), spec);
}

TEST_CASE("Own wire travels with its spec") {
    record::Spec spec = full_spec();
    wire::Grade own;
    own.id = spec.wire_grade = "from stock";
    own.family = wire::Family::copper_alloy;
    own.strength = wire::StrengthLaw{2060.0 / 1.1, 0.163, 0.2 * mm, 2.0 * mm};
    own.moduli = {{2.0 * mm, 81500.0 * MPa, 206000.0 * MPa}};
    own.density = units::parse<Density>("0.2836 lb/in3").value.value();
    own.shear_modulus_loss_per_kelvin = 0.00025 / 1.1;
    own.service_limit = Celsius{150.0};
    own.diameter_tolerance = {{2.0 * mm, 0.01 * mm, wire::Evidence::given}};
    own.relative_cost = 2.5;
    own.note = "from a certificate";
    spec.own_grade = own;
    const record::Spec read = read_back(spec);
    REQUIRE(read.own_grade.has_value());
    const auto& law = std::get<wire::StrengthLaw>(read.own_grade->strength);
    CHECK(law.a_mpa == 2060.0 / 1.1);
    CHECK(law.exponent == 0.163);
    CHECK(law.smallest == 0.2 * mm);
    CHECK(law.largest == 2.0 * mm);
    CHECK(read.own_grade->family == own.family);
    CHECK(read.own_grade->density == own.density);
    CHECK(read.own_grade->shear_modulus_loss_per_kelvin == own.shear_modulus_loss_per_kelvin);
    CHECK(read.own_grade->service_limit == own.service_limit);
    CHECK(read.own_grade->diameter_tolerance.at(0).plus_minus == 0.01 * mm);
    CHECK(read.own_grade->relative_cost == own.relative_cost);
    CHECK(read.own_grade->note == own.note);
    CHECK(write_spec(read) == write_spec(spec));
}

TEST_CASE("Equal specs give equal bytes") { CHECK(write_spec(full_spec()) == write_spec(read_back(full_spec()))); }

TEST_CASE("A spec serves as a spring file") {
    const record::Spec spec = full_spec();
    const auto read = read_spring(write_spec(spec), "x.toml", catalogue());
    INFO(render(read.error()));
    REQUIRE(read.has_value());
    check_same(read->spring, spec.spring);
    CHECK(read->name == spec.title);
    CHECK(read->wire_grade == spec.wire_grade);
    CHECK(read->seated_height == spec.space.seated_height);
    CHECK(read->full_travel_height == spec.space.full_travel_height);
    CHECK(read->surroundings.temperature == spec.surroundings.temperature);
}

TEST_CASE("A spec without its mark, or with an unknown key, is refused") {
    std::string text = write_spec(full_spec());
    CHECK_FALSE(read_spec(text.substr(text.find('\n') + 1), "x.toml", catalogue()).has_value());
    text.insert(text.find("[space]") + 8, "boer = \"9 mm\"\n");
    const auto read = read_spec(text, "x.toml", catalogue());
    CHECK_FALSE(read.has_value());
    CHECK_THAT(first(read.error()), ContainsSubstring("unknown key space.boer"));
}
