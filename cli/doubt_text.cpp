// SPDX-License-Identifier: MIT
#include <cli/doubt_text.hpp>

#include <algorithm>
#include <charconv>
#include <cmath>

#include <seatload/core/text.hpp>

namespace seatload::cli {
namespace {

constexpr int kMostDecimals = 6;
constexpr int kWithoutDoubt = 4;

double number_in(const std::string& text) {
    double value = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

}  // namespace

int decimals_for(double plus_minus) {
    if (!(plus_minus > 0.0) || !std::isfinite(plus_minus)) return kWithoutDoubt;
    const int first_digit = static_cast<int>(std::floor(std::log10(plus_minus)));
    const int decimals = std::clamp(1 - first_digit, 0, kMostDecimals);
    // 0.0996 is 0.10 with two digits, not 0.100
    const double rounded = number_in(fixed(plus_minus, decimals));
    return rounded >= std::pow(10.0, first_digit + 1) ? std::max(0, decimals - 1) : decimals;
}

std::string doubt_text(double value, double plus_minus) {
    const int decimals = decimals_for(plus_minus);
    return fixed(value, decimals) + " ±" + fixed(plus_minus, decimals);
}

std::string signed_text(double value, int decimals) {
    const std::string text = fixed(value, decimals);
    return number_in(text) > 0.0 ? '+' + text : text;
}

double rounded_as(double value, double plus_minus) { return number_in(fixed(value, decimals_for(plus_minus))); }

}  // namespace seatload::cli
