// SPDX-License-Identifier: MIT
#include "published/printed.hpp"

#include <charconv>
#include <cmath>
#include <stdexcept>

#include <seatload/units/parse.hpp>

namespace seatload::published {
namespace {

double plain_number(const std::string& text) {
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size())
        throw std::runtime_error("\"" + text + "\" is no plain number");
    return value;
}

double half_unit_of(const std::string& digits) {
    const std::size_t e = digits.find_first_of("eE");
    const std::string mantissa = digits.substr(0, e);
    const int exponent = e == std::string::npos ? 0 : std::stoi(digits.substr(e + 1));
    const std::size_t point = mantissa.find('.');
    const int decimals = point == std::string::npos ? 0 : static_cast<int>(mantissa.size() - point - 1);
    return 0.5 * std::pow(10.0, exponent - decimals);
}

double in_base(const units::Dimension& dimension, const std::string& text) {
    const auto parsed = units::parse_in(dimension, text);
    if (!parsed.value)
        throw std::runtime_error("\"" + text + "\": " + parsed.problem.message + "; " + parsed.problem.hint);
    return *parsed.value;
}

}  // namespace

Printed read_printed(const units::Dimension* dimension, const std::string& text) {
    if (dimension == nullptr) return {plain_number(text), half_unit_of(text), 1.0, {}};
    const std::size_t blank = text.find(' ');
    if (blank == std::string::npos) throw std::runtime_error("\"" + text + "\" has no unit");
    const double half = half_unit_of(text.substr(0, blank));
    const double unit = in_base(*dimension, "1" + text.substr(blank));
    return {in_base(*dimension, text), half * unit, unit, text.substr(blank + 1)};
}

}  // namespace seatload::published
