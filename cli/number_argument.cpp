// SPDX-License-Identifier: MIT
#include <cli/number_argument.hpp>

#include <charconv>
#include <cmath>

#include <seatload/core/text.hpp>

namespace seatload::cli {
namespace {

constexpr const char* kBeyondBounds = " lies outside ";

std::string no_number(const std::string& word, const std::string& wanted) { return '"' + word + "\" is no " + wanted; }

std::string beyond_bounds(const std::string& word, const std::string& bounds) { return word + kBeyondBounds + bounds; }

}  // namespace

NumberCheck whole_number(unsigned long long lowest, unsigned long long highest) {
    const std::string bounds = grouped(lowest) + " to " + grouped(highest);
    return [=](const std::string& word) -> std::string {
        unsigned long long value = 0;
        const auto [end, wrong] = std::from_chars(word.data(), word.data() + word.size(), value);
        if (wrong == std::errc::invalid_argument || end != word.data() + word.size())
            return no_number(word, "whole number from " + bounds);
        if (word.size() > 1 && word.front() == '0') return no_number(word, "plain number: leave out the zero in front");
        if (wrong != std::errc{} || value < lowest || value > highest) return beyond_bounds(word, bounds);
        return {};
    };
}

NumberCheck number(double lowest, double highest) {
    const auto shown = [](double value) { return grouped(static_cast<unsigned long long>(value)); };
    const std::string bounds = shown(lowest) + " to " + shown(highest);
    return [=](const std::string& word) -> std::string {
        double value = 0.0;
        const auto [end, wrong] = std::from_chars(word.data(), word.data() + word.size(), value);
        if (wrong == std::errc::invalid_argument || end != word.data() + word.size() || std::isnan(value))
            return no_number(word, "number from " + bounds);
        if (wrong != std::errc{} || value < lowest || value > highest) return beyond_bounds(word, bounds);
        return {};
    };
}

bool is_beyond_bounds(const std::string& words) { return words.find(kBeyondBounds) != std::string::npos; }

}  // namespace seatload::cli
