// SPDX-License-Identifier: MIT
#include <seatload/check/tips.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/check/rule.hpp>
#include <seatload/core/text.hpp>
#include <seatload/demand/half_turn.hpp>

namespace seatload::check {
namespace {

constexpr double kAlikeTurns = 1e-9;
/// Coils may be off by so much where nothing holds their tips (JIS B 2707).
constexpr double kTipsAnyhow = 0.25;

/// The lean of a coil about a number of active coils, its free length kept.
class LeanAbout {
  public:
    LeanAbout(const Coil& coil, double L0, double n) : made_(coil), L0_(L0), n_(n) {}

    Measure with(double turns_off) {
        // Only what lean looks at: it is asked for very many springs.
        made_.active_coils = n_ + turns_off;
        made_.turns_lean = spring::turns_lean(made_.active_coils);
        return lean_rule().measure(made_, L0_);
    }
    bool has_room(double turns_off) {
        return passes(Sense::at_most, with(turns_off)) && passes(Sense::at_most, with(-turns_off));
    }
    /// The one of both ends that leaves less room.
    Measure worse(double turns_off) {
        const Measure more = with(turns_off), fewer = with(-turns_off);
        return more.value - more.limit > fewer.value - fewer.limit ? more : fewer;
    }
    /// The largest deviation up to `most` that leaves room; 0 when none does.
    double largest_with_room(double most) {
        if (has_room(most)) return most;
        double low = 0.0, high = most;
        for (int i = 0; i < 40; ++i) (has_room(0.5 * (low + high)) ? low : high) = 0.5 * (low + high);
        return low;
    }

  private:
    Coil made_;
    double L0_, n_;
};

/// The largest whole step under the usual that leaves room and takes in the coils drawn; else the closest of them.
double closer_tips(double usual, double leaves_room, double drawn_off) {
    const auto up = [](double turns) { return std::ceil(turns / kTipStep - 1e-6) * kTipStep; };
    const double closest = std::min(usual, std::max(kClosestTips, up(drawn_off)));
    return std::max(closest, std::floor(leaves_room / kTipStep + 1e-6) * kTipStep);
}

/// What a frozen spec has of the tips [turns]: an order stays the same when the rule that made it does not.
std::optional<double> already_ordered(const Coil& c) {
    const auto& degrees = c.demand.limits.tips_degrees;
    return degrees ? std::optional(*degrees / 360.0) : std::nullopt;
}

/// With whole turns within reach it is those that lean most.
bool has_room_anyhow(const Coil& c, double L0) {
    const double to_whole = std::round(c.active_coils) - c.active_coils;
    LeanAbout lean(c, L0, c.active_coils);
    return lean.has_room(kTipsAnyhow) &&
           (std::abs(to_whole) > kTipsAnyhow || passes(Sense::at_most, lean.with(to_whole)));
}

}  // namespace

std::optional<Tips> tips(const Coil& c, double L0) {
    const auto usual = demand::half_turn_tolerance(c.demand.limits, c.active_coils);
    if (!c.demand.slides || !usual) return std::nullopt;
    const auto ordered = already_ordered(c);
    Tips out{*usual, ordered.value_or(*usual), *usual, 0.0, 0.0};
    if (!lean_rule().applies(c.demand, c.ends)) return out;
    LeanAbout lean(c, L0, demand::half_over(c.active_coils));
    out.leaves_room = lean.largest_with_room(std::max(*usual, out.ordered));
    if (!ordered && out.leaves_room < *usual)
        out.ordered = closer_tips(*usual, out.leaves_room, demand::off_half_turn(c.active_coils));
    const Measure worst = lean.worse(out.ordered);
    out.most_lean_mm = worst.value;
    out.room_mm = worst.limit;
    return out;
}

namespace {

std::string tip_degrees(double turns) { return significant(360.0 * turns, 3) + "°"; }
/// Up to where there is room, rounded down to tenths of a degree.
std::string degrees_with_room(const Tips& t) { return tip_degrees(std::floor(3600.0 * t.leaves_room + 1e-6) / 3600.0); }

std::string lean_words(const Tips& t) {
    return (std::isfinite(t.most_lean_mm) ? "up to " + significant(t.most_lean_mm, 3) + " mm" : "without bound") +
           ", where there is room for " + significant(t.room_mm, 3) + " mm";
}

}  // namespace

std::string tips_apart(const Tips& t) { return "180° ±" + tip_degrees(t.ordered); }

std::string tips_in_words(const Tips& t) {
    if (t.room_mm <= 0.0 && t.most_lean_mm <= 0.0) return {};
    const std::string apart = "End tips " + tips_apart(t) + " apart";
    if (!t.is_enough())
        return apart + (t.is_closer() ? ", as close as a winder holds them (an estimate)" : "") +
               ": even so the spring may lean " + lean_words(t) + ", and rub. Room is left up to ±" +
               degrees_with_room(t) + ": try the first pieces in the mechanism, or take a spring with more.";
    if (t.is_closer())
        return apart + ", not ±" + tip_degrees(t.usual) + " as is usual: with its tips so far off the spring leans " +
               lean_words(t) + "; from ±" + degrees_with_room(t) + " on there is no room.";
    return apart + ": with its tips so far off the spring leans " + lean_words(t) + ".";
}

bool leans_too_far(const Coil& c, double L0) {
    if (!lean_rule().applies(c.demand, c.ends)) return false;
    const auto usual = demand::half_turn_tolerance(c.demand.limits, c.active_coils);
    if (!usual) return !has_room_anyhow(c, L0);
    const double closest = std::min(*usual, std::max(kClosestTips, demand::off_half_turn(c.active_coils)));
    const double held = already_ordered(c).value_or(closest);
    return !LeanAbout(c, L0, demand::half_over(c.active_coils)).has_room(held - kAlikeTurns);
}

}  // namespace seatload::check
