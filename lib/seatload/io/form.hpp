// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/io/node.hpp>
#include <seatload/units/band.hpp>
#include <seatload/units/parse.hpp>

namespace seatload::io {

/// How values of a type stand in a file. A specialisation has
///   static units::Parsed<T> read(const Node&);   the value, or what is wrong and what to write instead
///   static std::string write(const T&);          the TOML text that read() takes back to an equal value
///   static std::vector<double> numbers(const T&);   its plain numbers in base units, to be held against a Span
template <class T>
struct Form;

template <class T>
concept Quantity = std::same_as<T, Length> || std::same_as<T, Force> || std::same_as<T, Stress> ||
    std::same_as<T, Rate> || std::same_as<T, Mass> || std::same_as<T, Density> || std::same_as<T, Frequency> ||
    std::same_as<T, Angle> || std::same_as<T, Area> || std::same_as<T, Time> || std::same_as<T, Torque> ||
    std::same_as<T, Viscosity> || std::same_as<T, Celsius>;

/// A problem for a node of the wrong kind: "a length is wanted, this is a list".
units::Problem wrong_kind(const Node& node, std::string_view wanted, std::string_view example);

/// The text in TOML's double quotes.
std::string quoted_text(std::string_view text);
/// The number in its shortest form, with a point or an exponent so that it stays a number with decimals.
std::string decimal_text(double value);

units::Parsed<double> read_number(const Node& node, const units::Dimension& dimension);
/// The quantity as text, without quotes: in the dimension's first unit, or in the first unit in which it reads back to
/// the same bits. Every value that was read from a file has such a unit; a computed one may miss its last bit.
std::string quantity_text(const units::Dimension& dimension, double base_value);
units::Parsed<units::BandNumbers> read_band(const Node& node, const units::Dimension& dimension);

template <Quantity Q>
constexpr double base_number(const Q& quantity) {
    if constexpr (std::same_as<Q, Celsius>)
        return quantity.degrees;
    else
        return in_base_unit(quantity);
}

template <Quantity Q>
struct Form<Q> {
    static units::Parsed<Q> read(const Node& node) {
        units::Parsed<double> number = read_number(node, units::dimension_of<Q>());
        units::Parsed<Q> result{std::nullopt, std::move(number.problem)};
        if (number.value) result.value = units::from_base<Q>(*number.value);
        return result;
    }
    static std::string write(const Q& quantity) {
        return quoted_text(quantity_text(units::dimension_of<Q>(), base_number(quantity)));
    }
    static std::vector<double> numbers(const Q& quantity) { return {base_number(quantity)}; }
};

/// Any range of a quantity; which end is larger is judged by whoever uses it.
template <Quantity Q>
struct Form<units::Band<Q>> {
    static units::Parsed<units::Band<Q>> read(const Node& node) {
        units::Parsed<units::BandNumbers> band = read_band(node, units::dimension_of<Q>());
        units::Parsed<units::Band<Q>> result{std::nullopt, std::move(band.problem)};
        const auto lifted = [](const std::optional<double>& n) {
            return n ? std::optional<Q>(units::from_base<Q>(*n)) : std::nullopt;
        };
        if (band.value)
            result.value = units::Band<Q>{lifted(band.value->nominal), lifted(band.value->at_least),
                                          lifted(band.value->at_most), band.value->single};
        return result;
    }
    static std::vector<double> numbers(const units::Band<Q>& band) {
        std::vector<double> all;
        for (const auto& bound : {band.nominal, band.at_least, band.at_most})
            if (bound) all.push_back(base_number(*bound));
        return all;
    }
};

/// A share of one: a plain number (0.15) or per cent ("15 %").
template <>
struct Form<Share> {
    static units::Parsed<Share> read(const Node& node);
    static std::string write(const Share& share) { return decimal_text(share.value); }
    static std::vector<double> numbers(const Share& share) { return {share.value}; }
};

template <>
struct Form<double> {
    static units::Parsed<double> read(const Node& node);
    static std::string write(double value) { return decimal_text(value); }
    static std::vector<double> numbers(double value) { return {value}; }
};

template <>
struct Form<int> {
    static units::Parsed<int> read(const Node& node);
    static std::string write(int value) { return std::to_string(value); }
    static std::vector<double> numbers(int value) { return {static_cast<double>(value)}; }
};

template <>
struct Form<bool> {
    static units::Parsed<bool> read(const Node& node);
    static std::string write(bool value) { return value ? "true" : "false"; }
    static std::vector<double> numbers(bool) { return {}; }
};

template <>
struct Form<std::string> {
    static units::Parsed<std::string> read(const Node& node);
    static std::string write(const std::string& text) { return quoted_text(text); }
    static std::vector<double> numbers(const std::string&) { return {}; }
};

}  // namespace seatload::io
