// SPDX-License-Identifier: MIT
#include <seatload/io/maker_file.hpp>
#include <seatload/io/plunger_file.hpp>
#include <seatload/io/readings_file.hpp>
#include <seatload/io/requirement_file.hpp>

#include <filesystem>
#include <functional>

#include <seatload/core/file.hpp>
#include <seatload/io/spring_file.hpp>

#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
using namespace seatload::io;

namespace {

demand::Requirement read_requirement_text(const std::string& text) {
    auto result = read_requirement(text, "x.toml", catalogue());
    INFO(render(result.error()));
    REQUIRE(result.has_value());
    CHECK(result.error().empty());
    return std::move(result).value();
}

demand::Limits read_limits_with(const std::string& lines) {
    return read_requirement_text(kLeast + "[limits]\n" + lines).limits;
}

}  // namespace

TEST_CASE("A requirement with only what must be there has the defaults for the rest") {
    const demand::Requirement r = read_requirement_text(kLeast);
    const demand::Requirement plain;
    CHECK(in_mm(r.space.seated_height) == 15.0);
    CHECK(in_mm(r.space.full_travel_height) == 9.0);
    CHECK(in_newton(*r.seated_load.at_least) == 4.8);
    CHECK_FALSE(r.full_travel_load.at_least.has_value());
    CHECK_FALSE(r.space.bore.has_value());
    CHECK(r.space.seats == demand::Seats::fixed);
    CHECK_FALSE(r.duty.is_dynamic());
    CHECK(r.surroundings.temperature.degrees == 20.0);
    CHECK(r.wire.grades.empty());
    CHECK(r.wire.series == "metric");
    CHECK(r.ends == plain.ends);
    CHECK(r.grid.mean_diameter_step == plain.grid.mean_diameter_step);
    CHECK(r.limits.stress_share == 0.56);
    CHECK(r.alternatives == 5);
}

TEST_CASE("Every member of a requirement can be set") {
    const demand::Requirement r = read_requirement_text(R"(
format = "seatload requirement 1"
[identity]
engine = "Ottermere M14"
position = "ahead latch plunger"
number = "M14-0417-A"
revision = "B"
date = 2026-11-25
owner = "owner"
creator = "creator"
approver = "approver"
[[revision]]
index = "A"
date = "2026-11-09"
change = "first issue"
[[revision]]
index = "B"
date = 2026-11-25
change = "seated load raised"
by = "workshop"
[space]
bore = "9.00 mm +0.05 mm"
rod = "3 mm"
seated_height = "15 mm"
full_travel_height = "9 mm"
free_length = "16 mm .. 40 mm"
seats = "slides"
sideways_play = "0.4 mm"
[load]
seated = "4.8 N .. 6.5 N"
full_travel = "at most 13.5 N"
[duty]
cycles = 2e5
frequency = "5 Hz"
peened = true
[surroundings]
temperature = "120 °C"
medium = "engine oil"
[wire]
grades = ["astm-a401", "ASTM-A228"]
diameters = ["0.9 mm", "0.040 in"]
series = "music-wire"
[coil]
ends = ["closed", "open and ground"]
hand = "left"
finish = "oiled"
[grid]
mean_diameter_step = "0.1 mm"
total_coils_step = 0.25
free_length_step = "0.2 mm"
mean_diameter = "4 mm .. 8 mm"
total_coils = "4 .. 15.5"
free_length = "18 mm .. 40 mm"
[order]
quantities = [25, 50]
alternatives = 3
load_grade = 1
notes = ["Ends deburred."]
)");
    CHECK(r.identity.engine == "Ottermere M14");
    CHECK(r.identity.position == "ahead latch plunger");
    CHECK(r.identity.number == "M14-0417-A");
    CHECK(r.identity.revision == "B");
    CHECK(r.identity.date == "2026-11-25");
    CHECK(r.identity.owner == "owner");
    CHECK(r.identity.creator == "creator");
    CHECK(r.identity.approver == "approver");
    CHECK(r.revisions == std::vector<demand::Revision>{{"A", "2026-11-09", "first issue", ""},
                                                       {"B", "2026-11-25", "seated load raised", "workshop"}});
    CHECK(in_mm(r.space.bore->largest) == 9.05);
    CHECK(in_mm(r.space.rod->nominal) == 3.0);
    CHECK(in_mm(r.space.free_length->smallest) == 16.0);
    CHECK(in_mm(r.space.free_length->largest) == 40.0);
    CHECK(r.space.seats == demand::Seats::slides);
    CHECK(in_mm(*r.space.sideways_play) == 0.4);
    CHECK(in_newton(*r.seated_load.at_most) == 6.5);
    CHECK(in_newton(*r.full_travel_load.at_most) == 13.5);
    CHECK(r.duty.cycles == 2e5);
    CHECK(in_hertz(*r.duty.frequency) == 5.0);
    CHECK(r.duty.peened);
    CHECK(r.surroundings.temperature.degrees == 120.0);
    CHECK(r.surroundings.medium == "engine oil");
    CHECK(r.wire.grades == std::vector<std::string>{"ASTM-A401", "ASTM-A228"});
    CHECK(r.wire.diameters.size() == 2);
    CHECK_THAT(in_mm(r.wire.diameters[1]), WithinRel(1.016, 1e-15));
    CHECK(r.wire.series == "music-wire");
    CHECK(r.ends == std::vector{spring::Ends::closed, spring::Ends::open_ground});
    CHECK(r.hand == spring::Hand::left);
    CHECK(r.finish == "oiled");
    CHECK(in_mm(r.grid.mean_diameter_step) == 0.1);
    CHECK(r.grid.total_coils_step == 0.25);
    CHECK(in_mm(r.grid.free_length_step) == 0.2);
    CHECK(in_mm(r.grid.mean_diameter->largest) == 8.0);
    CHECK(r.grid.total_coils.smallest == 4.0);
    CHECK(r.grid.total_coils.largest == 15.5);
    CHECK(in_mm(r.grid.free_length->smallest) == 18.0);
    CHECK(r.quantities == std::vector{25, 50});
    CHECK(r.alternatives == 3);
    CHECK(r.load_grade == 1);
    CHECK(r.notes == std::vector<std::string>{"Ends deburred."});
}

TEST_CASE("A school sets the default of every limit") {
    const demand::Limits en = read_limits_with("school = \"EN 13906-1\"\n");
    const demand::Limits handbook = read_limits_with("school = \"handbook\"\n");
    CHECK(en.school == spring::School::en_13906);
    CHECK(en.gap_rule == demand::GapRule::en_sa);
    CHECK(handbook.school == spring::School::handbook);
    CHECK_FALSE(handbook.stress_share.has_value());
    CHECK(handbook.gap_rule == demand::GapRule::share_of_travel);
    CHECK(handbook.largest_index == 12.0);
}

TEST_CASE("Each limit alone overrides its school") {
    struct Override {
        std::string line;
        std::function<bool(const demand::Limits&)> is_set;
        std::function<void(demand::Limits&, const demand::Limits&)> undo;
    };
    // `undo` puts the default back, so that what is left must equal the school in all the other limits
    const std::vector<Override> overrides{
        {"stress_share = 0.5", [](auto& l) { return l.stress_share == 0.5; },
         [](auto& l, auto& d) { l.stress_share = d.stress_share; }},
        {"stress_safety = 1.5", [](auto& l) { return l.stress_safety == 1.5; },
         [](auto& l, auto& d) { l.stress_safety = d.stress_safety; }},
        {"stress_length = \"full travel\"",
         [](auto& l) { return l.stress_length == demand::StressLength::full_travel; },
         [](auto& l, auto& d) { l.stress_length = d.stress_length; }},
        {"stress_factor = \"Wahl\"", [](auto& l) { return l.stress_factor == demand::StressFactor::wahl; },
         [](auto& l, auto& d) { l.stress_factor = d.stress_factor; }},
        {"gap_rule = \"share of travel\"", [](auto& l) { return l.gap_rule == demand::GapRule::share_of_travel; },
         [](auto& l, auto& d) { l.gap_rule = d.gap_rule; }},
        {"gap_share = \"20 %\"", [](auto& l) { return l.gap_share == 0.2; },
         [](auto& l, auto& d) { l.gap_share = d.gap_share; }},
        {"solid_form = \"textbook\"", [](auto& l) { return l.solid_form == demand::SolidForm::textbook; },
         [](auto& l, auto& d) { l.solid_form = d.solid_form; }},
        {"growth_form = \"ends held\"", [](auto& l) { return l.growth_form == demand::GrowthForm::ends_held; },
         [](auto& l, auto& d) { l.growth_form = d.growth_form; }},
        {"seating_coefficient = 0.8", [](auto& l) { return l.seating_coefficient == 0.8; },
         [](auto& l, auto& d) { l.seating_coefficient = d.seating_coefficient; }},
        {"buckling_margin = 1.3", [](auto& l) { return l.buckling_margin == 1.3; },
         [](auto& l, auto& d) { l.buckling_margin = d.buckling_margin; }},
        {"smallest_index = 5", [](auto& l) { return l.smallest_index == 5.0; },
         [](auto& l, auto& d) { l.smallest_index = d.smallest_index; }},
        {"largest_index = 11.5", [](auto& l) { return l.largest_index == 11.5; },
         [](auto& l, auto& d) { l.largest_index = d.largest_index; }},
        {"fewest_active_coils = 3.5", [](auto& l) { return l.fewest_active_coils == 3.5; },
         [](auto& l, auto& d) { l.fewest_active_coils = d.fewest_active_coils; }},
        {"most_active_coils = 14", [](auto& l) { return l.most_active_coils == 14.0; },
         [](auto& l, auto& d) { l.most_active_coils = d.most_active_coils; }},
        {"half_turn_slack = 0.25", [](auto& l) { return l.half_turn_slack == 0.25; },
         [](auto& l, auto& d) { l.half_turn_slack = d.half_turn_slack; }},
        {"lean_share = \"8 %\"", [](auto& l) { return l.lean_share == 0.08; },
         [](auto& l, auto& d) { l.lean_share = d.lean_share; }},
        {"bore_clearance = \"0.2 mm\"", [](auto& l) { return in_mm(l.bore_clearance) == 0.2; },
         [](auto& l, auto& d) { l.bore_clearance = d.bore_clearance; }},
        {"rod_clearance = \"0.3 mm\"", [](auto& l) { return in_mm(l.rod_clearance) == 0.3; },
         [](auto& l, auto& d) { l.rod_clearance = d.rod_clearance; }},
        {"diameter_grade = 1", [](auto& l) { return l.diameter_grade == 1; },
         [](auto& l, auto& d) { l.diameter_grade = d.diameter_grade; }},
        {"smallest_surge_ratio = 20", [](auto& l) { return l.smallest_surge_ratio == 20.0; },
         [](auto& l, auto& d) { l.smallest_surge_ratio = d.smallest_surge_ratio; }},
        {"fatigue_factor = 1.6", [](auto& l) { return l.fatigue_factor == 1.6; },
         [](auto& l, auto& d) { l.fatigue_factor = d.fatigue_factor; }},
        {"fatigue_line = \"Sines\"", [](auto& l) { return l.fatigue_line == demand::FatigueLine::sines; },
         [](auto& l, auto& d) { l.fatigue_line = d.fatigue_line; }},
        {"smallest_ground_wire = \"1 mm\"", [](auto& l) { return in_mm(l.smallest_ground_wire) == 1.0; },
         [](auto& l, auto& d) { l.smallest_ground_wire = d.smallest_ground_wire; }},
        {"largest_ground_index = 12", [](auto& l) { return l.largest_ground_index == 12.0; },
         [](auto& l, auto& d) { l.largest_ground_index = d.largest_ground_index; }},
        {"load_loss = \"5 %\"", [](auto& l) { return l.load_loss && l.load_loss->value == 0.05; },
         [](auto& l, auto& d) { l.load_loss = d.load_loss; }},
        {"largest_mass = \"3 g\"", [](auto& l) { return l.largest_mass && in_gram(*l.largest_mass) == 3.0; },
         [](auto& l, auto& d) { l.largest_mass = d.largest_mass; }},
        {"heed_service_limit = false", [](auto& l) { return !l.heed_service_limit; },
         [](auto& l, auto& d) { l.heed_service_limit = d.heed_service_limit; }},
    };
    const auto same = [](const demand::Limits& a, const demand::Limits& b) {
        return a.school == b.school && a.stress_share == b.stress_share && a.stress_safety == b.stress_safety &&
               a.stress_length == b.stress_length && a.stress_factor == b.stress_factor && a.gap_rule == b.gap_rule &&
               a.gap_share == b.gap_share && a.solid_form == b.solid_form && a.growth_form == b.growth_form &&
               a.seating_coefficient == b.seating_coefficient && a.buckling_margin == b.buckling_margin &&
               a.smallest_index == b.smallest_index && a.largest_index == b.largest_index &&
               a.fewest_active_coils == b.fewest_active_coils && a.most_active_coils == b.most_active_coils &&
               a.half_turn_slack == b.half_turn_slack && a.lean_share == b.lean_share &&
               a.bore_clearance == b.bore_clearance && a.rod_clearance == b.rod_clearance &&
               a.diameter_grade == b.diameter_grade && a.smallest_surge_ratio == b.smallest_surge_ratio &&
               a.fatigue_factor == b.fatigue_factor && a.fatigue_line == b.fatigue_line &&
               a.smallest_ground_wire == b.smallest_ground_wire && a.largest_ground_index == b.largest_ground_index &&
               a.load_loss == b.load_loss && a.largest_mass == b.largest_mass &&
               a.heed_service_limit == b.heed_service_limit;
    };
    for (const auto school : {spring::School::en_13906, spring::School::handbook}) {
        const demand::Limits defaults = demand::school_defaults(school);
        for (const Override& one : overrides) {
            CAPTURE(one.line);
            demand::Limits limits =
                read_limits_with("school = \"" + std::string(word(school)) + "\"\n" + one.line + "\n");
            CHECK(one.is_set(limits));
            one.undo(limits, defaults);
            CHECK(same(limits, defaults));
        }
    }
}

TEST_CASE("The torsional yield share of the wire can be asked for in either school") {
    CHECK_FALSE(read_limits_with("stress_share = \"torsional yield\"\n").stress_share.has_value());
}

TEST_CASE("Wire by its own figures joins the choice") {
    const std::string own =
        "[[own_wire]]\nid = \"certificate 4711\"\nshear_modulus = \"81.5 GPa\"\nyoung_modulus = \"206 GPa\"\n"
        "density = \"7850 kg/m3\"\ndiameters = \"0.2 mm .. 2 mm\"\nservice_limit = \"150 °C\"\n";
    const std::string law =
        "strength_at_1_mm = \"2060 MPa\"\nstrength_exponent = 0.163\n"
        "shear_modulus_loss_per_100_kelvin = \"2.5 %\"\ndiameter_tolerance = \"0.01 mm\"\n";

    SECTION("alone when no grades are named, with a law") {
        const auto r = read_requirement_text(kLeast + own + law);
        REQUIRE(r.wire.own_grades.size() == 1);
        const wire::Grade& grade = r.wire.own_grades[0];
        CHECK(r.wire.grades == std::vector<std::string>{"certificate 4711"});
        const auto& strength = std::get<wire::StrengthLaw>(grade.strength);
        CHECK(strength.a_mpa == 2060.0);
        CHECK(strength.exponent == 0.163);
        CHECK(in_mm(strength.smallest) == 0.2);
        CHECK(in_mm(strength.largest) == 2.0);
        CHECK(in_mpa(grade.moduli.at(0).shear) == 81500.0);
        CHECK(in_mpa(grade.moduli.at(0).young) == 206000.0);
        CHECK_THAT(in_kg_per_m3(grade.density), WithinRel(7850.0, 1e-15));
        CHECK_THAT(grade.shear_modulus_loss_per_kelvin, WithinRel(0.00025, 1e-15));
        CHECK(grade.service_limit.degrees == 150.0);
        CHECK(in_mm(grade.diameter_tolerance.at(0).plus_minus) == 0.01);
    }
    SECTION("beside named grades, with one strength") {
        const auto r = read_requirement_text(kLeast + "[wire]\ngrades = [\"ASTM-A228\", \"certificate 4711\"]\n" + own +
                                             "tensile_strength = \"1900 MPa\"\n");
        CHECK(r.wire.grades == std::vector<std::string>{"ASTM-A228", "certificate 4711"});
        CHECK(in_mpa(std::get<wire::StrengthGiven>(r.wire.own_grades.at(0).strength).minimum) == 1900.0);
    }
}

TEST_CASE("A temperature above the guidance is taken with a stated load loss") {
    const std::string hot = "[surroundings]\ntemperature = \"250 °C\"\n";
    CHECK_FALSE(read_requirement(kLeast + hot, "x.toml", catalogue()).has_value());
    CHECK(read_requirement_text(kLeast + hot + "[limits]\nload_loss = \"12 %\"\n").limits.load_loss->value == 0.12);
}

TEST_CASE("Every template loads without a diagnostic") {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(std::string(SEATLOAD_SOURCE_DIR) + "/templates")) {
        if (entry.path().extension() != ".toml") continue;
        INFO(entry.path().filename().string());
        const std::string text = read_text_file(entry.path()).value();
        const std::string path = entry.path().string();
        const auto is = [&](const char* kind) { return text.find(kind) != std::string::npos; };
        if (is("format = \"seatload samples 1\""))
            continue;  // read with the spec they are of: `inspect` is run on them
        const Diagnostics found =
            is("format = \"seatload spring 1\"")     ? read_spring(text, path, catalogue()).error()
            : is("format = \"seatload readings 1\"") ? read_readings(text, path, catalogue()).error()
            : is("format = \"seatload plunger 1\"")  ? read_plunger(text, path).error()
            : is("format = \"seatload maker 1\"")    ? read_maker(text, path).error()
                                                     : read_requirement(text, path, catalogue()).error();
        INFO(render(found));
        CHECK(found.empty());
        ++count;
    }
    CHECK(count >= 1);
}
