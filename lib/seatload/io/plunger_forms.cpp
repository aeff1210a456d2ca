// SPDX-License-Identifier: MIT
#include <seatload/io/plunger_forms.hpp>

#include <charconv>
#include <cmath>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

units::Problem upside_down() {
    return {"upside-down"_id, "the range is upside down: its lower end is above its upper end",
            "write the smaller value first", 0};
}

/// A plain number or a percentage.
std::optional<double> plain_or_percent(std::string_view text) {
    text = trim(text);
    const bool is_percent = text.ends_with('%');
    if (is_percent) text = trim(text.substr(0, text.size() - 1));
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value)) return std::nullopt;
    return is_percent ? value / 100.0 : value;
}

}  // namespace

units::Parsed<demand::Interval<double>> read_interval(const Node& node, const units::Dimension& dimension) {
    const units::Parsed<units::BandNumbers> band = read_band(node, dimension);
    if (!band.value) return {std::nullopt, band.problem};
    if (!band.value->at_most)
        return {std::nullopt,
                {"bad-range"_id, "the upper end is wanted too",
                 "write both ends, or one value: \"" + std::string(dimension.example) + "\"", 0}};
    const demand::Interval<double> ends{band.value->at_least.value_or(0.0), *band.value->at_most};
    if (ends.low > ends.high) return {std::nullopt, upside_down()};
    return {ends, {}};
}

units::Parsed<PressureRange> Form<PressureRange>::read(const Node& node) {
    units::Parsed<demand::Interval<double>> ends = read_interval(node, units::pressure_dimension());
    if (!ends.value) return {std::nullopt, std::move(ends.problem)};
    return {PressureRange{{ends.value->low * MPa, ends.value->high * MPa}}, {}};
}

units::Parsed<demand::Interval<double>> Form<demand::Interval<double>>::read(const Node& node) {
    if (const auto* text = std::get_if<std::string>(&node.value)) {
        const std::size_t dots = text->find("..");
        const std::string_view whole = *text;
        const auto low = plain_or_percent(whole.substr(0, dots));
        const auto high = dots == std::string::npos ? low : plain_or_percent(whole.substr(dots + 2));
        if (const std::size_t comma = text->find(','); comma != std::string::npos)
            return {std::nullopt,
                    {"decimal-comma"_id, "decimal comma", "write a decimal point: \"0.08 .. 0.15\"",
                     length_in_code_points(whole.substr(0, comma))}};
        if (!low || !high)
            return {std::nullopt,
                    {"not-a-number"_id, "\"" + *text + "\" is no number and no range of numbers",
                     "write 0.12 or \"0.08 .. 0.15\"", 0}};
        if (*low > *high) return {std::nullopt, upside_down()};
        return {demand::Interval<double>{*low, *high}, {}};
    }
    const units::Parsed<double> number = Form<double>::read(node);
    if (!number.value)
        return {std::nullopt, wrong_kind(node, "a number or a range of numbers", "0.12 or \"0.08 .. 0.15\"")};
    return {demand::exactly(*number.value), {}};
}

}  // namespace seatload::io
