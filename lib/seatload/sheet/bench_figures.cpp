// SPDX-License-Identifier: MIT
#include <seatload/sheet/bench_figures.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/text.hpp>

namespace seatload::sheet {
namespace {

constexpr int kMostDecimals = 6;
constexpr std::size_t kLongestShortName = 26;
constexpr double kAsGoodAsEndless = 1000.0;

int decimals_for(double expanded) {
    const int first = static_cast<int>(std::floor(std::log10(expanded)));
    // 0.0997 is printed as 0.10: rounding may bring in a digit.
    const int decimals = 1 - first;
    const bool grows = expanded * std::pow(10.0, decimals) >= 99.5;
    return std::clamp(decimals - (grows ? 1 : 0), 0, kMostDecimals);
}

}  // namespace

std::string signed_fixed(double value, int decimals) {
    const std::string text = fixed(value, decimals);
    return text.starts_with('-') ? "−" + text.substr(1) : text;
}

std::string spring_words(const bench::MeasuredSpring& spring) {
    const std::string role(word(spring.role));
    return spring.name == role ? role : spring.name + ", " + role;
}

std::string short_name(const std::string& name) {
    std::vector<std::string> letters = code_points(name);
    if (letters.size() <= kLongestShortName) return name;
    letters.resize(kLongestShortName - 1);
    return std::string(trim(join(letters, ""))) + "…";
}

ValueWithDoubt with_doubt(double value, double expanded) {
    if (!(expanded > 0.0)) return {significant(value, 6), "0"};
    const int decimals = decimals_for(expanded);
    return {signed_fixed(value, decimals), fixed(expanded, decimals)};
}

std::string degrees_of_freedom(double value) {
    return value < kAsGoodAsEndless ? fixed(std::floor(value + 1e-9), 0) : "∞";
}

}  // namespace seatload::sheet
