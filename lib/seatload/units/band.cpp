// SPDX-License-Identifier: MIT
#include <seatload/units/band.hpp>

#include <array>

#include <seatload/core/text.hpp>

namespace seatload::units {
namespace {

constexpr std::string_view kPlusMinus = "±";

/// A problem inside a piece, told from the start of the whole text.
Parsed<BandNumbers> failed(Problem problem, std::string_view whole, std::string_view piece) {
    const auto bytes = static_cast<std::size_t>(piece.data() - whole.data());
    problem.offset += length_in_code_points(whole.substr(0, bytes));
    return {std::nullopt, std::move(problem)};
}

Parsed<BandNumbers> one_sided(const Dimension& dimension, std::string_view whole, std::string_view piece,
                              bool lower_bound) {
    Parsed<double> bound = parse_in(dimension, piece);
    if (!bound.value) return failed(bound.problem, whole, piece);
    BandNumbers band;
    (lower_bound ? band.at_least : band.at_most) = bound.value;
    return {band, {}};
}

Parsed<BandNumbers> between(const Dimension& dimension, std::string_view whole, std::size_t dots) {
    const std::string_view low = whole.substr(0, dots);
    const std::string_view high = whole.substr(dots + 2);
    Parsed<double> least = parse_in(dimension, low);
    if (!least.value) return failed(least.problem, whole, low);
    Parsed<double> most = parse_in(dimension, high);
    if (!most.value) return failed(most.problem, whole, high);
    return {BandNumbers{std::nullopt, least.value, most.value, false}, {}};
}

/// A tolerance in the dimension itself or in per cent of the nominal value; positive.
Parsed<double> tolerance(const Dimension& dimension, double nominal, std::string_view piece) {
    Parsed<double> width =
        trim(piece).ends_with('%') ? parse_in(dimension_of<Share>(), piece) : parse_in(dimension, piece);
    if (!width.value) return width;
    if (trim(piece).ends_with('%')) *width.value *= nominal < 0.0 ? -nominal : nominal;
    if (*width.value < 0.0)
        return {std::nullopt, {"negative-tolerance"_id, "a tolerance is a positive number", "leave the sign out", 0}};
    return width;
}

Parsed<BandNumbers> plus_minus(const Dimension& dimension, std::string_view whole, std::size_t sign,
                               std::size_t width) {
    const std::string_view before = whole.substr(0, sign);
    const std::string_view after = whole.substr(sign + width);
    Parsed<double> nominal = parse_in(dimension, before);
    if (!nominal.value) return failed(nominal.problem, whole, before);
    Parsed<double> half = tolerance(dimension, *nominal.value, after);
    if (!half.value) return failed(half.problem, whole, after);
    return {BandNumbers{nominal.value, *nominal.value - *half.value, *nominal.value + *half.value, false}, {}};
}

/// "9 mm +0.05 mm" with an optional "-0.01 mm" after or before it.
Parsed<BandNumbers> unequal(const Dimension& dimension, std::string_view whole, std::size_t first) {
    const std::string_view before = whole.substr(0, first);
    Parsed<double> nominal = parse_in(dimension, before);
    if (!nominal.value) return failed(nominal.problem, whole, before);
    BandNumbers band{nominal.value, nominal.value, nominal.value, false};
    for (std::size_t at = first; at < whole.size();) {
        const bool up = whole[at + 1] == '+';
        const std::size_t next = std::min(whole.find(" +", at + 2), whole.find(" -", at + 2));
        const std::string_view piece = whole.substr(at + 2, next == std::string_view::npos ? next : next - at - 2);
        Parsed<double> width = tolerance(dimension, *nominal.value, piece);
        if (!width.value) return failed(width.problem, whole, piece);
        if (up) band.at_most = *nominal.value + *width.value;
        if (!up) band.at_least = *nominal.value - *width.value;
        at = next == std::string_view::npos ? whole.size() : next;
    }
    return {band, {}};
}

/// What follows one of the words, or nothing when the text starts with none of them.
template <std::size_t N>
std::optional<std::string_view> after_word(std::string_view text, const std::array<std::string_view, N>& words) {
    for (const std::string_view word : words)
        if (text.starts_with(word)) return text.substr(word.size());
    return std::nullopt;
}

}  // namespace

Parsed<BandNumbers> parse_band_in(const Dimension& dimension, std::string_view text) {
    static constexpr std::array<std::string_view, 3> kAtLeast{"at least", ">=", "≥"};
    static constexpr std::array<std::string_view, 3> kAtMost{"at most", "<=", "≤"};
    const std::string_view body = trim(text);
    if (const auto rest = after_word(body, kAtLeast)) return one_sided(dimension, text, *rest, true);
    if (const auto rest = after_word(body, kAtMost)) return one_sided(dimension, text, *rest, false);
    if (const auto dots = text.find(".."); dots != std::string_view::npos) return between(dimension, text, dots);
    for (const std::string_view sign : {kPlusMinus, std::string_view("+/-"), std::string_view("+-")})
        if (const auto at = text.find(sign); at != std::string_view::npos)
            return plus_minus(dimension, text, at, sign.size());
    const std::size_t start = text.find_first_not_of(" \t");
    const std::size_t signs =
        start == std::string_view::npos ? start : std::min(text.find(" +", start), text.find(" -", start));
    if (signs != std::string_view::npos) return unequal(dimension, text, signs);
    Parsed<double> value = parse_in(dimension, text);
    if (!value.value) return failed(value.problem, text, text);
    return {BandNumbers{value.value, value.value, value.value, true}, {}};
}

}  // namespace seatload::units
