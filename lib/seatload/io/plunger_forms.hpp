// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/demand/interval.hpp>
#include <seatload/io/form.hpp>

namespace seatload::io {

/// Both ends of a range: "0.2 N .. 0.5 N", "12 deg ±1 deg", "at most 0.4 bar" (from zero on), or one value for both.
units::Parsed<demand::Interval<double>> read_interval(const Node& node, const units::Dimension& dimension);

template <Quantity Q>
struct Form<demand::Interval<Q>> {
    static units::Parsed<demand::Interval<Q>> read(const Node& node) {
        auto ends = read_interval(node, units::dimension_of<Q>());
        units::Parsed<demand::Interval<Q>> result{std::nullopt, std::move(ends.problem)};
        if (ends.value)
            result.value =
                demand::Interval<Q>{units::from_base<Q>(ends.value->low), units::from_base<Q>(ends.value->high)};
        return result;
    }
    static std::vector<double> numbers(const demand::Interval<Q>& range) {
        return {base_number(range.low), base_number(range.high)};
    }
};

/// A range of pressures, spoken of as such.
struct PressureRange {
    demand::Interval<Stress> ends;
};

template <>
struct Form<PressureRange> {
    static units::Parsed<PressureRange> read(const Node& node);
    static std::vector<double> numbers(const PressureRange& range) {
        return {in_mpa(range.ends.low), in_mpa(range.ends.high)};
    }
};

/// Both ends of a range of plain numbers: "0.08 .. 0.15", "60 % .. 100 %", or 0.12 without quotes for both.
template <>
struct Form<demand::Interval<double>> {
    static units::Parsed<demand::Interval<double>> read(const Node& node);
    static std::vector<double> numbers(const demand::Interval<double>& range) { return {range.low, range.high}; }
};

}  // namespace seatload::io
