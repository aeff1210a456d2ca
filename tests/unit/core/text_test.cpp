// SPDX-License-Identifier: MIT
#include <cmath>
#include <limits>
#include <random>

#include <seatload/core/text.hpp>

#include "support/check.hpp"

using namespace seatload;

namespace {

std::string text_of(std::initializer_list<int> bytes) {
    std::string text;
    for (const int byte : bytes) text += static_cast<char>(byte);
    return text;
}

}  // namespace

TEST_CASE("trim takes blanks and tabs off both ends only") {
    CHECK(trim("  a b\t") == "a b");
    CHECK(trim("\t \r") == "");
    CHECK(trim("") == "");
    CHECK(trim("a") == "a");
}

TEST_CASE("split keeps empty pieces and join puts them back") {
    const auto pieces = split("a,,b,", ',');
    CHECK(pieces == std::vector<std::string_view>{"a", "", "b", ""});
    CHECK(split("", ',') == std::vector<std::string_view>{""});
    const std::vector<std::string> owned(pieces.begin(), pieces.end());
    CHECK(join(owned, ",") == "a,,b,");
    CHECK(join({}, ", ") == "");
}

TEST_CASE("well-formed UTF-8 is passed") {
    // One example of each length and each edge of RFC 3629, section 4.
    for (const char* good : {"", "plain", "\x7f", "\u0080", "\u07ff", "\u0800", "\ud7ff", "\ue000", "\uffff",
                             "\U00010000", "\U0010ffff", "τ = ±9 µm"}) {
        INFO(good);
        CHECK_FALSE(first_invalid_utf8(good));
    }
}

TEST_CASE("malformed UTF-8 is found where it starts") {
    // RFC 3629, section 3 and 10: stray tails, cut sequences, overlong forms, surrogates, beyond U+10FFFF.
    const std::vector<std::string> bad{text_of({0x80}),
                                       text_of({0xC2}),
                                       text_of({0xC0, 0x80}),
                                       text_of({0xC1, 0xBF}),
                                       text_of({0xE0, 0x9F, 0xBF}),
                                       text_of({0xE2, 0x82}),
                                       text_of({0xED, 0xA0, 0x80}),
                                       text_of({0xED, 0xBF, 0xBF}),
                                       text_of({0xF0, 0x8F, 0xBF, 0xBF}),
                                       text_of({0xF0, 0x9F, 0x98}),
                                       text_of({0xF4, 0x90, 0x80, 0x80}),
                                       text_of({0xF5, 0x80, 0x80, 0x80}),
                                       text_of({0xFE}),
                                       text_of({0xFF}),
                                       text_of({0xC2, 0x41}),
                                       text_of({0xE2, 0x28, 0xA1})};
    for (const std::string& bytes : bad) {
        CHECK(first_invalid_utf8(bytes) == 0u);
        CHECK(first_invalid_utf8("ab" + bytes) == 2u);
        CHECK(first_invalid_utf8("µ" + bytes + "z") == 2u);
    }
}

TEST_CASE("code points are cut and counted, stray bytes alone") {
    CHECK(code_points("aµ€\U0001F600") == std::vector<std::string>{"a", "µ", "€", "\U0001F600"});
    CHECK(code_points(text_of({'a', 0xFF, 'b'})).size() == 3);
    CHECK(length_in_code_points("±10 %") == 5);
    CHECK(length_in_code_points("") == 0);
}

TEST_CASE("edit distance counts single slips") {
    CHECK(edit_distance("", "") == 0);
    CHECK(edit_distance("", "abc") == 3);
    CHECK(edit_distance("kitten", "sitting") == 3);  // V. I. Levenshtein's measure, the usual textbook pair
    CHECK(edit_distance("lenght", "length") == 1);   // neighbours swapped
    CHECK(edit_distance("ca", "abc") == 3);  // optimal string alignment, not the unrestricted Damerau distance of 2
    CHECK(edit_distance("bore", "bore") == 0);
}

TEST_CASE("edit distance is symmetric and at most the longer length") {
    constexpr unsigned kSeed = 20261;
    CAPTURE(kSeed);
    std::mt19937 random(kSeed);
    const auto word = [&] {
        std::string text(random() % 9, 'a');
        for (char& c : text) c = static_cast<char>('a' + random() % 3);
        return text;
    };
    for (int i = 0; i < 2000; ++i) {
        const std::string a = word();
        const std::string b = word();
        CAPTURE(a, b);
        const std::size_t distance = edit_distance(a, b);
        REQUIRE(distance == edit_distance(b, a));
        REQUIRE(distance <= std::max(a.size(), b.size()));
        REQUIRE((distance == 0) == (a == b));
    }
}

TEST_CASE("the nearest candidate is offered only when it is near") {
    const std::vector<std::string> keys{"bore", "rod", "length", "seated_height"};
    CHECK(nearest("lenght", keys) == "length");
    CHECK(nearest("BORE", keys) == "bore");
    CHECK(nearest("seated_hieght", keys) == "seated_height");
    CHECK_FALSE(nearest("xyz", keys));
    CHECK_FALSE(nearest("ro", std::vector<std::string>{"rd"}));  // half the word is too much
    CHECK_FALSE(nearest(std::string(65, 'a'), std::vector<std::string>{std::string(65, 'a')}));
    CHECK(nearest("bord", std::vector<std::string>{"bore", "bard"}) == "bore");  // of equal distances the earlier
    CHECK(did_you_mean("lenght", keys) == "did you mean \"length\"?");
    CHECK(did_you_mean("xyz", keys) == "");
}

TEST_CASE("lower changes ASCII letters only") { CHECK(lower("MPa µ Ä") == "mpa µ Ä"); }

TEST_CASE("shortest reads back to the same number") {
    CHECK(shortest(3.2) == "3.2");
    CHECK(shortest(0.1 + 0.2) == "0.30000000000000004");
    constexpr unsigned kSeed = 20262;
    CAPTURE(kSeed);
    std::mt19937_64 random(kSeed);
    for (int i = 0; i < 20000; ++i) {
        const double value = std::ldexp(static_cast<double>(random()), static_cast<int>(random() % 400) - 250);
        REQUIRE(std::stod(shortest(value)) == value);
    }
}

TEST_CASE("fixed has so many decimals and no minus zero") {
    CHECK(fixed(1.005, 2) == "1.00");  // 1.005 is below the tie in binary
    CHECK(fixed(0.125, 2) == "0.12");  // a true tie goes to the even digit
    CHECK(fixed(-0.001, 2) == "0.00");
    CHECK(fixed(-0.0, 0) == "0");
    CHECK(fixed(-0.006, 2) == "-0.01");
    CHECK(fixed(1e15, 1) == "1000000000000000.0");
    CHECK(fixed(std::numeric_limits<double>::infinity(), 2) == "inf");
    CHECK(fixed(-std::numeric_limits<double>::infinity(), 2) == "-inf");
    CHECK(fixed(1.7976931348623157e308, 3).size() == 309 + 4);
}

TEST_CASE("significant rounds to digits and drops trailing zeros after the point") {
    CHECK(significant(1234.5678, 6) == "1234.57");
    CHECK(significant(0.00123456, 3) == "0.00123");
    CHECK(significant(2.5, 6) == "2.5");
    CHECK(significant(100.0, 6) == "100");
    CHECK(significant(9.9996, 4) == "10");
    CHECK(significant(-9.81, 2) == "-9.8");
    CHECK(significant(0.0, 6) == "0");
    CHECK(significant(-0.0, 6) == "0");
}

TEST_CASE("significant rounds digits before the point as well") {
    // Rounding half to even does not arise: none of these is a tie.
    CHECK(significant(1234.0, 3) == "1230");
    CHECK(significant(123456.7, 4) == "123500");
    CHECK(significant(99960.0, 3) == "100000");
    CHECK(significant(-98765.0, 2) == "-99000");
    CHECK(significant(2000000.0, 1) == "2000000");
}

TEST_CASE("grouped puts a blank between groups of three") {
    CHECK(grouped(0) == "0");
    CHECK(grouped(999) == "999");
    CHECK(grouped(1000) == "1 000");
    CHECK(grouped(12345678) == "12 345 678");
    CHECK(grouped(18446744073709551615ull) == "18 446 744 073 709 551 615");
}
