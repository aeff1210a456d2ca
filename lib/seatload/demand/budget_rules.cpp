// SPDX-License-Identifier: MIT
#include <cmath>
#include <limits>

#include <seatload/core/text.hpp>
#include <seatload/demand/budget_rule.hpp>
#include <seatload/demand/hydraulics.hpp>
#include <seatload/demand/plunger_statics.hpp>
#include <seatload/demand/ramp.hpp>
#include <seatload/demand/return_time.hpp>

namespace seatload::demand {
namespace {

using P = PlungerPoint;
using Terms = std::vector<SumTerm>;

constexpr std::string_view kStatics = "statics of the plunger (textbook)";
constexpr std::string_view kRamp = "statics of a flank with dry friction (textbook)";
constexpr std::string_view kDrainFlow = "statics and laminar flow in an annular gap (textbook); inertia left out";
constexpr std::string_view kSpring =
    "the nature of a compression spring, which pushes harder the further it is compressed";

constexpr std::string_view kNewton = " N";
constexpr std::string_view kPressure = " N/mm²";
constexpr std::string_view kArea = " mm²";

// ---------------------------------------------------------------------------------------------- the summands

/// A push off the seat, taken larger by the margin on holding.
SumTerm attack(const BudgetSetting& s, std::string symbol, std::string_view words, Factor force, Factor share) {
    SumTerm term{std::move(symbol), words, 1.0, {force, share}};
    if (const double margin = s.plunger.margins.hold.value; margin > 0.0) {
        term.symbol = "(1+mh)·" + term.symbol;
        term.factors.insert(term.factors.begin(), Factor{1.0 + margin, ""});
    }
    return term;
}

/// The push of the oil, taken smaller by the margin on release.
SumTerm push(const BudgetSetting& s, std::string symbol, std::string_view words, double pressure, double area) {
    SumTerm term{std::move(symbol), words, 1.0, {{pressure, kPressure}, {area, kArea}}};
    if (const double margin = s.plunger.margins.release.value; margin > 0.0) {
        term.symbol = "(1−mr)·" + term.symbol;
        term.factors.insert(term.factors.begin(), Factor{1.0 - margin, ""});
    }
    return term;
}

void add_friction(Terms& terms, const P& p, double sign) {
    terms.push_back({"Ff", "friction", sign, {{p.friction_n, kNewton}}});
}

void take_back_pressure(Terms& terms, const P& p, const BudgetSetting& s) {
    if (s.plunger.back)
        terms.push_back({"pB·AB", "back pressure", -1.0, {{p.back_mpa, kPressure}, {p.back_area_mm2, kArea}}});
}

double side_share(const P& p) { return net_ejecting_share(p.half_angle_rad, p.flank_friction, 0.0, p.bore_friction); }

/// What friction of the side load could hold is not counted on.
SumTerm side_attack(const P& p, const BudgetSetting& s) {
    return attack(s, "W·k", "side load on the flank", {p.side_parked_n, kNewton}, {std::fmax(0.0, side_share(p)), ""});
}

SumTerm leak_attack(const P& p, const BudgetSetting& s) {
    return attack(s, "pL·A1", "leak pressure", {p.leak_mpa, kPressure}, {p.seat_area_mm2, kArea});
}

bool bears_at_release(const Plunger& plunger) {
    return plunger.side_load && plunger.side_load->released.high > 0.0 * newton;
}

/// A side load that is there at release pushes the plunger out or drags at it.
void add_side_at_release(Terms& terms, const P& p, const BudgetSetting& s) {
    if (bears_at_release(s.plunger))
        terms.push_back({"WR·k", "side load at release", 1.0, {{p.side_released_n, kNewton}, {side_share(p), ""}}});
}

// ---------------------------------------------------------------------------------------------- the rules

void add_hold(Terms& terms, const P& p, const BudgetSetting& s) {
    add_friction(terms, p, -1.0);
    take_back_pressure(terms, p, s);
}

Terms holds_leak(const P& p, const BudgetSetting& s) {
    Terms terms{leak_attack(p, s)};
    add_hold(terms, p, s);
    return terms;
}

Terms holds_side_load(const P& p, const BudgetSetting& s) {
    Terms terms{side_attack(p, s)};
    add_hold(terms, p, s);
    return terms;
}

Terms holds_both(const P& p, const BudgetSetting& s) {
    Terms terms{leak_attack(p, s), side_attack(p, s)};
    add_hold(terms, p, s);
    return terms;
}

/// What must be overcome on the way home, without a margin.
Terms resistance_home(const P& p, const BudgetSetting& s) {
    Terms terms{{"pR·A2", "residual pressure", 1.0, {{p.residual_mpa, kPressure}, {p.full_area_mm2, kArea}}}};
    add_friction(terms, p, 1.0);
    take_back_pressure(terms, p, s);
    return terms;
}

Terms comes_home(const P& p, const BudgetSetting& s) {
    Terms terms = resistance_home(p, s);
    terms.front() = attack(s, "pR·A2", "residual pressure", {p.residual_mpa, kPressure}, {p.full_area_mm2, kArea});
    return terms;
}

double sum(const Terms& terms) {
    double total = 0.0;
    for (const SumTerm& term : terms) total += term.value();
    return total;
}

/// [mm3/s per MPa]
double drain_conductance(const P& p) {
    return annular_conductance(p.drain_diameter_mm, p.drain_clearance_mm, p.drain_length_mm, p.drain_eccentricity,
                               p.drain_viscosity_mpa_s);
}

/// Mean net load that drives the cold oil out in the time allowed [N].
double drive(const P& p, const BudgetSetting& s) {
    return mean_load_for_return(p.full_area_mm2, in_mm(s.plunger.stroke), drain_conductance(p),
                                in_second(s.plunger.drain->longest_time));
}

/// The share of their rooms at which both loads bring the plunger home in time: what that costs is borne alike.
double share_in_time(const P& p, const BudgetSetting& s) {
    const double against = sum(resistance_home(p, s));
    const double seated = s.seated.least_n - against;
    const double full_travel = s.full_travel.least_n - against;
    const double mean = drive(p, s);
    if (!std::isfinite(mean)) return std::numeric_limits<double>::infinity();
    return share_for_logarithmic_mean(seated, s.seated.width(), full_travel, s.full_travel.width(), mean);
}

Terms load_in_time(const P& p, const BudgetSetting& s, const LoadRoom& room) {
    Terms terms = resistance_home(p, s);
    const double load = room.least_n + share_in_time(p, s) * room.width();
    terms.push_back({"Fd", "driving cold oil out", 1.0, {{load - sum(terms), kNewton}}});
    return terms;
}

Terms seated_in_time(const P& p, const BudgetSetting& s) { return load_in_time(p, s, s.seated); }
Terms full_travel_in_time(const P& p, const BudgetSetting& s) { return load_in_time(p, s, s.full_travel); }

Terms above_seated(const P&, const BudgetSetting& s) {
    return {{"F1", "the least load at the seat", 1.0, {{s.seated_least_n, kNewton}}}};
}

/// Oil at a pressure against friction, back pressure and side load; nothing of the spring's.
Terms against_opening(SumTerm oil, const P& p, const BudgetSetting& s, bool side_load_bears) {
    Terms terms{std::move(oil)};
    add_friction(terms, p, -1.0);
    take_back_pressure(terms, p, s);
    if (side_load_bears) add_side_at_release(terms, p, s);
    return terms;
}

Terms lets_go(const P& p, const BudgetSetting& s) {
    return against_opening(push(s, "p·A1", "release pressure", p.release_mpa, p.seat_area_mm2), p, s, true);
}

Terms lets_go_first(const P& p, const BudgetSetting& s) {
    return against_opening(push(s, "pM·A1", "mechanism's pressure", p.mechanism_mpa, p.seat_area_mm2), p, s, true);
}

double area_opening(const P& p) { return opening_area(p.seat_area_mm2, p.full_area_mm2, p.annulus_share); }

/// The area that opens it, named by what it is made of.
std::string area_symbol(const BudgetSetting& s) { return s.plunger.annulus_share.low < 1.0 ? "Aη" : "A2"; }

bool bears_at_full_travel(const BudgetSetting& s) {
    return s.plunger.side_load && !s.plunger.side_load->clear_at_full_travel;
}

Terms opens_fully(const P& p, const BudgetSetting& s) {
    return against_opening(push(s, "p·" + area_symbol(s), "release pressure", p.release_mpa, area_opening(p)), p, s,
                           bears_at_full_travel(s));
}

Terms opens_first(const P& p, const BudgetSetting& s) {
    return against_opening(push(s, "pM·" + area_symbol(s), "mechanism's pressure", p.mechanism_mpa, area_opening(p)), p,
                           s, bears_at_full_travel(s));
}

Terms stays_open(const P& p, const BudgetSetting& s) {
    Terms terms{push(s, "pH·A2", "holding pressure", p.hold_open_mpa, p.full_area_mm2)};
    add_friction(terms, p, 1.0);  // it would have to be overcome on the way back
    take_back_pressure(terms, p, s);
    return terms;
}

// ---------------------------------------------------------------------------------------------- in words

std::string shown_number(double value) { return significant(value, 5); }

std::string nothing(const P&, const BudgetSetting&) { return {}; }

std::string where_flank(const P& p, const BudgetSetting&) {
    const double share = side_share(p);
    return "k = tan(α − atan μF) − μB = " + shown_number(share) +
           (share < 0.0 ? ": the side load cannot push it out, counted as 0" : "");
}

std::string where_released(const P& p, const BudgetSetting& s) {
    if (!bears_at_release(s.plunger)) return {};
    return "k = tan(α − atan μF) − μB = " + shown_number(side_share(p));
}

std::string where_opening(const P& p, const BudgetSetting& s) {
    std::string words;
    if (s.plunger.annulus_share.low < 1.0) words = "Aη = A1 + η·(A2 − A1) = " + shown_number(area_opening(p)) + " mm²";
    if (!bears_at_full_travel(s) || !bears_at_release(s.plunger)) return words;
    return words + (words.empty() ? "" : "; ") + where_released(p, s);
}

/// Where a share of a width lies, seen from its lower end: "12 % of its width above", "3 % of its width below".
std::string place_in(double share) {
    return shown_number(100.0 * std::abs(share)) + " % of its width " + (share < 0.0 ? "below" : "above");
}

/// How Fd follows from the time allowed.
std::string where_drained(const P& p, const BudgetSetting& s) {
    const auto room = [](const LoadRoom& r) {
        return shown_number(r.least_n) + " N .. " + shown_number(r.least_n + r.width()) + " N";
    };
    return "with N = pR·A2 + Ff" + std::string(s.plunger.back ? " − pB·AB" : "") + " = " +
           shown_number(sum(resistance_home(p, s))) +
           " N, g = π·D·c³·(1 + 1.5·ε²)/(12·μ·L) = " + shown_number(drain_conductance(p)) +
           " mm³/s per N/mm²: the logarithmic mean of F1 − N and F2 − N must be A2²·h/(g·t) = " +
           shown_number(drive(p, s)) + " N, h = " + shown_number(in_mm(s.plunger.stroke)) +
           " mm, t = " + shown_number(in_second(s.plunger.drain->longest_time)) +
           " s; it is so where both lie the same " + place_in(share_in_time(p, s)) +
           " the lower end of what else is left to them, F1 " + room(s.seated) + ", F2 " + room(s.full_travel);
}

// ---------------------------------------------------------------------------------------------- when they apply

bool has_leak(const Plunger& p) { return p.pressures.leak || p.pressures.leakage; }
bool has_side_load(const Plunger& p) { return p.side_load && p.side_load->parked.high > 0.0 * newton; }
bool has_both(const Plunger& p) { return has_leak(p) && has_side_load(p) && p.side_load->acts_with_leak_pressure; }
bool has_drain(const Plunger& p) { return p.drain.has_value(); }
bool has_mechanism(const Plunger& p) { return p.pressures.mechanism.has_value(); }
bool always(const Plunger&) { return true; }

using Members = std::vector<PointMember>;

Members joined(std::initializer_list<Members> groups) {
    Members all;
    for (const Members& group : groups) all.insert(all.end(), group.begin(), group.end());
    return all;
}

const Members kHold{&P::friction_n, &P::back_mpa, &P::back_area_mm2};
const Members kLeak{&P::leak_mpa, &P::seat_area_mm2};
const Members kFlank{&P::half_angle_rad, &P::flank_friction, &P::bore_friction};
const Members kParked = joined({{&P::side_parked_n}, kFlank});
const Members kReleased = joined({{&P::side_released_n}, kFlank});
const Members kHome{&P::residual_mpa, &P::full_area_mm2};
const Members kDrain{&P::drain_diameter_mm, &P::drain_clearance_mm, &P::drain_length_mm, &P::drain_eccentricity,
                     &P::drain_viscosity_mpa_s};
const Members kOpen{&P::seat_area_mm2, &P::full_area_mm2, &P::annulus_share};

constexpr LoadPlace kF1 = LoadPlace::seated;
constexpr LoadPlace kF2 = LoadPlace::full_travel;
constexpr Bound kLeast = Bound::at_least;
constexpr Bound kMost = Bound::at_most;
constexpr RuleStage kAlone = RuleStage::alone;
constexpr RuleStage kSharing = RuleStage::sharing;
constexpr RuleStage kLast = RuleStage::last;

const std::vector<BudgetRule> kRules{
    {"holds_leak", "stays shut against leak pressure", "to stay shut against leak pressure", kF1, kLeast, kAlone,
     has_leak, joined({kLeak, kHold}), holds_leak, nothing, kStatics},
    {"holds_side_load", "stays in against the side load", "to stay in against the side load", kF1, kLeast, kAlone,
     has_side_load, joined({kParked, kHold}), holds_side_load, where_flank, kRamp},
    {"holds_both", "stays in against leak pressure and side load at once",
     "to stay in against leak pressure and side load at once", kF1, kLeast, kAlone, has_both,
     joined({kLeak, kParked, kHold}), holds_both, where_flank, kRamp},
    {"comes_home", "comes home onto its seat", "to come home onto its seat", kF1, kLeast, kAlone, always,
     joined({kHome, kHold}), comes_home, nothing, kStatics},
    {"seated_in_time", "comes home in time with cold oil", "to come home in time with cold oil", kF1, kLeast, kSharing,
     has_drain, joined({kHome, kHold, kDrain}), seated_in_time, where_drained, kDrainFlow},
    {"lets_go", "lets go at the lowest release pressure", "to let go at the lowest release pressure", kF1, kMost,
     kAlone, always, joined({{&P::release_mpa, &P::seat_area_mm2}, kHold, kReleased}), lets_go, where_released,
     kStatics},
    {"lets_go_first", "lets go before the mechanism itself moves", "to let go before the mechanism itself moves", kF1,
     kMost, kAlone, has_mechanism, joined({{&P::mechanism_mpa, &P::seat_area_mm2}, kHold, kReleased}), lets_go_first,
     where_released, kStatics},
    {"starts_home", "starts back from full travel", "to start back from full travel", kF2, kLeast, kAlone, always,
     joined({kHome, kHold}), comes_home, nothing, kStatics},
    {"above_seated",
     "pushes no less than at its seat",
     "to push no less than at its seat",
     kF2,
     kLeast,
     kLast,
     always,
     {},
     above_seated,
     nothing,
     kSpring},
    {"full_travel_in_time", "comes home in time with cold oil", "to come home in time with cold oil", kF2, kLeast,
     kSharing, has_drain, joined({kHome, kHold, kDrain}), full_travel_in_time, where_drained, kDrainFlow},
    {"opens_fully", "opens fully at the lowest release pressure", "to open fully at the lowest release pressure", kF2,
     kMost, kAlone, always, joined({{&P::release_mpa}, kOpen, kHold, kReleased}), opens_fully, where_opening, kStatics},
    {"stays_open", "stays open at the lowest holding pressure", "to stay open at the lowest holding pressure", kF2,
     kMost, kAlone, always, joined({{&P::hold_open_mpa, &P::full_area_mm2}, kHold}), stays_open, nothing, kStatics},
    {"opens_first", "is fully open before the mechanism itself moves",
     "to be fully open before the mechanism itself moves", kF2, kMost, kAlone, has_mechanism,
     joined({{&P::mechanism_mpa}, kOpen, kHold, kReleased}), opens_first, where_opening, kStatics},
};

}  // namespace

std::span<const BudgetRule> budget_rules() { return kRules; }

}  // namespace seatload::demand
