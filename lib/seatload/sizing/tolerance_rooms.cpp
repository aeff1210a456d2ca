// SPDX-License-Identifier: MIT
#include <seatload/sizing/tolerance_rooms.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include <seatload/check/rule.hpp>
#include <seatload/check/tips.hpp>
#include <seatload/demand/half_turn.hpp>
#include <seatload/sizing/made_allowance.hpp>
#include <seatload/spring/buckling.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/spring/helix.hpp>
#include <seatload/spring/lean.hpp>
#include <seatload/tolerance/en15800.hpp>

namespace seatload::sizing {
namespace {

constexpr double kUnlimited = std::numeric_limits<double>::infinity();
constexpr double kLeastTolerance = 1e-9;  // of an index for which EN 15800's form gives none

constexpr double kLeastRoom = -1e3;  // of what is pushed away, which no limit lets through

const check::Rule& bore_rule() {
    static const check::Rule& rule = check::rule_named("bore_clearance");
    return rule;
}
const check::Rule& rod_rule() {
    static const check::Rule& rule = check::rule_named("rod_clearance");
    return rule;
}
const check::Rule& lean_rule() {
    static const check::Rule& rule = check::rule_named("lean");
    return rule;
}

double root_of_squares(double a, double b, double c = 0.0, double d = 0.0) {
    return std::sqrt(a * a + b * b + c * c + d * d);
}

/// The free length up to which a coil keeps a buckling margin at full travel: s_k (EN 13906-1 cl. 9.14) is margin times
/// the deflection, solved for L0.
double longest_stable(const check::Coil& c, double D, double seating_coefficient, double margin) {
    const double moduli = c.wire.shear_modulus_mpa / c.wire.young_modulus_mpa;
    const double never = spring::stable_slenderness(moduli, seating_coefficient) * D;
    const double a = 0.5 / (1.0 - moduli);
    const double L2 = margin * c.demand.full_travel_height_mm;
    const double linear = (a - margin) * L2, constant = L2 * L2 + a * a * never * never;
    const double root = linear * linear + margin * (2.0 * a - margin) * constant;
    if (root < 0.0) return never;
    return std::max(never, constant / (std::sqrt(root) - linear));
}

}  // namespace

ToleranceRooms::ToleranceRooms(const check::Coil& c)
    : coil_(c),
      load_base_n_(tolerance::load_tolerance_n(c.wire.d_mm, c.D_mm, c.active_coils, 0.0, c.demand.load_grade)),
      load_share_(tolerance::kLoadShare * tolerance::grade_factor(c.demand.load_grade)),
      length_mm_(std::max(kLeastTolerance, load_base_n_ / c.rate_n_mm)),
      diameter_mm_(c.diameter_tolerance_mm) {
    set_solid();
    if (c.demand.has_heights) set_stability();
}

/// The solid length strays with the wire, with what coils stray within a lot, and with the coils by which the maker
/// makes up for the wire, the modulus and the coil diameter of his lot.
void ToleranceRooms::set_solid() {
    const check::Coil& c = coil_;
    const double d = c.wire.d_mm;
    const double wires = c.demand.limits.solid_form == demand::SolidForm::en
                             ? spring::en_solid_wires(c.ends, c.total_coils)
                             : spring::textbook_solid_wires(c.ends, c.total_coils);
    solid_mm_ = wires * d;
    const double by_wire = 4.0 * c.wire.d_tolerance_mm / d;
    const double lot =
        root_of_squares(by_wire, c.wire.modulus_spread, 3.0 * (1.0 - kWithinLotDiameter) * diameter_mm_ / c.D_mm) *
        c.active_coils;
    const bool is_bound = c.demand.slides && demand::half_turn_tolerance(c.demand.limits, c.active_coils).has_value();
    const double coils = is_bound ? std::min(lot, (1.0 - kWithinLotTips) * demand::kHalfTurnKept) : lot;
    const double within = kWithinLotCoils * coils_tolerance(c.active_coils, c.demand.load_grade);
    solid_strays_ = std::max(kLeastTolerance, root_of_squares(wires * c.wire.d_tolerance_mm, coils * d, within * d));
}

void ToleranceRooms::set_stability() {
    const check::DemandNumbers& d = coil_.demand;
    const auto stable = [&](double nu, double margin) {
        const double longest = longest_stable(coil_, coil_.D_mm, nu, margin);
        const double thinner = longest_stable(coil_, coil_.D_mm - diameter_mm_, nu, margin);
        return Stable{longest, root_of_squares(longest - thinner, length_mm_)};
    };
    if (!d.guided) buckling_ = stable(d.seating_coefficient, d.limits.buckling_margin);
    if (!d.slides) return;
    if (d.seating_coefficient < 1.0 || d.limits.buckling_margin < 1.0) pushed_away_ = stable(1.0, 1.0);
    const auto usual = demand::half_turn_tolerance(d.limits, coil_.active_coils);
    tips_ = usual ? std::sin(std::numbers::pi * std::min(*usual, check::kClosestTips)) : 1.0 - coil_.turns_lean.tilt;
}

Rooms ToleranceRooms::at(double L0) const {
    Rooms rooms;
    add_loads(rooms, L0);
    add_lengths(rooms, L0);
    rooms.above = std::min({rooms.above, bore_and_rod(L0), stress(L0)});
    if (!coil_.demand.has_heights) return rooms;
    rooms.above = std::min({rooms.above, gap(L0), (buckling_.longest_mm - L0) / buckling_.strays_mm,
                            (pushed_away_.longest_mm - L0) / pushed_away_.strays_mm});
    if (coil_.demand.slides) rooms.above = std::min(rooms.above, lean(L0));
    return rooms;
}

void ToleranceRooms::add_loads(Rooms& rooms, double L0) const {
    const check::DemandNumbers& d = coil_.demand;
    const double hot = coil_.wire.hot_share * coil_.wire.load_kept;
    const auto look = [&](double length, const std::optional<double>& least, const std::optional<double>& most) {
        const double load = coil_.cold_load_n(L0, length);
        const double tolerance = load_base_n_ + load_share_ * load;
        if (least) rooms.below = std::min(rooms.below, (load - *least / hot) / tolerance);
        if (most) rooms.above = std::min(rooms.above, (*most - load) / tolerance);
    };
    look(d.seated_height_mm, d.seated_at_least_n, d.seated_at_most_n);
    look(d.full_travel_height_mm, d.full_at_least_n, d.full_at_most_n);
}

void ToleranceRooms::add_lengths(Rooms& rooms, double L0) const {
    const check::DemandNumbers& d = coil_.demand;
    if (d.shortest_mm) rooms.below = std::min(rooms.below, (L0 - *d.shortest_mm) / length_mm_);
    if (d.longest_mm) rooms.above = std::min(rooms.above, (*d.longest_mm - L0) / length_mm_);
}

double ToleranceRooms::play_in_bore(double L0) const {
    const check::Measure bore = bore_rule().measure(coil_, L0);
    return bore.limit - bore.value + diameter_mm_;
}

double ToleranceRooms::play_over_rod(double L0) const {
    const check::Measure rod = rod_rule().measure(coil_, L0);
    return rod.value - rod.limit + diameter_mm_;
}

double ToleranceRooms::play(double L0) const {
    double play = kUnlimited;
    if (coil_.demand.bore_smallest_mm) play = play_in_bore(L0);
    if (coil_.demand.rod_largest_mm) play = std::min(play, play_over_rod(L0));
    return play;
}

double ToleranceRooms::bore_and_rod(double L0) const {
    return diameter_mm_ > 0.0 ? play(L0) / diameter_mm_ : kUnlimited;
}

/// The loads at both lengths are brought in for each lot, so that its coil diameter moves the stress as the lever of
/// the load alone; that of a piece moves its rate too.
double ToleranceRooms::stress(double L0) const {
    const check::Coil& c = coil_;
    const double per_mm = c.rate_n_mm * c.stress_per_newton_mpa * c.stress_factor;
    const bool is_at_travel = c.demand.limits.stress_length == demand::StressLength::full_travel;
    if (is_at_travel && !c.demand.has_heights) return kUnlimited;
    const bool is_at_gap = c.demand.limits.stress_length == demand::StressLength::smallest_permissible;
    const double length = is_at_travel ? c.demand.full_travel_height_mm : solid_mm_ + (is_at_gap ? c.gap_mm : 0.0);
    const double tau = per_mm * (L0 - length);
    const double by_diameter =
        root_of_squares(2.0 * kWithinLotDiameter, 1.0 - kWithinLotDiameter) * diameter_mm_ / c.D_mm;
    const double strays =
        root_of_squares(std::max(0.0, tau) * root_of_squares(3.0 * c.wire.d_tolerance_mm / c.wire.d_mm, by_diameter),
                        per_mm * length_mm_, is_at_travel ? 0.0 : per_mm * solid_strays_);
    // The rule takes the solid length of the thickest wire, where the stress is a little less than here.
    return std::max(0.0, c.wire.permissible_stress_mpa - tau) / strays;
}

double ToleranceRooms::whole_lean(double L0) const {
    const check::Coil& c = coil_;
    return spring::sideways_lean(spring::pitch(c.ends, L0, c.wire.d_mm, c.active_coils), c.D_mm, c.active_coils,
                                 spring::TurnsLean{1.0, 0.0}, L0 - c.demand.full_travel_height_mm,
                                 c.wire.shear_modulus_mpa / c.wire.young_modulus_mpa);
}

/// What bore and rod leave beside the lean strays with the coil diameter, with the tips and, the more the nearer to
/// buckling, with the free length.
double ToleranceRooms::lean(double L0) const {
    const check::DemandNumbers& d = coil_.demand;
    const bool is_between_walls = d.bore_smallest_mm || d.rod_largest_mm;
    const double room = is_between_walls ? play(L0) : d.limits.lean_share * coil_.D_mm;
    const double whole = whole_lean(L0), drawn = lean_rule().measure(coil_, L0).value;
    if (!std::isfinite(whole)) return kLeastRoom;
    const double longer = std::max(tips_, coil_.turns_lean.tilt) * (whole_lean(L0 + length_mm_) - whole);
    return std::max(kLeastRoom, (room - drawn) / root_of_squares(diameter_mm_, tips_ * whole, longer, kLeastTolerance));
}

double ToleranceRooms::gap(double L0) const {
    const check::DemandNumbers& d = coil_.demand;
    const double left = d.full_travel_height_mm - solid_mm_;
    if (d.limits.gap_rule == demand::GapRule::en_sa) return (left - coil_.gap_mm) / solid_strays_;
    const double share = d.limits.gap_share;
    return (left - std::max(0.0, share * (L0 - d.full_travel_height_mm))) /
           root_of_squares(solid_strays_, share * length_mm_);
}

}  // namespace seatload::sizing
