// SPDX-License-Identifier: MIT
#include <seatload/io/form.hpp>

#include <cmath>
#include <random>

#include <seatload/core/text.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/demand_forms.hpp>
#include <seatload/io/document.hpp>
#include <seatload/io/reader.hpp>
#include <seatload/io/spring_forms.hpp>
#include <seatload/io/wire_words.hpp>
#include <support/check.hpp>

using namespace seatload;
using namespace seatload::io;

namespace {

/// The value read back from the TOML text that a form writes.
template <class T>
T read_back(const T& value) {
    Document document("x = " + Form<T>::write(value), "x.toml");
    Reader reader(document);
    const auto read = reader.find<T>("x");
    INFO(Form<T>::write(value));
    REQUIRE(read.has_value());
    return *read;
}

template <class T>
std::string problem_of(const std::string& toml) {
    Document document("x = " + toml, "x.toml");
    Reader reader(document);
    reader.find<T>("x");
    const Diagnostics found = document.diagnostics();
    return found.empty() ? std::string{} : found.front().message;
}

template <class T>
T value_of(const std::string& toml) {
    Document document("x = " + toml, "x.toml");
    Reader reader(document);
    const auto value = reader.find<T>("x");
    REQUIRE(value.has_value());
    return *value;
}

template <Quantity Q>
void check_exact(const Q& quantity) {
    CHECK(base_number(read_back(quantity)) == base_number(quantity));
}

/// Numbers in every unit of a dimension, as a user may write them.
template <Quantity Q>
void check_exact_in_every_unit(double number) {
    for (const units::UnitSize& unit : units::dimension_of<Q>().units)
        check_exact(value_of<Q>(quoted_text(shortest(number) + " " + std::string(unit.name))));
}

}  // namespace

TEST_CASE("Quantities read from a file are written so that they read back to the last bit") {
    std::mt19937_64 random(20261125);
    for (int i = 0; i < 200; ++i) {
        const double number = std::exp(std::uniform_real_distribution<double>(-8.0, 8.0)(random));
        check_exact_in_every_unit<Length>(number);
        check_exact_in_every_unit<Force>(number);
        check_exact_in_every_unit<Stress>(number);
        check_exact_in_every_unit<Rate>(number);
        check_exact_in_every_unit<Frequency>(number);
        check_exact_in_every_unit<Angle>(number);
        check_exact_in_every_unit<Celsius>(number);
        check_exact_in_every_unit<Mass>(number);
        check_exact_in_every_unit<Density>(number);
    }
}

TEST_CASE("Computed lengths, forces, stresses and rates are written so that they read back to the last bit") {
    for (int i = 1; i < 500; ++i) {
        check_exact(7.0 / i * mm);
        check_exact(11.0 / i * newton);
        check_exact(1900.0 / i * MPa);
        check_exact(1.3 / i * newton_per_mm);
    }
}

TEST_CASE("Plain numbers, shares, texts and flags read back to the same value") {
    for (const double number : {0.0, 1.0, 0.1, -2.5e-7, 1e22, 1e300, 56.0 / 100.0}) {
        CHECK(read_back(number) == number);
        CHECK(read_back(Share{number}).value == number);
    }
    for (const std::string text : {"", "plain", "a \"quoted\" \\ back", "two\nlines\tand a tab", "±0,5 µm", "\x01\x7f"})
        CHECK(read_back(text) == text);
    CHECK(read_back(true));
    CHECK(read_back(-7) == -7);
}

TEST_CASE("Every word of the closed lists reads back to its value") {
    for (const auto& word : Form<demand::Seats>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<demand::StressLength>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<demand::StressFactor>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<demand::GapRule>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<demand::SolidForm>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<demand::GrowthForm>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<demand::FatigueLine>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<spring::Ends>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<spring::Hand>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<spring::School>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<wire::Family>::kWords) CHECK(read_back(word.value) == word.value);
    for (const auto& word : Form<wire::Evidence>::kWords) CHECK(read_back(word.value) == word.value);
}

TEST_CASE("Words are taken in any case and the nearest one is offered") {
    CHECK(value_of<spring::Ends>("\"Closed and Ground\"") == spring::Ends::closed_ground);
    CHECK_THAT(problem_of<spring::Ends>("\"closed and grund\""), ContainsSubstring("not one of the words"));
}

TEST_CASE("A bore is one size, a size with tolerances, or two limits") {
    const auto check = [](const std::string& toml, double smallest, double largest, double nominal) {
        const auto fit = value_of<demand::Fit>(toml);
        CHECK(in_mm(fit.smallest) == smallest);
        CHECK(in_mm(fit.largest) == largest);
        CHECK(in_mm(fit.nominal) == nominal);
        const auto again = read_back(fit);
        CHECK(again.smallest == fit.smallest);
        CHECK(again.largest == fit.largest);
        CHECK(again.nominal == fit.nominal);
    };
    check("\"9.00 mm\"", 9.0, 9.0, 9.0);
    check("\"9.00 mm +0.05 mm\"", 9.0, 9.0 + 0.05, 9.0);
    check("\"9.00 mm +0.05 mm -0.02 mm\"", 9.0 - 0.02, 9.0 + 0.05, 9.0);
    check("\"9.00 mm ±0.03 mm\"", 9.0 - 0.03, 9.0 + 0.03, 9.0);
    check("\"9.00 mm .. 9.05 mm\"", 9.0, 9.05, 9.0);
    check("\"4 mm -0.02 mm\"", 4.0 - 0.02, 4.0, 4.0);
    CHECK_THAT(problem_of<demand::Fit>("\"at most 9 mm\""), ContainsSubstring("both limits"));
}

TEST_CASE("A load is a band, a value with a tolerance, or a bound") {
    const auto band = value_of<demand::LoadBand>("\"4.8 N .. 6.5 N\"");
    CHECK(in_newton(*band.at_least) == 4.8);
    CHECK(in_newton(*band.at_most) == 6.5);
    const auto within = value_of<demand::LoadBand>("\"5 N ±10 %\"");
    CHECK_THAT(in_newton(*within.at_least), WithinRel(4.5, 1e-12));
    CHECK_THAT(in_newton(*within.at_most), WithinRel(5.5, 1e-12));
    CHECK_FALSE(value_of<demand::LoadBand>("\"at least 4.8 N\"").at_most.has_value());
    CHECK_FALSE(value_of<demand::LoadBand>("\"at most 13.5 N\"").at_least.has_value());
    for (const std::string toml : {"\"4.8 N .. 6.5 N\"", "\"at least 4.8 N\"", "\"at most 13.5 N\""}) {
        const auto read = value_of<demand::LoadBand>(toml);
        CHECK(read_back(read).at_least == read.at_least);
        CHECK(read_back(read).at_most == read.at_most);
    }
}

TEST_CASE("A range of counts needs two plain numbers") {
    CHECK(value_of<demand::CountRange>("\"5 .. 12.5\"").largest == 12.5);
    for (const std::string toml :
         {"\"5\"", "\"5 .. x\"", "\"5,5 .. 6\"", "\".. 6\"", "5", "\"7 .. 6\"", "\"1 .. inf\""}) {
        CAPTURE(toml);
        CHECK_FALSE(problem_of<demand::CountRange>(toml).empty());
    }
}

TEST_CASE("A stress share is a number, per cent, or the torsional yield of the wire") {
    CHECK(value_of<StressShare>("0.56").of_tensile == 0.56);
    CHECK_THAT(*value_of<StressShare>("\"56 %\"").of_tensile, WithinRel(0.56, 1e-15));
    CHECK_FALSE(value_of<StressShare>("\"torsional yield\"").of_tensile.has_value());
    CHECK_FALSE(read_back(StressShare{}).of_tensile.has_value());
}

TEST_CASE("A date is text or TOML's own, and stands in the calendar") {
    CHECK(value_of<DateText>("\"2026-11-25\"").iso == "2026-11-25");
    CHECK(value_of<DateText>("2026-11-25").iso == "2026-11-25");
    CHECK(value_of<DateText>("\"2028-02-29\"").iso == "2028-02-29");
    for (const std::string toml : {"\"2026-02-29\"", "\"2026-13-01\"", "\"26-1-1\"", "\"2026-11-25x\"", "\"\"",
                                   "20261125", "2026-11-25T10:00:00", "\"2026-11-00\"", "\"+026-11-01\""}) {
        CAPTURE(toml);
        CHECK_FALSE(problem_of<DateText>(toml).empty());
    }
}

TEST_CASE("Numbers that are not finite or too large are refused") {
    CHECK_FALSE(problem_of<double>("inf").empty());
    CHECK_FALSE(problem_of<double>("nan").empty());
    CHECK_FALSE(problem_of<int>("9223372036854775807").empty());
    CHECK_FALSE(problem_of<int>("1.5").empty());
    CHECK_FALSE(problem_of<Length>("\"inf mm\"").empty());
    CHECK_FALSE(problem_of<Length>("\"1e999 mm\"").empty());
    CHECK_FALSE(problem_of<Share>("\"5\"").empty());
}

TEST_CASE("A large number is written out in digits, as people write it, and reads back") {
    CHECK(Form<double>::write(5e6) == "5000000");
    CHECK(Form<double>::write(-2e9) == "-2000000000");
    CHECK(Form<double>::write(1e20) == "1e+20");
    CHECK(Form<double>::write(1e-7) == "1e-07");
    CHECK(Form<double>::write(0.145) == "0.145");
    CHECK(Form<double>::write(12.0) == "12.0");
    CHECK(read_back(5e6) == 5e6);
}
