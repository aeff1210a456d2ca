// SPDX-License-Identifier: MIT
#include <seatload/units/parse.hpp>

#include <charconv>
#include <cmath>

#include <seatload/core/text.hpp>

namespace seatload::units {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// No more can be measured than a number that is still one when it is squared and divided by a few times over.
bool can_be_held(double value) {
    constexpr double kLargest = 1e40;
    constexpr double kSmallest = 1e-60;
    const double size = std::abs(value);
    return size <= kLargest && (size >= kSmallest || size == 0.0);
}

std::string example_hint(const Dimension& dimension) {
    return "write " + std::string(dimension.article_and_name) + " with its unit, such as \"" +
           std::string(dimension.example) + "\"";
}

std::vector<std::string> unit_names(const Dimension& dimension) {
    std::vector<std::string> names;
    for (const UnitSize& unit : dimension.units) names.emplace_back(unit.name);
    return names;
}

/// Walks over a text from the left and remembers how far it got.
class Scanner {
  public:
    explicit Scanner(std::string_view text) : text_(text) { skip_blanks(); }

    std::string_view rest() const { return text_.substr(at_); }
    std::size_t offset() const { return length_in_code_points(text_.substr(0, at_)); }
    bool at_digit() const { return at_ < text_.size() && is_digit(text_[at_]); }
    bool next_is(char c) const { return at_ < text_.size() && text_[at_] == c; }
    void step() { ++at_; }
    void skip_blanks() {
        while (at_ < text_.size() && (text_[at_] == ' ' || text_[at_] == '\t')) ++at_;
    }
    void back_to(std::size_t at) { at_ = at; }
    std::size_t at() const { return at_; }

    /// A decimal number, sign allowed; nothing (and no step) when there is none.
    std::optional<double> number() {
        std::size_t from = at_;
        if (from < text_.size() && text_[from] == '+') ++from;
        const std::size_t first = from + (from < text_.size() && text_[from] == '-' && from == at_ ? 1 : 0);
        if (first >= text_.size() || !(is_digit(text_[first]) || text_[first] == '.')) return std::nullopt;
        double value = 0.0;
        const auto [end, error] = std::from_chars(text_.data() + from, text_.data() + text_.size(), value);
        if (error == std::errc::invalid_argument) return std::nullopt;
        if (error == std::errc::result_out_of_range) value = std::nan("");
        at_ = static_cast<std::size_t>(end - text_.data());
        return value;
    }

  private:
    std::string_view text_;
    std::size_t at_ = 0;
};

/// "a/b" after a was read, or "n a/b" after n was read; changes `value`. False when the fraction is no fraction.
bool read_fraction(Scanner& scanner, double& value) {
    const auto denominator = [&]() -> std::optional<double> {
        scanner.step();
        if (!scanner.at_digit()) return std::nullopt;
        const auto number = scanner.number();
        return number && *number != 0.0 ? number : std::nullopt;
    };
    if (scanner.next_is('/')) {
        const auto below = denominator();
        if (!below) return false;
        value /= *below;
        return true;
    }
    const std::size_t before = scanner.at();
    scanner.skip_blanks();
    if (scanner.at() == before || !scanner.at_digit()) {
        scanner.back_to(before);
        return true;
    }
    const auto above = scanner.number();
    if (!above || !scanner.next_is('/')) return false;
    const auto below = denominator();
    if (!below) return false;
    value += (std::signbit(value) ? -1.0 : 1.0) * *above / *below;
    return true;
}

const Dimension* dimension_with(std::string_view unit) {
    for (const Dimension* dimension : all_dimensions())
        for (const UnitSize& known : dimension->units)
            if (known.name == unit) return dimension;
    return nullptr;
}

/// The unit of force that carries the name of a unit of mass ("g" gives "gf"), or an empty text.
std::string force_for_mass(std::string_view unit) {
    if (unit == "g" || unit == "kg" || unit == "lb" || unit == "oz") return std::string(unit) + "f";
    return {};
}

Problem wrong_unit(const Dimension& wanted, std::string_view number, std::string_view unit, std::size_t offset) {
    Problem problem;
    problem.offset = offset;
    const Dimension* found = dimension_with(unit);
    if (&wanted == &dimension_of<Force>() && !force_for_mass(unit).empty()) {
        problem.id = "mass-for-force"_id;
        problem.message = "\"" + std::string(unit) + "\" is a mass, a force is wanted";
        problem.hint = "the pull of that mass under standard gravity is written \"" + std::string(number) + " " +
                       force_for_mass(unit) + "\"";
        return problem;
    }
    if (&wanted == &dimension_of<Viscosity>() && (unit == "cSt" || unit == "mm2/s")) {
        problem.id = "kinematic-viscosity"_id;
        problem.message = "\"" + std::string(unit) + "\" is a kinematic viscosity, a dynamic viscosity is wanted";
        problem.hint = "times the density in g/cm3 it is mPa s: of an oil of 0.88 g/cm3, 100 cSt are \"88 mPa s\"";
        return problem;
    }
    if (found != nullptr) {
        problem.id = "wrong-dimension"_id;
        problem.message = "\"" + std::string(unit) + "\" is " + std::string(found->article_and_name) + ", " +
                          std::string(wanted.article_and_name) + " is wanted";
        problem.hint = example_hint(wanted);
        return problem;
    }
    const std::vector<std::string> names = unit_names(wanted);
    problem.id = "unknown-unit"_id;
    problem.message = "unknown unit \"" + std::string(unit) + "\"";
    problem.hint = did_you_mean(unit, names);
    for (const std::string& name : names)
        if (lower(name) == lower(unit)) problem.hint = "did you mean \"" + name + "\"?";
    if (!problem.hint.empty()) problem.hint += " ";
    problem.hint += "units of " + std::string(wanted.article_and_name) + ": " + join(names, ", ");
    return problem;
}

Parsed<double> failed(DiagnosticId id, std::string message, std::string hint, std::size_t offset) {
    return {std::nullopt, {id, std::move(message), std::move(hint), offset}};
}

}  // namespace

Parsed<double> parse_in(const Dimension& dimension, std::string_view text) {
    Scanner scanner(text);
    const std::size_t start = scanner.at();
    if (scanner.rest().empty()) return failed("empty"_id, "empty text", example_hint(dimension), 0);
    auto value = scanner.number();
    if (!value)
        return failed("not-a-number"_id, "no number where one should start", example_hint(dimension), scanner.offset());
    if (scanner.next_is(',')) {
        std::string mended(trim(text));
        mended[mended.find(',')] = '.';
        return failed("decimal-comma"_id, "decimal comma", "write a decimal point: \"" + mended + "\"",
                      scanner.offset());
    }
    const std::size_t after_number = scanner.offset();
    if (!read_fraction(scanner, *value))
        return failed("not-a-fraction"_id, "not a fraction", "a fraction is written \"1/4 in\" or \"1 1/2 in\"",
                      after_number);
    if (!can_be_held(*value))
        return failed("number-too-large"_id, "the number is too large or too small to be held", "", 0);
    const std::string_view number = trim(text.substr(start, scanner.at() - start));
    scanner.skip_blanks();
    const std::string_view unit = trim(scanner.rest());
    if (unit.empty())
        return failed(
            "bare-number"_id, "the number has no unit",
            "write for example \"" + std::string(number) + " " + std::string(dimension.units.front().name) + "\"",
            after_number);
    for (const UnitSize& known : dimension.units)
        if (known.name == unit) return {*value * known.numerator / known.denominator + known.offset, {}};
    return {std::nullopt, wrong_unit(dimension, number, unit, scanner.offset())};
}

}  // namespace seatload::units
