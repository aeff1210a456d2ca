// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <numbers>
#include <optional>
#include <type_traits>

#include <seatload/core/text.hpp>
#include <seatload/io/form.hpp>
#include <seatload/io/span.hpp>

namespace seatload::io {

/// How near half a turn apart the end tips are ordered, plus-minus.
struct TipsApart {
    double degrees;
};

/// An angle, written in degrees whatever unit it was read in, cleared of what radians leave in the last digits.
template <>
struct Form<TipsApart> {
    static units::Parsed<TipsApart> read(const Node& node) {
        const units::Parsed<Angle> angle = Form<Angle>::read(node);
        if (!angle.value) return {std::nullopt, angle.problem};
        return {TipsApart{std::round(base_number(*angle.value) * 180e9 / std::numbers::pi) / 1e9}, {}};
    }
    static std::string write(const TipsApart& tips) { return quoted_text(shortest(tips.degrees) + " deg"); }
    static std::vector<double> numbers(const TipsApart& tips) { return {tips.degrees * std::numbers::pi / 180.0}; }
};

/// Lets a visitor see degrees as such tips, and takes back what a reader put there.
template <class Degrees, class Visit>
void visit_tips(Degrees& degrees, const Visit& visit) {
    std::optional<TipsApart> tips;
    if (degrees) tips = TipsApart{*degrees};
    visit(tips);
    if constexpr (!std::is_const_v<Degrees>) degrees = tips ? std::optional(tips->degrees) : std::nullopt;
}

/// Radians, held against a value in base units.
inline constexpr Span kTipsApart{0.0, std::numbers::pi, true, "more than zero and at most 180 deg"};

}  // namespace seatload::io
