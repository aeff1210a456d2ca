// SPDX-License-Identifier: MIT
#pragma once

#include <rapidcheck.h>

#include <cstdint>
#include <cstdlib>
#include <string>
#include <vector>

#include "support/check.hpp"

namespace seatload::property {

/// Checks that a property holds for drawn values, the same ones in every run unless RC_PARAMS asks for others; a
/// counterexample is shrunk and printed.
template <class Property>
void holds(const std::string& words, Property&& property) {
    static const int fixed = setenv("RC_PARAMS", "seed=20261126 max_success=100", 0);
    REQUIRE(fixed == 0);
    CHECK(rc::check(words, std::forward<Property>(property)));
}

/// A number from low up to high, of which every digit counts.
inline double number(double low, double high) {
    constexpr std::int64_t kParts = std::int64_t{1} << 52;
    const auto part = *rc::gen::resize(rc::kNominalSize, rc::gen::inRange<std::int64_t>(0, kParts));
    return low + (high - low) * static_cast<double>(part) / static_cast<double>(kParts);
}

/// A whole number from low up to and without high.
inline int whole(int low, int high) { return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(low, high)); }

inline bool yes() { return *rc::gen::arbitrary<bool>(); }

template <class T>
T one_of(std::vector<T> all) {
    return *rc::gen::elementOf(std::move(all));
}

/// What people write: letters of several languages, quotes, marks that mean something in TOML.
inline std::string words(int most_pieces) {
    static const std::vector<std::string> kPieces{"a", "Spring ", "é",   "Ø", "ż",  "…",   "±", "\"",
                                                  "'", "\\",      "\\n", "#", "= ", "[x]", "{", "}",
                                                  ",", "1",       "-",   "°", "€",  "µ",   "/", ";"};
    std::string text;
    for (int left = whole(0, most_pieces + 1); left > 0; --left) text += one_of(kPieces);
    return text;
}

}  // namespace seatload::property
