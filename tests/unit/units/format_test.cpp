// SPDX-License-Identifier: MIT
#include <cmath>
#include <random>

#include <seatload/units/format.hpp>
#include <seatload/units/parse.hpp>

#include "support/check.hpp"

using namespace seatload;
using namespace seatload::units;

namespace {

constexpr unsigned kSeed = 20263;
constexpr int kValues = 20000;

/// Numbers of every size a drawing, a test or a slip may bring, of both signs.
class Numbers {
  public:
    double next() {
        const double size = std::ldexp(1.0 + static_cast<double>(random_() >> 11) * 0x1p-53,
                                       static_cast<int>(random_() % 240) - 120);  // well within what may be written
        return random_() % 2 == 0 ? size : -size;
    }

  private:
    std::mt19937_64 random_{kSeed};
};

template <class Q>
void check_reads_back() {
    CAPTURE(kSeed);
    Numbers numbers;
    for (int i = 0; i < kValues; ++i) {
        const Q quantity = from_base<Q>(numbers.next());
        const std::string text = exact(quantity);
        const auto parsed = parse<Q>(text);
        INFO(text);
        REQUIRE(parsed.value);
        REQUIRE(*parsed.value == quantity);
    }
}

}  // namespace

TEST_CASE("an exact length reads back to the same number") { check_reads_back<Length>(); }
TEST_CASE("an exact force reads back to the same number") { check_reads_back<Force>(); }
TEST_CASE("an exact stress reads back to the same number") { check_reads_back<Stress>(); }
TEST_CASE("an exact rate reads back to the same number") { check_reads_back<Rate>(); }
TEST_CASE("an exact frequency reads back to the same number") { check_reads_back<Frequency>(); }

TEST_CASE("an exact temperature reads back to the same number") {
    CAPTURE(kSeed);
    Numbers numbers;
    for (int i = 0; i < kValues; ++i) {
        const Celsius temperature{numbers.next()};
        REQUIRE(parse<Celsius>(exact(temperature)).value == temperature);
    }
}

TEST_CASE("round millimetres stay round in a file") {
    for (int i = 1; i <= 100000; ++i) {
        const std::string text = shortest(i / 1000.0) + " mm";
        REQUIRE(exact(*parse<Length>(text).value) == text);
    }
}

TEST_CASE("quantities are shown with a fixed count of decimals") {
    CHECK(shown(9.0 * mm, 2) == "9.00 mm");
    CHECK(shown(4.8449 * newton, 2) == "4.84 N");
    CHECK(shown(1030.4 * MPa, 0) == "1030 MPa");
    CHECK(shown(1.3142 * newton_per_mm, 3) == "1.314 N/mm");
    CHECK(shown(35.7329 * gram, 1) == "35.7 g");
    CHECK(shown(290.559 * hertz, 0) == "291 Hz");
    CHECK(shown(Share{0.084}, 1) == "8.4 %");
    CHECK(shown(Celsius{120.0}) == "120 °C");
    CHECK(shown(-0.001 * newton, 1) == "0.0 N");
}

TEST_CASE("a wire diameter shows two decimals, and three only when it has them") {
    CHECK(shown_wire(0.8 * mm) == "0.80 mm");
    CHECK(shown_wire(3.0 * mm) == "3.00 mm");
    CHECK(shown_wire(0.737 * mm) == "0.737 mm");
    CHECK(shown_wire(2.286 * mm) == "2.286 mm");
    CHECK(shown_wire(12.5 * mm) == "12.50 mm");
}
