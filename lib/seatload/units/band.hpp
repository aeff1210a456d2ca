// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include <seatload/units/parse.hpp>

namespace seatload::units {

/// A range of plain numbers in a dimension's base unit as a text states it.
struct BandNumbers {
    std::optional<double> nominal;  ///< the value before a tolerance, or the single value
    std::optional<double> at_least;
    std::optional<double> at_most;
    bool single = false;  ///< one value without any tolerance
};

/// The range a text states: "4.9 N .. 6.4 N", "5.6 N ±0.7 N", "5.6 N ±10 %", "9 mm +0.05 mm -0.01 mm",
/// "at least 4.8 N", "at most 13.5 N", or one value. Which end is larger is not judged here, except that a tolerance
/// is a positive number.
Parsed<BandNumbers> parse_band_in(const Dimension& dimension, std::string_view text);

template <class Q>
struct Band {
    std::optional<Q> nominal;
    std::optional<Q> at_least;
    std::optional<Q> at_most;
    bool single = false;
};

template <class Q>
Parsed<Band<Q>> parse_band(std::string_view text) {
    Parsed<BandNumbers> numbers = parse_band_in(dimension_of<Q>(), text);
    Parsed<Band<Q>> result{std::nullopt, std::move(numbers.problem)};
    if (!numbers.value) return result;
    const auto lifted = [](const std::optional<double>& n) {
        return n ? std::optional<Q>(from_base<Q>(*n)) : std::nullopt;
    };
    result.value = Band<Q>{lifted(numbers.value->nominal), lifted(numbers.value->at_least),
                           lifted(numbers.value->at_most), numbers.value->single};
    return result;
}

}  // namespace seatload::units
