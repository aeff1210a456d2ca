// SPDX-License-Identifier: MIT
#include <seatload/io/readings_forms.hpp>

#include <array>
#include <charconv>
#include <cmath>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

constexpr std::array<std::string_view, 3> kSigns{"±", "+/-", "+-"};

/// A sign for "so much both ways" in a text, as bytes; its length is 0 when there is none.
struct FoundSign {
    std::size_t at = 0;
    std::size_t length = 0;
};

FoundSign find_sign(std::string_view text) {
    for (const std::string_view sign : kSigns)
        if (const std::size_t at = text.find(sign); at != std::string_view::npos) return {at, sign.size()};
    return {};
}

/// Both units a scale may show, under one name for the messages.
const units::Dimension& scale_dimension() {
    static const units::Dimension dimension{"a scale reading", "212 g", "t", units::dimension_of<Mass>().units};
    return dimension;
}

units::Problem scale_problem(const Node& node) {
    units::Problem problem = read_number(node, scale_dimension()).problem;
    if (problem.message.starts_with("unknown unit"))
        problem.hint = "a scale reads in g, kg, oz or lb, or in units of force: N, gf, kgf, ozf, lbf";
    return problem;
}

units::Parsed<double> plain_number(std::string_view text, std::size_t offset) {
    const std::string_view body = trim(text);
    double value = 0.0;
    const auto [end, error] = std::from_chars(body.data(), body.data() + body.size(), value);
    if (error == std::errc{} && end == body.data() + body.size() && std::isfinite(value)) return {value, {}};
    const bool has_comma = error == std::errc{} && end != body.data() + body.size() && *end == ',';
    if (has_comma) return {std::nullopt, {"decimal-comma"_id, "decimal comma", "write a decimal point", offset}};
    return {std::nullopt,
            {"not-a-number"_id, "a plain number is wanted", "write for example 6.5 or \"6.5 ±0.1\"", offset}};
}

/// A difference of temperature in kelvin or Celsius degrees.
units::Parsed<double> kelvins(std::string_view text, std::size_t offset) {
    static constexpr units::UnitSize kUnits[] = {{"°C"}, {"K"}, {"°F", 5, 9}};
    static const units::Dimension dimension{"a temperature difference", "2 °C", "K", kUnits};
    units::Parsed<double> width = units::parse_in(dimension, text);
    width.problem.offset += offset;
    if (width.value && *width.value < 0.0)
        return {std::nullopt,
                {"negative-tolerance"_id, "a tolerance is a positive number", "leave the sign out", offset}};
    return width;
}

std::size_t letters_up_to(std::string_view text, std::size_t byte) {
    return length_in_code_points(text.substr(0, byte));
}

}  // namespace

units::Parsed<bench::ScaleReading> Form<bench::ScaleReading>::read(const Node& node) {
    if (const auto mass = Form<Mass>::read(node); mass.value) return {bench::ScaleReading(*mass.value), {}};
    if (const auto force = Form<Force>::read(node); force.value) return {bench::ScaleReading(*force.value), {}};
    return {std::nullopt, scale_problem(node)};
}

std::vector<double> Form<bench::ScaleReading>::numbers(const bench::ScaleReading& reading) {
    return {std::visit([](const auto& quantity) { return in_base_unit(quantity); }, reading)};
}

Node without_sign(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) return node;
    const FoundSign sign = find_sign(*text);
    if (sign.length == 0 || !trim(text->substr(0, sign.at)).empty()) return node;
    Node bare = node;
    const std::size_t blanks = letters_up_to(*text, sign.at + sign.length);
    bare.value = std::string(blanks, ' ') + text->substr(sign.at + sign.length);
    return bare;
}

units::Parsed<bench::Stated<double>> Form<bench::Stated<double>>::read(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) {
        const units::Parsed<double> number = Form<double>::read(node);
        if (!number.value) return {std::nullopt, number.problem};
        return {bench::Stated<double>{*number.value, 0.0}, {}};
    }
    const FoundSign sign = find_sign(*text);
    const std::string_view all = *text;
    const units::Parsed<double> value = plain_number(sign.length == 0 ? all : all.substr(0, sign.at), 0);
    if (!value.value) return {std::nullopt, value.problem};
    if (sign.length == 0) return {bench::Stated<double>{*value.value, 0.0}, {}};
    const std::size_t after = sign.at + sign.length;
    const units::Parsed<double> width = plain_number(all.substr(after), letters_up_to(all, after));
    if (!width.value) return {std::nullopt, width.problem};
    if (*width.value < 0.0)
        return {std::nullopt, {"negative-tolerance"_id, "a tolerance is a positive number", "leave the sign out", 0}};
    return {bench::Stated<double>{*value.value, *width.value}, {}};
}

units::Parsed<StatedCelsius> Form<StatedCelsius>::read(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    const FoundSign sign = text == nullptr ? FoundSign{} : find_sign(*text);
    Node plain = node;
    if (sign.length != 0) plain.value = text->substr(0, sign.at);
    const units::Parsed<Celsius> value = Form<Celsius>::read(plain);
    if (!value.value) return {std::nullopt, value.problem};
    StatedCelsius stated{{value.value->degrees, 0.0}};
    if (sign.length == 0) return {stated, {}};
    const std::size_t after = sign.at + sign.length;
    const units::Parsed<double> width = kelvins(text->substr(after), letters_up_to(*text, after));
    if (!width.value) return {std::nullopt, width.problem};
    stated.degrees.plus_minus = *width.value;
    return {stated, {}};
}

units::Parsed<bench::StandardGravity> Form<bench::StandardGravity>::read(const Node& node) {
    static const std::vector<std::string> kWords{"standard"};
    const units::Parsed<std::size_t> word = find_word(node, kWords);
    if (!word.value) {
        units::Problem problem = word.problem;
        problem.hint = "write \"standard\" when the maker states standard gravity, else latitude and above_sea";
        return {std::nullopt, std::move(problem)};
    }
    return {bench::StandardGravity{}, {}};
}

}  // namespace seatload::io
