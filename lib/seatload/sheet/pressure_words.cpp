// SPDX-License-Identifier: MIT
#include <seatload/sheet/pressure_words.hpp>

#include <array>
#include <cctype>
#include <cmath>
#include <utility>
#include <vector>

#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr int kPressureDigits = 3;
constexpr double kMostPrinted = 1e6;

using Symbol = std::pair<std::string_view, std::string_view>;
constexpr std::array kSymbols{Symbol{"F", "1"}, Symbol{"F", "2"}, Symbol{"F", "f"}, Symbol{"F", "d"}, Symbol{"A", "1"},
                              Symbol{"A", "2"}, Symbol{"A", "B"}, Symbol{"A", "η"}, Symbol{"p", "L"}, Symbol{"p", "R"},
                              Symbol{"p", "H"}, Symbol{"p", "M"}, Symbol{"p", "B"}, Symbol{"p", "s"}, Symbol{"m", "h"},
                              Symbol{"m", "r"}, Symbol{"μ", "F"}, Symbol{"μ", "B"}, Symbol{"W", "R"}, Symbol{"g", "1"},
                              Symbol{"g", "2"}};

/// A character that a symbol may hold: a letter of ASCII, a digit, or anything beyond ASCII that is a Greek letter.
bool is_symbol_character(const std::string& c) {
    if (c.size() == 1) return std::isalnum(static_cast<unsigned char>(c[0])) != 0;
    return c.starts_with('\xCE') || c.starts_with('\xCF');  // U+0380 to U+03FF
}

std::string as_symbol(const std::string& word) {
    for (const auto& [letter, index] : kSymbols)
        if (word.size() == letter.size() + index.size() && word.starts_with(letter) && word.ends_with(index))
            return with_sub(letter, index);
    return word;
}

}  // namespace

std::string pressure_number(double value, int digits) {
    if (!std::isfinite(value)) return value < 0.0 ? "−∞" : "∞";
    if (value > kMostPrinted) return "over " + grouped(static_cast<unsigned long long>(kMostPrinted));
    const std::string text = significant(value, digits);
    return text.starts_with('-') ? "−" + text.substr(1) : text;
}

std::string range_words(double low, double high, int digits) {
    const std::string from = pressure_number(low, digits);
    const std::string to = pressure_number(high, digits);
    return from == to ? from : from + "\u00a0to\u00a0" + to;
}

std::string range_words(const demand::Interval<Force>& forces) {
    return range_words(in_newton(forces.low), in_newton(forces.high));
}

std::string range_words(const demand::Interval<Stress>& pressures) {
    return range_words(in_bar(pressures.low), in_bar(pressures.high), kPressureDigits);
}

std::string band_words(const demand::LoadBand& band) {
    const auto number = [](Force force) { return pressure_number(in_newton(force)); };
    if (band.at_least && band.at_most) return number(*band.at_least) + " to " + number(*band.at_most) + " N";
    if (band.at_least) return "at least " + number(*band.at_least) + " N";
    return band.at_most ? "at most " + number(*band.at_most) + " N" : "any load";
}

std::string with_symbols(std::string_view text) {
    std::string out;
    std::string word;
    for (const std::string& c : code_points(text)) {
        if (is_symbol_character(c)) {
            word += c;
            continue;
        }
        out += as_symbol(word) + c;
        word.clear();
    }
    return out + as_symbol(word);
}

std::string with_units_kept(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool parts = text[i] == ' ' && i > 0 && i + 1 < text.size() &&
                           std::isdigit(static_cast<unsigned char>(text[i - 1])) != 0 &&
                           std::isalpha(static_cast<unsigned char>(text[i + 1])) != 0;
        out += parts ? "\u00a0" : std::string(1, text[i]);
    }
    return out;
}

}  // namespace seatload::sheet
