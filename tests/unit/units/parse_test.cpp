// SPDX-License-Identifier: MIT
#include <algorithm>
#include <numbers>

#include <seatload/units/parse.hpp>

#include "support/check.hpp"

using namespace seatload;
using namespace seatload::units;

namespace {

template <class Q>
double number(const std::string& text) {
    const Parsed<double> parsed = parse_in(dimension_of<Q>(), text);
    INFO(text << ": " << parsed.problem.message);
    REQUIRE(parsed.value);
    return *parsed.value;
}

template <class Q>
Problem problem(const std::string& text) {
    const Parsed<double> parsed = parse_in(dimension_of<Q>(), text);
    INFO(text);
    REQUIRE_FALSE(parsed.value);
    return parsed.problem;
}

template <class Q>
void check_problem(const std::string& text, const std::string& message, const std::string& hint, std::size_t offset) {
    const Problem found = problem<Q>(text);
    INFO(text);
    CHECK(found.message == message);
    CHECK(found.hint == hint);
    CHECK(found.offset == offset);
}

const std::string kLengthHint = "write a length with its unit, such as \"9 mm\"";

}  // namespace

TEST_CASE("lengths have the factors of the 1959 yard and pound agreement") {
    CHECK(number<Length>("9.00 mm") == 9.0);
    CHECK(number<Length>("0.9 cm") == 9.0);
    CHECK(number<Length>("0.009 m") == 9.0);
    CHECK(number<Length>("1 in") == 25.4);
    CHECK(number<Length>("1.5 in") == 38.1);
    CHECK(number<Length>("0.354 in") == 8.9916);
    CHECK(number<Length>("1 thou") == 0.0254);
    CHECK(number<Length>("354 thou") == 8.9916);
}

TEST_CASE("fractions of an inch are read") {
    CHECK(number<Length>("1/4 in") == 6.35);
    CHECK(number<Length>("1 1/2 in") == 38.1);
    CHECK(number<Length>("-1 1/2 in") == -38.1);
    CHECK(number<Length>("3/8in") == 9.525);
    CHECK(number<Length>("63/64 in") == 25.003125);
}

TEST_CASE("forces have the factors of standard gravity") {
    // 9.80665 m/s2 exactly (3rd CGPM, 1901); lb = 0.45359237 kg exactly (1959).
    CHECK(number<Force>("5.6 N") == 5.6);
    CHECK(number<Force>("2 kN") == 2000.0);
    CHECK(number<Force>("1 gf") == 0.00980665);
    CHECK(number<Force>("1 kgf") == 9.80665);
    CHECK(number<Force>("1 lbf") == 4.4482216152605);
    CHECK(number<Force>("16 ozf") == 4.4482216152605);
}

TEST_CASE("rates are a force unit over a length unit") {
    CHECK(number<Rate>("1.2 N/mm") == 1.2);
    CHECK_THAT(number<Rate>("1 gf/mm"), WithinRel(0.00980665, 1e-15));
    CHECK_THAT(number<Rate>("1 lbf/in"), WithinRel(4.4482216152605 / 25.4, 1e-15));
}

TEST_CASE("stresses come out in megapascal") {
    CHECK(number<Stress>("1900 MPa") == 1900.0);
    CHECK(number<Stress>("81.5 GPa") == 81500.0);
    CHECK(number<Stress>("250 bar") == 25.0);
    CHECK(number<Stress>("500 kPa") == 0.5);
    CHECK(number<Stress>("7 N/mm2") == 7.0);
    CHECK(number<Stress>("7 N/mm²") == 7.0);
    CHECK_THAT(number<Stress>("1 psi"), WithinRel(4.4482216152605 / (25.4 * 25.4), 1e-15));
    CHECK_THAT(number<Stress>("1 ksi"), WithinRel(1000.0 * 4.4482216152605 / (25.4 * 25.4), 1e-15));
    CHECK_THAT(number<Stress>("11.5 Mpsi"), WithinRel(11.5e6 * 4.4482216152605 / (25.4 * 25.4), 1e-15));
}

TEST_CASE("angles, masses, densities, frequencies, shares") {
    CHECK(number<Angle>("180 deg") == std::numbers::pi);
    CHECK(number<Angle>("90°") == std::numbers::pi / 2.0);
    CHECK(number<Angle>("1 rad") == 1.0);
    CHECK(number<Mass>("2.5 g") == 2.5e-6);
    CHECK(number<Mass>("1 kg") == 1e-3);
    CHECK(number<Mass>("1 lb") == 0.45359237e-3);
    CHECK_THAT(number<Mass>("16 oz"), WithinRel(0.45359237e-3, 1e-15));
    CHECK(number<Density>("7850 kg/m3") == 7850e-12);
    CHECK(number<Density>("7850 kg/m³") == 7850e-12);
    CHECK_THAT(number<Density>("7.85 kg/dm3"), WithinRel(7850e-12, 1e-15));
    CHECK_THAT(number<Density>("7.85 kg/dm³"), WithinRel(7850e-12, 1e-15));
    CHECK_THAT(number<Density>("7.85 g/cm3"), WithinRel(7850e-12, 1e-15));
    CHECK_THAT(number<Density>("7.85 g/cm³"), WithinRel(7850e-12, 1e-15));
    CHECK_THAT(number<Density>("1 lb/in3"), WithinRel(0.45359237e-3 / (25.4 * 25.4 * 25.4), 1e-15));
    CHECK(number<Frequency>("25 Hz") == 25.0);
    CHECK(number<Share>("15 %") == 0.15);
}

TEST_CASE("temperatures are read on three scales") {
    CHECK(number<Celsius>("120 °C") == 120.0);
    CHECK_THAT(number<Celsius>("293.15 K"), WithinAbs(20.0, 1e-12));
    CHECK_THAT(number<Celsius>("248 °F"), WithinAbs(120.0, 1e-12));
    CHECK_THAT(number<Celsius>("-40 °F"), WithinAbs(-40.0, 1e-12));
    CHECK_THAT(number<Celsius>("32 °F"), WithinAbs(0.0, 1e-12));
}

TEST_CASE("numbers are written in many ways") {
    CHECK(number<Length>("9mm") == 9.0);
    CHECK(number<Length>("  9   mm  ") == 9.0);
    CHECK(number<Length>("+9 mm") == 9.0);
    CHECK(number<Length>("-9 mm") == -9.0);
    CHECK(number<Length>(".5 mm") == 0.5);
    CHECK(number<Length>("5. mm") == 5.0);
    CHECK(number<Length>("9e-1 mm") == 0.9);
    CHECK(number<Length>("9E0 mm") == 9.0);
}

TEST_CASE("a text without a number is refused") {
    check_problem<Length>("", "empty text", kLengthHint, 0);
    check_problem<Length>("   ", "empty text", kLengthHint, 0);
    for (const char* text : {"mm", "inf mm", "nan mm", "-inf mm", "½ in", "+-5 mm", "--5 mm", "- 5 mm", "e5 mm", ". mm",
                             "-. mm", ",5 mm", "ten mm"}) {
        INFO(text);
        CHECK(problem<Length>(text).message == "no number where one should start");
        CHECK(problem<Length>(text).hint == kLengthHint);
    }
}

TEST_CASE("a decimal comma is refused with the text mended") {
    check_problem<Length>("9,5 mm", "decimal comma", "write a decimal point: \"9.5 mm\"", 1);
    check_problem<Force>("  4,80 N", "decimal comma", "write a decimal point: \"4.80 N\"", 3);
}

TEST_CASE("a bare number is refused with a unit to write") {
    check_problem<Length>("9", "the number has no unit", "write for example \"9 mm\"", 1);
    check_problem<Force>("4.80", "the number has no unit", "write for example \"4.80 N\"", 4);
    check_problem<Length>("1 1/2", "the number has no unit", "write for example \"1 1/2 mm\"", 1);
    check_problem<Share>("0.15", "the number has no unit", "write for example \"0.15 %\"", 4);
}

TEST_CASE("an unknown unit is refused with the units there are") {
    check_problem<Length>("9 thuo", "unknown unit \"thuo\"",
                          "did you mean \"thou\"? units of a length: mm, cm, m, in, thou", 2);
    check_problem<Length>("9 MM", "unknown unit \"MM\"", "did you mean \"mm\"? units of a length: mm, cm, m, in, thou",
                          2);
    check_problem<Length>("9 furlongs", "unknown unit \"furlongs\"", "units of a length: mm, cm, m, in, thou", 2);
    check_problem<Length>("9 mm extra", "unknown unit \"mm extra\"", "units of a length: mm, cm, m, in, thou", 2);
    check_problem<Length>("0x10 mm", "unknown unit \"x10 mm\"", "units of a length: mm, cm, m, in, thou", 1);
    check_problem<Stress>("9 mpa", "unknown unit \"mpa\"",
                          "did you mean \"MPa\"? units of a stress: MPa, GPa, bar, kPa, N/mm2, N/mm², psi, ksi, Mpsi",
                          2);
    check_problem<Frequency>("9 rpm", "unknown unit \"rpm\"", "units of a frequency: Hz", 2);
}

TEST_CASE("a unit of another dimension is refused with both dimensions named") {
    check_problem<Length>("9 N", "\"N\" is a force, a length is wanted", kLengthHint, 2);
    check_problem<Force>("9 mm", "\"mm\" is a length, a force is wanted",
                         "write a force with its unit, such as \"5.6 N\"", 2);
    check_problem<Force>("9 N/mm", "\"N/mm\" is a spring rate, a force is wanted",
                         "write a force with its unit, such as \"5.6 N\"", 2);
    check_problem<Length>("9 g", "\"g\" is a mass, a length is wanted", kLengthHint, 2);
    check_problem<Stress>("120 °C", "\"°C\" is a temperature, a stress is wanted",
                          "write a stress with its unit, such as \"1900 MPa\"", 4);
    check_problem<Celsius>("15 %", "\"%\" is a share, a temperature is wanted",
                           "write a temperature with its unit, such as \"120 °C\"", 3);
}

TEST_CASE("a mass for a force is refused with the force to write") {
    const std::string says = "the pull of that mass under standard gravity is written ";
    check_problem<Force>("500 g", "\"g\" is a mass, a force is wanted", says + "\"500 gf\"", 4);
    check_problem<Force>("0.5 kg", "\"kg\" is a mass, a force is wanted", says + "\"0.5 kgf\"", 4);
    check_problem<Force>("1.25 lb", "\"lb\" is a mass, a force is wanted", says + "\"1.25 lbf\"", 5);
    check_problem<Force>("1 1/2 oz", "\"oz\" is a mass, a force is wanted", says + "\"1 1/2 ozf\"", 6);
}

TEST_CASE("a kinematic viscosity is refused with the way to the dynamic one") {
    const std::string hint =
        "times the density in g/cm3 it is mPa s: of an oil of 0.88 g/cm3, 100 cSt are \"88 mPa s\"";
    check_problem<Viscosity>("600 cSt", "\"cSt\" is a kinematic viscosity, a dynamic viscosity is wanted", hint, 4);
    check_problem<Viscosity>("600 mm2/s", "\"mm2/s\" is a kinematic viscosity, a dynamic viscosity is wanted", hint, 4);
}

TEST_CASE("what is no fraction is refused") {
    const std::string hint = "a fraction is written \"1/4 in\" or \"1 1/2 in\"";
    for (const char* text : {"1/0 in", "1/ in", "1/-4 in", "1 1 in", "1 1/ in", "1 1/0 in", "1/x in"}) {
        INFO(text);
        CHECK(problem<Length>(text).message == "not a fraction");
        CHECK(problem<Length>(text).hint == hint);
        CHECK(problem<Length>(text).offset == 1);
    }
}

TEST_CASE("numbers no double holds, nor its powers, are refused") {
    CHECK(problem<Length>("1e400 mm").message == "the number is too large or too small to be held");
    CHECK(problem<Length>("1e-400 mm").message == "the number is too large or too small to be held");
    CHECK(problem<Length>(std::string(400, '9') + " mm").message == "the number is too large or too small to be held");
    CHECK(problem<Length>("1e41 m").message == "the number is too large or too small to be held");
    CHECK(problem<Length>("-1e-61 mm").message == "the number is too large or too small to be held");
    CHECK(number<Length>("1e40 mm") == 1e40);
    CHECK(number<Length>("1e-60 mm") == 1e-60);
}

TEST_CASE("offsets count code points, not bytes") {
    CHECK(problem<Celsius>("120 °X").offset == 4);
    CHECK(problem<Length>("\t9 N").offset == 3);
}

TEST_CASE("every alias of the quantities is parsed as its own type") {
    CHECK(parse<Length>("1 in").value == 25.4 * mm);
    CHECK(parse<Force>("1 kgf").value == 9.80665 * newton);
    CHECK(parse<Rate>("2 N/mm").value == 2.0 * newton_per_mm);
    CHECK(parse<Stress>("2 GPa").value == 2000.0 * MPa);
    CHECK(parse<Angle>("2 rad").value == 2.0 * radian);
    CHECK(parse<Mass>("3 g").value == 3.0 * gram);
    CHECK_THAT(in_kg_per_m3(parse<Density>("7850 kg/m3").value.value()), WithinRel(7850.0, 1e-15));
    CHECK(parse<Frequency>("3 Hz").value == 3.0 * hertz);
    CHECK(parse<Celsius>("3 °C").value == Celsius{3.0});
    CHECK(parse<Share>("3 %").value == Share{0.03});
    CHECK_FALSE(parse<Length>("1 N").value);
}

TEST_CASE("no two dimensions share a unit, so that a misplaced one names its dimension") {
    std::vector<std::string_view> seen;
    for (const Dimension* dimension : all_dimensions())
        for (const UnitSize& unit : dimension->units) {
            INFO(unit.name);
            CHECK(std::find(seen.begin(), seen.end(), unit.name) == seen.end());
            seen.push_back(unit.name);
        }
    CHECK(seen.size() == 60);
}

TEST_CASE("the example of every dimension is read by it") {
    for (const Dimension* dimension : all_dimensions()) {
        INFO(dimension->article_and_name);
        CHECK(parse_in(*dimension, dimension->example).value);
    }
}
