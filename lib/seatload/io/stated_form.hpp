// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/bench/estimate.hpp>
#include <seatload/io/form.hpp>

namespace seatload::io {

/// A value and its doubt from a range; a range without a middle is refused.
units::Parsed<bench::Stated<double>> stated_numbers(const units::BandNumbers& band, const units::Dimension& dimension);

/// A value with or without its doubt: "8.40 mm ±0.02 mm", "160 N/mm ±10 %", "8.40 mm".
template <Quantity Q>
struct Form<bench::Stated<Q>> {
    static units::Parsed<bench::Stated<Q>> read(const Node& node) {
        units::Parsed<units::BandNumbers> band = read_band(node, units::dimension_of<Q>());
        if (!band.value) return {std::nullopt, std::move(band.problem)};
        auto stated = stated_numbers(*band.value, units::dimension_of<Q>());
        if (!stated.value) return {std::nullopt, std::move(stated.problem)};
        return {
            bench::Stated<Q>{units::from_base<Q>(stated.value->value), units::from_base<Q>(stated.value->plus_minus)},
            {}};
    }
    static std::string write(const bench::Stated<Q>& stated) {
        const units::Dimension& dimension = units::dimension_of<Q>();
        return quoted_text(quantity_text(dimension, base_number(stated.value)) + " ±" +
                           quantity_text(dimension, base_number(stated.plus_minus)));
    }
    static std::vector<double> numbers(const bench::Stated<Q>& stated) { return {base_number(stated.value)}; }
};

}  // namespace seatload::io
