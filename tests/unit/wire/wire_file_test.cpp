// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#include <seatload/core/file.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/io/wire_file.hpp>
#include <seatload/wire/strength.hpp>

using namespace seatload;
using namespace seatload::wire;

namespace {

Catalogue builtin_wires() { return io::builtin_catalogue().value(); }

Result<Catalogue> read(const std::string& text) { return io::read_wire_file(text, "own.toml", builtin_wires()); }

/// What a user is shown of the errors in a text.
std::string errors_in(const std::string& text) {
    const Result<Catalogue> result = read(text);
    CHECK_FALSE(result.has_value());
    return render(result.error(), 100);
}

const std::string kHead = "format_version = 1\n";
const std::string kBody = R"(family = "cold-drawn carbon"
density = "7850 kg/m3"
shear_modulus = "81.5 GPa"
young_modulus = "206 GPa"
shear_modulus_loss_per_100_kelvin = "2.5 %"
service_limit = "120 °C"
)";
const std::string kGrade = kHead + "[[grade]]\nid = \"ours\"\n" + kBody;

std::string rows(const std::string& text) {
    return kGrade + "[grade.strength]\nlookup = \"next larger\"\nrows = [\n" + text + "\n]\n";
}

}  // namespace

TEST_CASE("a user's grade by a power law is added to the built-in ones") {
    const auto catalogue = read(kGrade +
                                "strength = { A = \"2211 MPa\", m = 0.145, range = \"0.10 mm .. 6.5 mm\" }\n"
                                "diameter_tolerance = \"EN 10270-1\"\n");
    INFO(render(catalogue.error()));
    REQUIRE(catalogue.has_value());
    CHECK(catalogue->grades.size() == 36);
    const Grade* ours = catalogue->find("ours");
    REQUIRE(ours != nullptr);
    // 2211/2^0.145 worked out by hand: ln 2 * 0.145 = 0.100506, e^-0.100506 = 0.904380
    CHECK_THAT(in_mpa(strength_at(*ours, 2.0 * mm)->minimum), WithinAbs(1999.6, 0.05));
    CHECK_FALSE(strength_at(*ours, 6.6 * mm));
    CHECK_THAT(in_kg_per_m3(ours->density), WithinRel(7850.0, 1e-12));
    CHECK_THAT(ours->shear_modulus_loss_per_kelvin, WithinRel(0.25e-3, 1e-12));
    CHECK(ours->service_limit.degrees == 120.0);
    CHECK(in_mm(*diameter_tolerance_at(*ours, 0.8 * mm)) == 0.015);
}

TEST_CASE("a user's grade by one strength holds over its range, or everywhere") {
    const auto ranged = read(kGrade + "strength = { Rm = \"1950 MPa\", range = \"0.78 mm .. 0.82 mm\" }\n");
    REQUIRE(ranged.has_value());
    CHECK(strength_at(*ranged->find("ours"), 0.8 * mm));
    CHECK_FALSE(strength_at(*ranged->find("ours"), 0.9 * mm));
    const auto open = read(kGrade + "strength = { Rm = \"1950 MPa\" }\n");
    REQUIRE(open.has_value());
    CHECK(in_mpa(strength_at(*open->find("ours"), 5.0 * mm)->minimum) == 1950.0);
}

TEST_CASE("a user's rows count as given unless they say otherwise") {
    const auto catalogue =
        read(rows("[\"0.8 mm\", \"2050 MPa\", \"2300 MPa\"],\n[\"0.040 in\", \"290 ksi\", \"-\", \"memory\"]"));
    INFO(render(catalogue.error()));
    REQUIRE(catalogue.has_value());
    const auto& table = std::get<StrengthTable>(catalogue->find("ours")->strength);
    REQUIRE(table.rows.size() == 2);
    CHECK(table.rows[0].evidence == Evidence::given);
    CHECK(table.rows[1].evidence == Evidence::memory);
    CHECK_FALSE(table.rows[1].maximum);
    CHECK_THAT(in_mm(table.rows[1].diameter), WithinRel(1.016, 1e-12));
    CHECK_THAT(in_mpa(table.rows[1].minimum), WithinAbs(1999.5, 0.05));  // 290 * 6.894757
}

TEST_CASE("a grade with a known id replaces the built-in one") {
    std::string text = kHead + "[[grade]]\nid = \"en10270-1-sh\"\n" + kBody + "strength = { Rm = \"2000 MPa\" }\n";
    const auto catalogue = read(text);
    REQUIRE(catalogue.has_value());
    CHECK(catalogue->grades.size() == 35);
    CHECK(in_mpa(strength_at(*catalogue->find("EN10270-1-SH"), 1.0 * mm)->minimum) == 2000.0);
}

TEST_CASE("a holding leaves only what the winder has") {
    const auto catalogue =
        read(kHead + "[[holding]]\ngrade = \"EN10270-3-1.4310-NS\"\ndiameters = [\"0.8 mm\", \"0.7 mm\"]\n");
    REQUIRE(catalogue.has_value());
    const auto sizes = stock_sizes(*catalogue, *catalogue->find("EN10270-3-1.4310-NS"), "metric");
    REQUIRE(sizes.size() == 2);
    CHECK(in_mm(sizes[0].diameter) == 0.7);
    CHECK(in_mm(sizes[1].diameter) == 0.8);
    CHECK(stock_sizes(*catalogue, *catalogue->find("EN10270-1-SH"), "metric").empty());
}

TEST_CASE("a user's own tables and series can be named by his grades") {
    const auto catalogue = read(
        kHead + R"(
[[tolerance_table]]
id = "tight"
rows = [["1 mm", "0.004 mm"], ["2 mm", "0.006 mm"]]
[[load_loss]]
row = "ours, measured"
points = [["120 °C", "1.2 %"]]
[[series]]
id = "rack"
sizes = ["0.7 mm", ["0.032 in", "MW 13 and a half"]]
[[grade]]
id = "ours"
)" + kBody +
        "diameter_tolerance = \"tight\"\nload_loss = { row = \"ours, measured\" }\nstrength = { Rm = \"1950 MPa\" }\n");
    INFO(render(catalogue.error()));
    REQUIRE(catalogue.has_value());
    const Grade* ours = catalogue->find("ours");
    CHECK(in_mm(*diameter_tolerance_at(*ours, 1.5 * mm)) == 0.006);
    CHECK_THAT(load_loss_at(*ours, {70.0})->value, WithinRel(0.006, 1e-12));
    CHECK(ours->load_loss->evidence == Evidence::given);
    const auto sizes = stock_sizes(*catalogue, *ours, "rack");
    REQUIRE(sizes.size() == 2);
    CHECK(sizes[1].name == "MW 13 and a half (0.032 in)");
}

TEST_CASE("the example in the data's README reads without a complaint") {
    const auto readme = read_text_file(std::string(SEATLOAD_SOURCE_DIR) + "/lib/data/README.md");
    REQUIRE(readme.has_value());
    const std::size_t from = readme->find("```toml\n");
    REQUIRE(from != std::string::npos);
    const std::size_t to = readme->find("```", from + 8);
    REQUIRE(to != std::string::npos);
    const auto catalogue = read(readme->substr(from + 8, to - from - 8));
    INFO(render(catalogue.error()));
    REQUIRE(catalogue.has_value());
    CHECK(catalogue->grades.size() == 37);
    CHECK(catalogue->holdings.size() == 1);
}

TEST_CASE("what a grade cannot do without is asked for") {
    const std::string shown = errors_in(kHead + "[[grade]]\nid = \"ours\"\nfamily = \"cold-drawn carbon\"\n");
    for (const char* key : {"density", "shear_modulus", "young_modulus", "shear_modulus_loss_per_100_kelvin",
                            "service_limit", "strength"}) {
        CAPTURE(key);
        CHECK_THAT(shown, ContainsSubstring(key));
    }
}

TEST_CASE("strength rows must rise in diameter and stand the right way up") {
    CHECK_THAT(errors_in(rows("[\"0.8 mm\", \"2050 MPa\"],\n[\"0.7 mm\", \"2100 MPa\"]")),
               ContainsSubstring("own.toml:14:1: error: the rows must rise in diameter"));
    CHECK_THAT(errors_in(rows("[\"0.8 mm\", \"2050 MPa\"],\n[\"0.8 mm\", \"2050 MPa\"]")),
               ContainsSubstring("each size once"));
    CHECK_THAT(errors_in(rows("[\"0.8 mm\", \"2300 MPa\", \"2050 MPa\"]")),
               ContainsSubstring("minimum strength is above the maximum"));
    CHECK_THAT(errors_in(rows("[\"0.8 mm\"]")), ContainsSubstring("ends before its minimum strength"));
    CHECK_THAT(errors_in(rows("")), ContainsSubstring("at least one row"));
    CHECK_THAT(errors_in(rows("[\"0.8 mm\", \"2050 MPa\", \"2300 MPa\", \"rumour\"]")), ContainsSubstring("rumour"));
}

TEST_CASE("a slip of the unit is caught by the plausible range") {
    CHECK_THAT(errors_in(rows("[\"0.8 mm\", \"2050 kPa\"]")), ContainsSubstring("100 MPa to 6000 MPa"));
    CHECK_THAT(errors_in(rows("[\"0.8 m\", \"2050 MPa\"]")), ContainsSubstring("0.01 mm to 50 mm"));
    CHECK_THAT(errors_in(rows("[\"0.8 mm\", \"2050 N\"]")), ContainsSubstring("force"));
    CHECK_THAT(errors_in(rows("[\"0,8 mm\", \"2050 MPa\"]")), ContainsSubstring("decimal comma"));
    CHECK_THAT(errors_in(rows("[0.8, \"2050 MPa\"]")), ContainsSubstring("bare number"));
}

TEST_CASE("a holding of an unknown grade or outside its strengths is an error with a way out") {
    const std::string unknown = errors_in(kHead + "[[holding]]\ngrade = \"EN10270-1-SHH\"\ndiameters = [\"0.8 mm\"]\n");
    CHECK_THAT(unknown, ContainsSubstring("own.toml:3:9: error"));
    CHECK_THAT(unknown, ContainsSubstring("did you mean \"EN10270-1-SH\"?"));
    const std::string outside = errors_in(kHead + "[[holding]]\ngrade = \"EN10270-1-SH\"\ndiameters = [\"0.2 mm\"]\n");
    CHECK_THAT(outside, ContainsSubstring("0.20 mm is outside"));
    CHECK_THAT(outside, ContainsSubstring("from 0.30 mm to 10.00 mm"));
    CHECK_THAT(errors_in(kHead + "[[holding]]\ngrade = \"EN10270-1-SH\"\ndiameters = [\"0.8 mm\", \"0.80 mm\"]\n"),
               ContainsSubstring("listed twice"));
}

TEST_CASE("a grade described twice shows both places") {
    const std::string one = "[[grade]]\nid = \"ours\"\n" + kBody + "strength = { Rm = \"2000 MPa\" }\n";
    const std::string shown = errors_in(kHead + one + one);
    CHECK_THAT(shown, ContainsSubstring("described twice"));
    CHECK_THAT(shown, ContainsSubstring("own.toml:3:6: note: first described here"));
}

TEST_CASE("a tolerance table must rise and its tolerances must not fall") {
    const std::string start = kHead + "[[tolerance_table]]\nid = \"t\"\nrows = ";
    CHECK_THAT(errors_in(start + "[[\"2 mm\", \"0.01 mm\"], [\"1 mm\", \"0.02 mm\"]]\n"),
               ContainsSubstring("rise in diameter"));
    CHECK_THAT(errors_in(start + "[[\"1 mm\", \"0.02 mm\"], [\"2 mm\", \"0.01 mm\"]]\n"),
               ContainsSubstring("must not fall"));
}

TEST_CASE("names that stand for nothing get a suggestion and unknown keys are refused") {
    const std::string shown =
        errors_in(kGrade + "diameter_tolerance = \"EN10270-1\"\ncolour = \"blue\"\nstrength = { Rm = \"2000 MPa\" }\n");
    CHECK_THAT(shown, ContainsSubstring("did you mean \"EN 10270-1\"?"));
    CHECK_THAT(shown, ContainsSubstring("unknown key colour of the first grade"));
}

TEST_CASE("exchanged moduli, a range with one end and another format version are refused") {
    std::string exchanged = kGrade + "strength = { Rm = \"2000 MPa\" }\n";
    exchanged.replace(exchanged.find("81.5 GPa"), 8, "206 GPa ");
    exchanged.replace(exchanged.find("young_modulus = \"206 GPa\""), 25, "young_modulus = \"81.5 GPa\"");
    CHECK_THAT(errors_in(exchanged), ContainsSubstring("exchanged"));
    CHECK_THAT(errors_in(kGrade + "strength = { A = \"2211 MPa\", m = 0.145, range = \"6 mm\" }\n"),
               ContainsSubstring("both ends"));
    CHECK_THAT(errors_in("format_version = 2\n"), ContainsSubstring("reads version 1"));
    CHECK_THAT(errors_in("\n"), ContainsSubstring("format_version is missing"));
}

TEST_CASE("all that is wrong in a wire file is reported in one run") {
    const std::string shown = errors_in(
        kGrade +
        "diameter_tolerance = 3\nstrength = { Rm = \"2000 N\" }\n[[holding]]\ngrade = \"nix\"\ndiameters = []\n");
    CHECK_THAT(shown, ContainsSubstring("diameter_tolerance"));
    CHECK_THAT(shown, ContainsSubstring("strength.Rm"));
    CHECK_THAT(shown, ContainsSubstring("\"nix\""));
}
