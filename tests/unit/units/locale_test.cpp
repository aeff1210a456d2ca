// SPDX-License-Identifier: MIT
// Reading and writing numbers must not care for the locale: with a decimal comma and grouping set for C and C++ alike,
// or for C++ alone where the system has no such locale installed.
#include <clocale>
#include <locale>
#include <sstream>

#include <seatload/core/diagnostic.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/units/band.hpp>
#include <seatload/units/format.hpp>
#include <seatload/units/parse.hpp>

#include "support/check.hpp"

using namespace seatload;
using namespace seatload::units;

namespace {

class CommaNumbers : public std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

class CommaLocale {
  public:
    CommaLocale()
        : c_(std::setlocale(LC_ALL, nullptr)),
          cpp_(std::locale::global(std::locale(std::locale::classic(), new CommaNumbers))) {
        for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "fr_FR.utf8", "de_DE"})
            if (std::setlocale(LC_ALL, name) != nullptr) break;
    }
    CommaLocale(const CommaLocale&) = delete;
    CommaLocale& operator=(const CommaLocale&) = delete;
    ~CommaLocale() {
        std::locale::global(cpp_);
        std::setlocale(LC_ALL, c_.c_str());
    }

  private:
    std::string c_;
    std::locale cpp_;
};

std::string streamed(double value) {
    std::ostringstream stream;
    stream << value;
    return stream.str();
}

}  // namespace

TEST_CASE("the decimal-comma locale of these tests is at work") {
    const CommaLocale locale;
    CHECK(streamed(1234.5) == "1.234,5");
}

TEST_CASE("quantities are read the same under a decimal-comma locale") {
    const CommaLocale locale;
    CHECK(parse<Length>("9.25 mm").value == 9.25 * mm);
    CHECK(parse<Length>("1 1/2 in").value == 38.1 * mm);
    CHECK(parse<Length>("9,25 mm").problem.message == "decimal comma");
    const auto band = parse_band<Force>("5.6 N ±0.7 N");
    REQUIRE(band.value);
    CHECK_THAT(in_newton(*band.value->at_most), WithinRel(6.3, 1e-15));
}

TEST_CASE("quantities are written the same under a decimal-comma locale") {
    const CommaLocale locale;
    CHECK(exact(1234.5 * newton) == "1234.5 N");
    CHECK(shown(1234.56 * newton, 1) == "1234.6 N");
    CHECK(shortest(0.1) == "0.1");
    CHECK(significant(1234.5678, 6) == "1234.57");
    CHECK(grouped(1234567) == "1 234 567");
    Diagnostic d;
    d.place = {"x.toml", 12345, 1};
    d.message = "here";
    CHECK(render({d}) == "x.toml:12345:1: error: here\n");
}

TEST_CASE("the built-in data are read the same under a decimal-comma locale") {
    const auto plain = io::builtin_catalogue().value();
    const auto plain_tolerances = io::builtin_tolerances().value();
    const CommaLocale locale;
    const auto comma = io::builtin_catalogue().value();
    const auto comma_tolerances = io::builtin_tolerances().value();
    REQUIRE(plain.grades.size() == comma.grades.size());
    for (std::size_t i = 0; i < plain.grades.size(); ++i) {
        CHECK(plain.grades[i].density == comma.grades[i].density);
        CHECK(plain.grades[i].shear_modulus_loss_per_kelvin == comma.grades[i].shear_modulus_loss_per_kelvin);
        CHECK(plain.grades[i].relative_cost == comma.grades[i].relative_cost);
    }
    REQUIRE(plain_tolerances.diameter.size() == comma_tolerances.diameter.size());
    for (std::size_t i = 0; i < plain_tolerances.diameter.size(); ++i)
        CHECK(plain_tolerances.diameter[i].plus_minus == comma_tolerances.diameter[i].plus_minus);
}
