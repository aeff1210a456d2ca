// SPDX-License-Identifier: MIT
#include <seatload/check/lean_bounds.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

#include <seatload/check/rule.hpp>
#include <seatload/core/text.hpp>
#include <seatload/demand/half_turn.hpp>
#include <seatload/tolerance/en15800.hpp>

namespace seatload::check {
namespace {

constexpr double kLongerThanDrawn = 4.0;  // times; whatever long leans is pushed away long before
constexpr double kMostPieces = 0.86;      // of a tolerance of three standard deviations: 99 of 100 pieces (normal)
constexpr double kWorthwhile = 0.05;      // mm of free length that closer tips must give

/// The largest free length that leaves room; nothing when that drawn does not.
template <class HasRoom>
std::optional<double> longest_with_room(double drawn, const HasRoom& has_room) {
    double low = drawn, high = kLongerThanDrawn * drawn;
    if (!has_room(low)) return std::nullopt;
    if (has_room(high)) return std::numeric_limits<double>::infinity();
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (has_room(middle) ? low : high) = middle;
    }
    return low;
}

/// The same for tips so many turns from half a turn apart, to either side.
std::optional<double> longest_with_tips(const Coil& c, double L0, double turns) {
    Coil fewer = c, more = c;
    const double dead = c.total_coils - c.active_coils;
    fewer.set_total_coils(demand::half_over(c.active_coils) + dead - turns);
    more.set_total_coils(demand::half_over(c.active_coils) + dead + turns);
    return longest_with_room(
        L0, [&](double length) { return passes(lean_rule(), fewer, length) && passes(lean_rule(), more, length); });
}

/// The widest tips under those ordered that let in what a free length strays upwards; else the closest step that a
/// winder holds.
std::optional<LeanBounds::Closer> closer(const Coil& c, double L0, double ordered, double longest) {
    const double tolerance = tolerance::free_length_tolerance_mm(c.wire.d_mm, c.D_mm, c.active_coils, c.rate_n_mm, 1);
    const double needed = L0 + kMostPieces * tolerance;
    if (longest >= needed) return std::nullopt;
    std::optional<LeanBounds::Closer> found;
    constexpr double kFewestSteps = kClosestTips / kTipStep - 1e-6;
    for (double steps = std::ceil(ordered / kTipStep - 1e-6) - 1.0; steps >= kFewestSteps; --steps) {
        const auto length = longest_with_tips(c, L0, steps * kTipStep);
        if (!length) break;
        if (*length > longest + kWorthwhile) found = {steps * kTipStep, *length};
        if (*length >= needed) break;
    }
    return found;
}

}  // namespace

std::optional<LeanBounds> lean_bounds(const Coil& c, double L0, const std::optional<Tips>& tips) {
    if (!lean_rule().applies(c.demand, c.ends)) return std::nullopt;
    const auto longest = tips ? longest_with_tips(c, L0, tips->ordered)
                              : longest_with_room(L0, [&](double length) { return !leans_too_far(c, length); });
    if (!longest) return std::nullopt;
    LeanBounds out{*longest, std::nullopt};
    if (tips) out.closer = closer(c, L0, tips->ordered, *longest);
    return out;
}

double printed_bound(double longest, double L0) { return std::max(L0, std::floor(longest * 10.0 + 1e-6) / 10.0); }

std::string lean_bounds_in_words(const LeanBounds& b, double L0) {
    if (!std::isfinite(b.longest_mm)) return {};
    const auto shown = [&](double longest) { return significant(printed_bound(longest, L0), 4) + " mm"; };
    const std::string words = "For that L0 must stay at or below " + shown(b.longest_mm);
    if (!b.closer) return words + '.';
    return words + ", or " + shown(b.closer->longest_mm) + " where the tips are within ±" +
           significant(360.0 * b.closer->tips, 3) + "°.";
}

}  // namespace seatload::check
