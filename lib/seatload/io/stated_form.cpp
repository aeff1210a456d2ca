// SPDX-License-Identifier: MIT
#include <seatload/io/stated_form.hpp>

#include <algorithm>
#include <charconv>
#include <cmath>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

/// The doubt without the last bits that the subtraction of two bounds left behind: 1.2 + 0.1 - 1.2.
double without_residue(double doubt) {
    const std::string text = significant(doubt, 12);
    double value = doubt;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

}  // namespace

units::Parsed<bench::Stated<double>> stated_numbers(const units::BandNumbers& band, const units::Dimension& dimension) {
    if (!band.nominal && !band.single)
        return {std::nullopt,
                {"bad-range"_id, "a value is wanted, with what it may be off by",
                 "write for example \"" + std::string(dimension.example) + " ±1 %\", or without the ± part", 0}};
    const double value = *band.nominal;
    const double below = value - band.at_least.value_or(value);
    const double above = band.at_most.value_or(value) - value;
    if (std::abs(below - above) > 1e-9 * std::max(std::abs(value), std::max(below, above)))
        return {std::nullopt,
                {"deviation-unequal"_id, "what a value may be off by is the same both ways", "write it with ±", 0}};
    return {bench::Stated<double>{value, without_residue(above)}, {}};
}

}  // namespace seatload::io
