// SPDX-License-Identifier: MIT
#include <seatload/io/form.hpp>

#include <algorithm>
#include <charconv>
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
    return {"bare-number"_id, std::string(dimension.article_and_name) + " needs its unit, this is a bare number",
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

/// The numbers in a text, as they are written, without signs.
std::vector<std::string> written_numbers(std::string_view text) {
    constexpr std::string_view kDigits = "0123456789.";
    std::vector<std::string> numbers;
    for (std::size_t from = text.find_first_of("0123456789"); from != std::string_view::npos;
         from = text.find_first_of("0123456789", from)) {
        std::size_t to = std::min(text.find_first_not_of(kDigits, from), text.find("..", from));
        if (to == std::string_view::npos) to = text.size();
        numbers.emplace_back(text.substr(from, to - from));
        from = to;
    }
    return numbers;
}

/// The unit a text ends in, the first of the dimension when it ends in none, or nothing when that word is no such unit.
std::optional<std::string> last_unit(std::string_view text, const units::Dimension& dimension) {
    const std::string_view body = trim(text);
    const std::size_t before = body.find_last_of("0123456789. \t");
    const std::string_view last = before == std::string_view::npos ? body : body.substr(before + 1);
    if (last.empty()) return std::string(dimension.units.front().name);
    for (const units::UnitSize& unit : dimension.units)
        if (unit.name == last) return std::string(last);
    return std::nullopt;
}

/// "13.5 N max" as it should be written; empty when no such thing was meant.
std::string one_sided_hint(std::string_view text, const units::Dimension& dimension) {
    const std::string words = lower(text);
    const bool is_most = words.find("max") != std::string::npos;
    const std::size_t word = words.find(is_most ? "max" : "min");
    const std::vector<std::string> numbers = written_numbers(text);
    if (word == std::string::npos || numbers.size() != 1) return {};
    const auto unit = last_unit(word == 0 ? text : text.substr(0, word), dimension);
    if (!unit) return {};
    return std::string("write \"") + (is_most ? "at most " : "at least ") + numbers[0] + ' ' + *unit + '"';
}

/// "4.8 - 6.5 N" as it should be written; empty when no such thing was meant.
std::string range_hint(std::string_view text, const units::Dimension& dimension) {
    const auto says = [&](std::string_view word) { return text.find(word) != std::string_view::npos; };
    const std::vector<std::string> numbers = written_numbers(text);
    if (numbers.size() != 2 || trim(text).starts_with('-')) return {};
    if (says("+") || says("±") || says("/") || says(",")) return {};
    if (!says("-") && !says("–") && !says("..") && !says(" to ")) return {};
    const auto number = [](const std::string& digits) {
        double value = 0.0;
        std::from_chars(digits.data(), digits.data() + digits.size(), value);
        return value;
    };
    if (!(number(numbers[0]) < number(numbers[1]))) return {};  // "9 mm -0.05" is a deviation
    const auto unit = last_unit(text, dimension);
    if (!unit) return {};
    return "a range has two dots and both units: \"" + numbers[0] + ' ' + *unit + " .. " + numbers[1] + ' ' + *unit +
           '"';
}

/// How a limit or a range is written when that was meant but put otherwise, or an empty text.
std::string band_hint(std::string_view text, const units::Dimension& dimension) {
    std::string hint = one_sided_hint(text, dimension);
    return hint.empty() ? range_hint(text, dimension) : hint;
}

}  // namespace

units::Problem wrong_kind(const Node& node, std::string_view wanted, std::string_view example) {
    return {"wrong-kind"_id, std::string(wanted) + " is wanted, this is " + std::string(kind_of(node)),
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
    constexpr double kMostDigits = 1e15;  // beyond, an exponent is easier to read, and a double may skip whole numbers
    const std::string text = shortest(value);
    if (text.find('e') != std::string::npos && std::abs(value) >= 1.0 && std::abs(value) < kMostDigits)
        return fixed(value, 0);
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
    units::Parsed<units::BandNumbers> band = units::parse_band_in(dimension, *text);
    if (const std::size_t minus = text->find(" - "); band.value && minus != std::string::npos)
        band = {std::nullopt,
                {"unclear-minus"_id, "a minus between blanks may stand for a range or for a deviation",
                 "a range is written with two dots, a deviation without a blank after its sign",
                 length_in_code_points(std::string_view(*text).substr(0, minus + 1))}};
    if (band.value) return band;
    if (std::string hint = band_hint(*text, dimension); !hint.empty()) band.problem.hint = std::move(hint);
    return band;
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
    if (!std::isfinite(*number)) return {std::nullopt, {"number-too-large"_id, "the number is not finite", "", 0}};
    return {*number, {}};
}

units::Parsed<int> Form<int>::read(const Node& node) {
    const auto* whole = std::get_if<std::int64_t>(&node.value);
    if (whole == nullptr) return {std::nullopt, wrong_kind(node, "a whole number", "25, without quotes")};
    if (*whole < std::numeric_limits<int>::min() || *whole > std::numeric_limits<int>::max())
        return {std::nullopt, {"number-too-large"_id, "the number is too large to be held", "", 0}};
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
