// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <seatload/core/diagnostic.hpp>
#include <seatload/units/dimension.hpp>

namespace seatload::units {

/// Why a text is not the quantity wanted, and what to write instead.
struct Problem {
    DiagnosticId id;
    std::string message;
    std::string hint;
    std::size_t offset = 0;  ///< code points from the start of the text to the offending place
};

template <class T>
struct Parsed {
    std::optional<T> value;
    Problem problem;  ///< meaningful when there is no value
};

/// The plain number of a quantity in the dimension's base unit, from a text such as "9.00 mm", "1/4 in" or "1 1/2 in".
/// Problems: no number, decimal comma, no unit, a unit that is unknown or of another dimension, a mass for a force,
/// a number that is not finite.
Parsed<double> parse_in(const Dimension& dimension, std::string_view text);

/// The quantity a text states, for every alias of quantities.hpp.
template <class Q>
Parsed<Q> parse(std::string_view text) {
    Parsed<double> number = parse_in(dimension_of<Q>(), text);
    Parsed<Q> result{std::nullopt, std::move(number.problem)};
    if (number.value) result.value = from_base<Q>(*number.value);
    return result;
}

}  // namespace seatload::units
