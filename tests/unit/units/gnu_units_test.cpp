// SPDX-License-Identifier: MIT
// Every unit factor against GNU units, run as a program (Debian package "units"; the README's second command installs
// it).
#include <array>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <memory>

#include <seatload/units/parse.hpp>

#include "support/check.hpp"

using namespace seatload;
using namespace seatload::units;

namespace {

/// What GNU units calls our units where the names differ.
const std::map<std::string, std::string, std::less<>> kNames{{"gf", "gram force"},
                                                             {"kgf", "kilogram force"},
                                                             {"ozf", "ounce force"},
                                                             {"gf/mm", "gram force/mm"},
                                                             {"N/mm2", "N/mm^2"},
                                                             {"N/mm²", "N/mm^2"},
                                                             {"Mpsi", "1e6 psi"},
                                                             {"rad", "radian"},
                                                             {"°", "degree"},
                                                             {"deg", "degree"},
                                                             {"kg/m3", "kg/m^3"},
                                                             {"kg/m³", "kg/m^3"},
                                                             {"kg/dm3", "kg/dm^3"},
                                                             {"kg/dm³", "kg/dm^3"},
                                                             {"g/cm3", "g/cm^3"},
                                                             {"g/cm³", "g/cm^3"},
                                                             {"lb/in3", "lb/in^3"},
                                                             {"mm2", "mm^2"},
                                                             {"mm²", "mm^2"},
                                                             {"cm2", "cm^2"},
                                                             {"cm²", "cm^2"},
                                                             {"in2", "in^2"},
                                                             {"in²", "in^2"},
                                                             {"Nm", "N m"},
                                                             {"Nmm", "N mm"},
                                                             {"%", "percent"},
                                                             {"t", "tonne"},
                                                             {"t/mm3", "tonne/mm^3"},
                                                             {"", "1"}};

std::string gnu_name(std::string_view unit) {
    const auto found = kNames.find(unit);
    return found == kNames.end() ? std::string(unit) : found->second;
}

/// What the program prints, or an empty text when it is missing or fails.
std::string run_units(const std::string& arguments) {
    const std::string command = "LC_ALL=C units -o %.17g -t " + arguments + " 2>/dev/null";
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> pipe(::popen(command.c_str(), "r"), ::pclose);
    std::string text;
    std::array<char, 200> buffer{};
    while (pipe && std::fgets(buffer.data(), buffer.size(), pipe.get()) != nullptr) text += buffer.data();
    return text;
}

double gnu_units(const std::string& from, const std::string& to) {
    const std::string text = run_units("'" + from + "' '" + to + "'");
    INFO("units -o %.17g -t '" << from << "' '" << to << "' printed: " << text);
    char* end = nullptr;
    const double value = std::strtod(text.c_str(), &end);
    REQUIRE(end != text.c_str());
    REQUIRE(std::string(end) == "\n");  // one number and nothing else
    return value;
}

void require_program() {
    if (run_units("'1 in' mm").empty())
        FAIL("GNU units is not installed, so no unit factor can be checked: apt-get install units");
}

constexpr double kLastBits = 1e-14;  // both sides multiply a few doubles

}  // namespace

TEST_CASE("every unit factor agrees with GNU units") {
    require_program();
    int checked = 0;
    for (const Dimension* dimension : all_dimensions()) {
        if (dimension == &dimension_of<Celsius>()) continue;
        for (const UnitSize& unit : dimension->units) {
            const double theirs = gnu_units("1 " + gnu_name(unit.name), gnu_name(dimension->base_unit));
            const double ours = *parse_in(*dimension, "1 " + std::string(unit.name)).value;
            INFO(unit.name);
            CHECK_THAT(ours, WithinRel(theirs, kLastBits));
            ++checked;
        }
    }
    CHECK(checked == 57);
}

TEST_CASE("temperatures agree with GNU units") {
    require_program();
    const auto check = [](const std::string& ours, const std::string& theirs) {
        INFO(ours);
        CHECK_THAT(*parse_in(dimension_of<Celsius>(), ours).value, WithinAbs(gnu_units(theirs, "tempC"), 1e-9));
    };
    for (const char* number : {"-459", "-40", "0", "32", "68", "212", "500"})
        check(std::string(number) + " °F", "tempF(" + std::string(number) + ")");
    for (const char* number : {"0", "273.15", "293.15", "1000"})
        check(std::string(number) + " K", "tempK(" + std::string(number) + ")");
    check("120 °C", "tempC(120)");
}
