// SPDX-License-Identifier: MIT
#include <seatload/io/spring_file.hpp>

#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
using namespace seatload::io;

namespace {

const std::string kHead =
    "[spring]\nwire = \"astm-a401\"\nwire_diameter = \"1 mm\"\ntotal_coils = 7.5\n"
    "free_length = \"24 mm\"\nends = \"closed and ground\"\n";

record::SpringFile read_spring_text(const std::string& text) {
    auto result = read_spring(text, "x.toml", catalogue());
    INFO(render(result.error()));
    REQUIRE(result.has_value());
    return std::move(result).value();
}

std::string problem(const std::string& text) { return first(read_spring(text, "x.toml", catalogue()).error()); }

}  // namespace

TEST_CASE("The coil diameter is given as mean, outside or inside diameter") {
    CHECK(in_mm(read_spring_text(kHead + "mean_diameter = \"7 mm\"\n").spring.mean_diameter) == 7.0);
    CHECK(in_mm(read_spring_text(kHead + "outside_diameter = \"8 mm\"\n").spring.mean_diameter) == 7.0);
    CHECK(in_mm(read_spring_text(kHead + "inside_diameter = \"6 mm\"\n").spring.mean_diameter) == 7.0);
    CHECK_THAT(problem(kHead), ContainsSubstring("spring.mean_diameter is missing"));
    CHECK_THAT(problem(kHead + "mean_diameter = \"7 mm\"\ninside_diameter = \"6 mm\"\n"),
               ContainsSubstring("the coil diameter is given twice"));
    CHECK_THAT(problem(kHead + "mean_diameter = \"1 mm\"\n"),
               ContainsSubstring("no coil of this wire can be so small"));
    CHECK_THAT(problem(kHead + "outside_diameter = \"2 mm\"\n"),
               ContainsSubstring("no coil of this wire can be so small"));
}

TEST_CASE("A spring file carries wire, coils, hand, heights and surroundings") {
    const auto file = read_spring_text(
        "name = \"old spring\"\n" + kHead +
        "mean_diameter = \"7 mm\"\nhand = \"left\"\n[heights]\nseated = \"15 mm\"\nfull_travel = \"9 mm\"\n"
        "[surroundings]\ntemperature = \"120 °C\"\n");
    CHECK(file.name == "old spring");
    CHECK(file.wire_grade == "ASTM-A401");
    CHECK(in_mm(file.spring.wire_diameter) == 1.0);
    CHECK(file.spring.total_coils == 7.5);
    CHECK(in_mm(file.spring.free_length) == 24.0);
    CHECK(file.spring.ends == spring::Ends::closed_ground);
    CHECK(file.spring.hand == spring::Hand::left);
    CHECK(in_mm(*file.seated_height) == 15.0);
    CHECK(in_mm(*file.full_travel_height) == 9.0);
    CHECK(file.surroundings.temperature.degrees == 120.0);
}

TEST_CASE("A spring file tells whether anyone stated how hot the spring gets, and a writer states nothing by himself") {
    const std::string coil = kHead + "mean_diameter = \"7 mm\"\n";
    CHECK_FALSE(read_spring_text(coil).is_temperature_stated);
    CHECK_FALSE(read_spring_text(coil + "[surroundings]\nmedium = \"oil\"\n").is_temperature_stated);
    auto file = read_spring_text(coil + "[surroundings]\ntemperature = \"20 °C\"\nmedium = \"oil\"\n");
    CHECK(file.is_temperature_stated);
    CHECK_THAT(write_spring(file, {}), ContainsSubstring("temperature = \"20 °C\""));
    file.is_temperature_stated = false;
    const std::string unstated = write_spring(file, {});
    CHECK_THAT(unstated, !ContainsSubstring("temperature"));
    CHECK_FALSE(read_spring_text(unstated).is_temperature_stated);
    CHECK(read_spring_text(unstated).surroundings.medium == "oil");
    file.surroundings.medium.clear();
    CHECK_THAT(write_spring(file, {}), !ContainsSubstring("surroundings"));
}

TEST_CASE("A spring file without heights is a spring alone") {
    const auto file = read_spring_text(kHead + "mean_diameter = \"7 mm\"\n");
    CHECK_FALSE(file.seated_height.has_value());
    CHECK_FALSE(file.full_travel_height.has_value());
}

TEST_CASE("Heights that do not fall along the travel are refused") {
    const std::string spring = kHead + "mean_diameter = \"7 mm\"\n[heights]\n";
    CHECK_THAT(problem(spring + "seated = \"24 mm\"\n"),
               ContainsSubstring("the seated height is not below the free length"));
    CHECK_THAT(problem(spring + "seated = \"9 mm\"\nfull_travel = \"15 mm\"\n"),
               ContainsSubstring("the full-travel height is not below the seated height"));
    CHECK_THAT(problem(spring + "full_travel = \"25 mm\"\n"),
               ContainsSubstring("the full-travel height is not below the free length"));
}

TEST_CASE("The wire must be known and have a strength at its diameter") {
    CHECK_THAT(
        problem("[spring]\nwire = \"ASTM-A410\"\nwire_diameter = \"1 mm\"\ntotal_coils = 7.5\nfree_length = \"24 mm\"\n"
                "ends = \"closed\"\nmean_diameter = \"7 mm\"\n"),
        ContainsSubstring("unknown wire grade \"ASTM-A410\""));
    CHECK_THAT(
        problem(
            "[spring]\nwire = \"ASTM-A401\"\nwire_diameter = \"0.2 mm\"\ntotal_coils = 7.5\nfree_length = \"24 mm\"\n"
            "ends = \"closed\"\nmean_diameter = \"2 mm\"\n"),
        ContainsSubstring("ASTM-A401 has no strength for wire of 0.20 mm"));
}

TEST_CASE("A spring of its own wire needs no grade of the catalogue") {
    const std::string spring =
        "[spring]\nwire_diameter = \"1 mm\"\ntotal_coils = 7.5\nfree_length = \"24 mm\"\n"
        "ends = \"open\"\nmean_diameter = \"7 mm\"\n";
    const std::string own =
        "[own_wire]\nid = \"from stock\"\nshear_modulus = \"81.5 GPa\"\nyoung_modulus = \"206 GPa\"\n"
        "density = \"7850 kg/m3\"\ndiameters = \"0.2 mm .. 2 mm\"\nservice_limit = \"150 °C\"\n"
        "tensile_strength = \"1900 MPa\"\n";
    const auto file = read_spring_text(spring + own);
    CHECK(file.wire_grade == "from stock");
    REQUIRE(file.own_grade.has_value());
    CHECK(file.own_grade->id == "from stock");
    CHECK_THAT(problem(spring), ContainsSubstring("spring.wire is missing"));
}

TEST_CASE("Tables a spring file does not have are errors") {
    CHECK_THAT(problem(kHead + "mean_diameter = \"7 mm\"\n[limits]\nstress_share = 0.5\n"),
               ContainsSubstring("unknown key limits"));
}

TEST_CASE("A spring file carries what the bench found, and is written so that it reads back the same") {
    const auto file = read_spring_text(
        "name = \"old\"\n" + kHead +
        "mean_diameter = \"7 mm\"\n[heights]\nseated = \"15 mm\"\nfull_travel = \"9 mm\"\n"
        "[measured]\ndate = \"2026-11-20\"\nreadings = \"r.toml\"\nrate = \"1.1657 N/mm ±0.0025 N/mm\"\n"
        "loads = [[\"15 mm\", \"3.435 N ±0.04 N\"], [\"9 mm\", \"10.429 N ±0.5 %\"]]\n");
    REQUIRE(file.measured.has_value());
    CHECK(file.measured->date == "2026-11-20");
    CHECK(file.measured->readings == "r.toml");
    CHECK(in_newton_per_mm(file.measured->rate->value) == 1.1657);
    CHECK(in_newton_per_mm(file.measured->rate->plus_minus) == 0.0025);
    REQUIRE(file.measured->loads.size() == 2);
    CHECK(in_mm(file.measured->loads[0].height) == 15.0);
    CHECK(in_newton(file.measured->loads[0].load.value) == 3.435);
    CHECK(in_newton(file.measured->loads[0].load.plus_minus) == 0.04);
    CHECK_THAT(in_newton(file.measured->loads[1].load.plus_minus), WithinAbs(0.052145, 1e-9));  // 0.5 % of 10.429

    const std::string text = write_spring(file, {"a remark"});
    CHECK(text.starts_with("# a remark\n"));
    const auto again = read_spring_text(text);
    CHECK(again.name == file.name);
    CHECK(again.wire_grade == file.wire_grade);
    CHECK(in_mm(again.spring.mean_diameter) == 7.0);
    CHECK(in_mm(*again.seated_height) == 15.0);
    CHECK(write_spring(again, {"a remark"}) == text);
}

TEST_CASE("That a wire is guessed is kept with what was measured, and left out where it is known") {
    const std::string head = kHead + "mean_diameter = \"7 mm\"\n[measured]\nreadings = \"r.toml\"\n";
    const auto guessed = read_spring_text(head + "wire_guessed = true\n");
    CHECK(guessed.measured->wire_is_guessed);
    CHECK_THAT(write_spring(guessed, {}), ContainsSubstring("wire_guessed = true"));
    const auto known = read_spring_text(head);
    CHECK_FALSE(known.measured->wire_is_guessed);
    CHECK_THAT(write_spring(known, {}), !ContainsSubstring("wire_guessed"));
}

TEST_CASE("What is wrong with measured loads is told where it stands") {
    const std::string spring = kHead + "mean_diameter = \"7 mm\"\n[measured]\n";
    CHECK_THAT(problem(spring + "loads = [[\"15 mm\"]]\n"), ContainsSubstring("the row ends before its load"));
    CHECK_THAT(problem(spring + "loads = [[\"15 mm\", \"343 g\"]]\n"), ContainsSubstring("\"g\" is a mass"));
    CHECK_THAT(problem(spring + "rate = \"-1 N/mm\"\n"), ContainsSubstring("must be more than zero"));
    CHECK_THAT(problem(spring + "laods = []\n"), ContainsSubstring("unknown key measured.laods"));
}
