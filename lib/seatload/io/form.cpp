// SPDX-License-Identifier: MIT
#include <seatload/io/form.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

std::string plain_number(const Node& node) {
    if (const auto* whole = std::get_if<std::int64_t>(&node.value)) return std::to_string(*whole);
    if (const auto* number = std::get_if<double>(&node.value)) return shortest(*number);
    return {};
}

/// A plain number where a unit belongs, or another kind of value altogether.
units::Problem without_unit(const Node& node, const units::Dimension& dimension) {
    const std::string number = plain_number(node);
    if (number.empty()) return wrong_kind(node, dimension.article_and_name, '"' + std::string(dimension.example) + '"');
    return {std::string(dimension.article_and_name) + " needs its unit, this is a bare number",
            "write \"" + number + " " + std::string(dimension.units.front().name) + "\", if that is the unit meant", 0};
}

double number_in(const units::UnitSize& unit, double base_value) {
    return (base_value - unit.offset) * unit.denominator / unit.numerator;
}

std::string number_with_unit(double number, const units::UnitSize& unit) {
    return shortest(number) + " " + std::string(unit.name);
}

/// The quantity in a unit when some number near the quotient reads back to exactly the same value.
std::optional<std::string> exact_text(const units::Dimension& dimension, const units::UnitSize& unit,
                                      double base_value) {
    constexpr int kNeighbours = 4;
    const double infinity = std::numeric_limits<double>::infinity();
    double below = number_in(unit, base_value);
    double above = below;
    for (int step = 0; step < kNeighbours; ++step) {
        for (const double number : {below, above})
            if (units::parse_in(dimension, number_with_unit(number, unit)).value == base_value)
                return number_with_unit(number, unit);
        below = std::nextafter(below, -infinity);
        above = std::nextafter(above, infinity);
    }
    return std::nullopt;
}

}  // namespace

units::Problem wrong_kind(const Node& node, std::string_view wanted, std::string_view example) {
    return {std::string(wanted) + " is wanted, this is " + std::string(kind_of(node)),
            "write for example " + std::string(example), 0};
}

std::string quoted_text(std::string_view text) {
    static constexpr std::string_view kHex = "0123456789ABCDEF";
    std::string out = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            out += '\\';
            out += c;
        } else if (c == '\n') {
            out += "\\n";
        } else if (c == '\t') {
            out += "\\t";
        } else if (byte < 0x20 || byte == 0x7F) {
            out += "\\u00";
            out += kHex[byte >> 4];
            out += kHex[byte & 15];
        } else {
            out += c;
        }
    }
    return out + '"';
}

std::string decimal_text(double value) {
    const std::string text = shortest(value);
    return text.find_first_of(".en") == std::string::npos ? text + ".0" : text;
}

units::Parsed<double> read_number(const Node& node, const units::Dimension& dimension) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) return {std::nullopt, without_unit(node, dimension)};
    return units::parse_in(dimension, *text);
}

std::string quantity_text(const units::Dimension& dimension, double base_value) {
    // a number read in another unit may have no neighbour in the first that gives the same bits
    for (const units::UnitSize& unit : dimension.units)
        if (auto text = exact_text(dimension, unit, base_value)) return *text;
    const units::UnitSize& unit = dimension.units.front();
    return number_with_unit(number_in(unit, base_value), unit);
}

units::Parsed<units::BandNumbers> read_band(const Node& node, const units::Dimension& dimension) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) return {std::nullopt, without_unit(node, dimension)};
    return units::parse_band_in(dimension, *text);
}

units::Parsed<Share> Form<Share>::read(const Node& node) {
    if (std::holds_alternative<std::string>(node.value)) {
        units::Parsed<double> number = read_number(node, units::dimension_of<Share>());
        if (!number.value) return {std::nullopt, std::move(number.problem)};
        return {Share{*number.value}, {}};
    }
    const units::Parsed<double> number = Form<double>::read(node);
    if (!number.value) return {std::nullopt, wrong_kind(node, "a share", "0.15 or \"15 %\"")};
    return {Share{*number.value}, {}};
}

units::Parsed<double> Form<double>::read(const Node& node) {
    if (const auto* whole = std::get_if<std::int64_t>(&node.value)) return {static_cast<double>(*whole), {}};
    const auto* number = std::get_if<double>(&node.value);
    if (number == nullptr) return {std::nullopt, wrong_kind(node, "a plain number", "1.5, without quotes")};
    if (!std::isfinite(*number)) return {std::nullopt, {"the number is not finite", "", 0}};
    return {*number, {}};
}

units::Parsed<int> Form<int>::read(const Node& node) {
    const auto* whole = std::get_if<std::int64_t>(&node.value);
    if (whole == nullptr) return {std::nullopt, wrong_kind(node, "a whole number", "25, without quotes")};
    if (*whole < std::numeric_limits<int>::min() || *whole > std::numeric_limits<int>::max())
        return {std::nullopt, {"the number is too large to be held", "", 0}};
    return {static_cast<int>(*whole), {}};
}

units::Parsed<bool> Form<bool>::read(const Node& node) {
    const auto* flag = std::get_if<bool>(&node.value);
    if (flag == nullptr) return {std::nullopt, wrong_kind(node, "true or false", "true, without quotes")};
    return {*flag, {}};
}

units::Parsed<std::string> Form<std::string>::read(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) return {std::nullopt, wrong_kind(node, "a text in quotes", "\"engine oil\"")};
    return {*text, {}};
}

}  // namespace seatload::io
